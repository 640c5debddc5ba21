/** The cut list of a frame: its pieces from the tubes that the shop has, and small changes that would save tubes. */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { StockTube } from '../../plan/types.ts';
import { formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { TENTHS_PER_METRE, tenthsOf } from '../layout/fittings.ts';
import type { Piece } from '../layout/types.ts';
import { cutStock } from './cutting-stock.ts';
import type { CutUse, Effort } from './cutting-stock.ts';
import type { CutPlan, CutSaving } from './types.ts';

/** Each change is a cutting problem of its own; only a screen of many bends has more different lengths. */
const LENGTHS_TRIED = 8;
/** How much a piece may be shortened without anyone noticing, tried one after the other. */
const SHORTER = [
  { metres: 0.001, metric: '1 mm', imperial: 'about 1/32 in' },
  { metres: 0.002, metric: '2 mm', imperial: 'about 1/16 in' },
] as const;

/** `unfit`: pieces that no tube holds, longest first. */
export type CutPlanResult =
  | { readonly ok: true; readonly plan: CutPlan }
  | { readonly ok: false; readonly unfit: readonly Piece[] };

/** @param lengths Every length in which the tube is sold.  @param kerf [m] */
export function cutPlanOf(
  pieces: readonly Piece[],
  lengths: readonly StockTube[],
  kerf: number,
  effort: Effort = 'best',
): CutPlanResult {
  const priced = lengths.every((tube) => tube.price !== undefined && tube.price > 0);
  const counted = lengths.length === 1 ? 'tubes' : priced ? 'price' : 'length';
  const perUnit = { tubes: 1, price: 100, length: TENTHS_PER_METRE }[counted];
  const cost = (tube: StockTube): number =>
    ({ tubes: 1, price: (tube.price ?? 0) * perUnit, length: tube.length * perUnit })[counted];
  const job = {
    kerf: tenthsOf(kerf),
    pieces: pieces.map(({ length, count }) => ({ length: tenthsOf(length), count })),
    tubes: lengths.map((tube) => ({ length: tenthsOf(tube.length), cost: Math.max(1, Math.round(cost(tube))) })),
  };
  const result = cutStock(job, effort);
  if (!result.ok)
    return {
      ok: false,
      unfit: result.unfit.flatMap((unfit) => pieces.filter(({ length }) => tenthsOf(length) === unfit)),
    };
  const tubes = result.uses
    .toSorted((a, b) => a.left - b.left)
    .flatMap((use) => Array.from({ length: use.times }, () => cutTube(use, lengths[use.tube])));
  return {
    ok: true,
    plan: {
      tubes,
      kerf,
      counted,
      proven: result.proven,
      bound: result.bound / perUnit,
      amount: result.cost / perUnit,
      savings: [],
    },
  };
}

/**
 * What would save tubes: a thinner blade, or all pieces of one length a millimetre or two shorter. The smallest change
 * of each sort.
 */
export function cutSavings(
  pieces: readonly Piece[],
  lengths: readonly StockTube[],
  plan: CutPlan,
  units: Units,
): CutSaving[] {
  // No single change can save what all of them together cannot.
  const mostShorter = SHORTER[SHORTER.length - 1].metres;
  const together = cutPlanOf(
    pieces.map((piece) => ({ ...piece, length: piece.length - mostShorter })),
    lengths,
    0,
    'quick',
  );
  if (!together.ok || together.plan.bound >= plan.amount - ROUNDING) return [];

  const savings: CutSaving[] = [];
  const offer = (change: string, tried: readonly Piece[], kerf: number): boolean => {
    const result = cutPlanOf(tried, lengths, kerf);
    const saving = result.ok ? savingOf(change, plan, result.plan) : null;
    if (saving !== null) savings.push(saving);
    return saving !== null;
  };
  if (plan.kerf > 0)
    offer(
      'cut with a rolling tube cutter, which loses nothing at the cut (and leaves a burr inside to ream out)',
      pieces,
      0,
    );
  for (const length of commonestLengths(pieces)) {
    for (const { metres, metric, imperial } of SHORTER) {
      const tried = pieces.map((piece) => (piece.length === length ? { ...piece, length: length - metres } : piece));
      if (
        offer(
          `cut every piece of ${formatCut(length, units)} ${units === 'metric' ? metric : imperial} shorter`,
          tried,
          plan.kerf,
        )
      )
        break;
    }
  }
  return savings;
}

/** In the order of the list; of many different lengths those of which most pieces are cut. */
function commonestLengths(pieces: readonly Piece[]): number[] {
  const lengths = [...new Set(pieces.map(({ length }) => length))];
  const count = (length: number): number =>
    pieces.reduce((sum, piece) => (piece.length === length ? sum + piece.count : sum), 0);
  const tried = lengths.toSorted((a, b) => count(b) - count(a)).slice(0, LENGTHS_TRIED);
  return lengths.filter((length) => tried.includes(length));
}

/** What a changed cut list saves over another, `null` when it saves nothing. */
export function savingOf(change: string, plan: CutPlan, changed: CutPlan): CutSaving | null {
  if (changed.amount >= plan.amount - ROUNDING) return null;
  return {
    change,
    tubes: plan.tubes.length - changed.tubes.length,
    money: plan.counted === 'price' ? Math.round((plan.amount - changed.amount) * 100) / 100 : null,
  };
}

function cutTube(use: CutUse, tube: StockTube): CutPlan['tubes'][number] {
  const stock = tenthsOf(tube.length);
  const cut = use.pieces.reduce((sum, piece) => sum + piece, 0);
  return {
    tube: tube.id,
    stock: tube.length,
    pieces: use.pieces.map((piece) => piece / TENTHS_PER_METRE),
    lost: (stock - cut - use.left) / TENTHS_PER_METRE,
    left: use.left / TENTHS_PER_METRE,
  };
}
