/** The cut list of a frame: its pieces from the tubes that the shop has, and small changes that would save tubes. */
import { formatCut } from '../plan/units.ts';
import type { Units } from '../plan/units.ts';
import type { StockTube } from '../plan/types.ts';
import { cutStock } from './cutting-stock.ts';
import type { CutUse } from './cutting-stock.ts';
import { TENTHS_PER_METRE, tenthsOf } from './fittings.ts';
import type { CutPlan, CutSaving, Piece } from './types.ts';

/** How much a piece may be shortened without anyone noticing, tried one after the other. [m] */
const SHORTER = [0.001, 0.002];

export type CutPlanResult = { readonly ok: true; readonly plan: CutPlan } | { readonly ok: false; readonly tooLong: readonly number[] };

/** @param lengths Every length in which the tube is sold.  @param kerf [m] */
export function cutPlanOf(pieces: readonly Piece[], lengths: readonly StockTube[], kerf: number): CutPlanResult {
  const priced = lengths.every((tube) => tube.price !== undefined && tube.price > 0);
  const counted = lengths.length === 1 ? 'tubes' : priced ? 'price' : 'length';
  const perUnit = { tubes: 1, price: 100, length: TENTHS_PER_METRE }[counted];
  const result = cutStock({
    kerf: tenthsOf(kerf),
    pieces: pieces.map(({ length, count }) => ({ length: tenthsOf(length), count })),
    tubes: lengths.map((tube) => ({ length: tenthsOf(tube.length), cost: counted === 'tubes' ? 1 : Math.max(1, Math.round((counted === 'price' ? (tube.price ?? 0) : tube.length) * perUnit)) })),
  });
  if (!result.ok) return { ok: false, tooLong: result.tooLong.map((length) => length / TENTHS_PER_METRE) };
  const tubes = result.uses.toSorted((a, b) => a.left - b.left).flatMap((use) => Array.from({ length: use.times }, () => cutTube(use, lengths[use.tube])));
  return { ok: true, plan: { tubes, kerf, counted, proven: result.proven, bound: result.bound / perUnit, savings: [] } };
}

/**
 * What would save tubes: a thinner blade, or all pieces of one length a millimetre or two shorter.
 * @returns The smallest change of each sort that saves any.
 */
export function cutSavings(pieces: readonly Piece[], lengths: readonly StockTube[], plan: CutPlan, units: Units): CutSaving[] {
  const savings: CutSaving[] = [];
  const tubesWith = (tried: readonly Piece[], kerf: number): number => {
    const result = cutPlanOf(tried, lengths, kerf);
    return result.ok ? result.plan.tubes.length : Infinity;
  };
  const offer = (change: string, tubes: number): boolean => {
    if (tubes >= plan.tubes.length) return false;
    savings.push({ change, tubes: plan.tubes.length - tubes });
    return true;
  };
  if (plan.kerf > 0) offer('cut with a rolling tube cutter, which loses nothing at the cut (and leaves a burr inside to ream out)', tubesWith(pieces, 0));
  for (const length of new Set(pieces.map((piece) => piece.length))) {
    for (const shorter of SHORTER) {
      const tried = pieces.map((piece) => (piece.length === length ? { ...piece, length: length - shorter } : piece));
      const change = `cut every piece of ${formatCut(length, units)} ${units === 'metric' ? `${Math.round(shorter * 1000)} mm` : shorter < 0.0015 ? 'about 1/32 in' : 'about 1/16 in'} shorter`;
      if (offer(change, tubesWith(tried, plan.kerf))) break;
    }
  }
  return savings;
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
