/**
 * The cutting problem with fractions of tubes allowed (Gilmore & Gomory 1961, Operations Research 9:849–859): a linear
 * programme over all patterns, its columns found by knapsack. Its prices give a lower bound that is then proved in
 * integers, so rounding inside the simplex can weaken the bound but never make it false.
 */

import { greatestCommonDivisor } from '../../plan/numbers/divisor.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import { mostValuable } from './patterns.ts';
import type { Counts, Pattern, Sizes } from './patterns.ts';

export interface Relaxation {
  /** Patterns in use and how often, a fraction. */
  readonly uses: readonly { readonly pattern: Pattern; readonly times: number }[];
  /** Price of one piece of each kind, in the unit of cost. */
  readonly prices: readonly number[];
}

const ROUNDS = 2000;
/** Prices are rounded to this fraction of the dearest tube before the bound is proved. */
const PRICE_STEPS = 1e6;

/** Solves the relaxation for these demands, each > 0 for some kind. Every kind must fit some tube. */
export function relax(sizes: Sizes, demand: Counts): Relaxation {
  const kinds = demand.map((_, i) => i).filter((i) => demand[i] > 0);
  const basis: (Pattern | null)[] = kinds.map((kind) => cheapestAlone(sizes, kind, demand[kind]));
  // Columns of the basis inverse belong to kinds, rows to the patterns in the basis; `null` is a kind's surplus.
  const inverse = kinds.map((kind, row) =>
    kinds.map((_, column) => (row === column ? 1 / (basis[row]?.counts[kind] ?? 1) : 0)),
  );
  const times = kinds.map((kind, row) => demand[kind] * inverse[row][row]);
  const prices = demand.map(() => 0);
  for (let round = 0; round < ROUNDS; round++) {
    for (let column = 0; column < kinds.length; column++) {
      let price = 0;
      for (let row = 0; row < kinds.length; row++)
        price += (basis[row] === null ? 0 : sizes.costs[basis[row]?.tube ?? 0]) * inverse[row][column];
      prices[kinds[column]] = price;
    }
    const entering = enteringColumn(sizes, demand, prices, kinds);
    if (entering === undefined) break;
    const change = inverse.map((line) => line.reduce((sum, value, column) => sum + value * entering.column[column], 0));
    let leaving = -1;
    for (let row = 0; row < kinds.length; row++) {
      if (
        change[row] > ROUNDING &&
        (leaving < 0 || times[row] / change[row] < times[leaving] / change[leaving] - 1e-12)
      )
        leaving = row;
    }
    if (leaving < 0) break;
    pivot(inverse, times, change, leaving);
    basis[leaving] = entering.pattern;
  }
  const uses = basis.flatMap((pattern, row) =>
    pattern !== null && times[row] > ROUNDING ? [{ pattern, times: times[row] }] : [],
  );
  return { uses, prices: prices.map((price) => Math.max(0, price)) };
}

export interface Bound {
  /** No way of cutting these pieces costs less. */
  of(demand: Counts): number;
}

/**
 * A lower bound for any demand at most `demand`, from prices however rough: proved with whole-number prices and an
 * exact knapsack.
 */
export function boundFrom(sizes: Sizes, demand: Counts, prices: readonly number[]): Bound {
  const scale = PRICE_STEPS / Math.max(...sizes.costs);
  const whole = prices.map((price) => Math.round(price * scale));
  const worth = sizes.holds.map((holds) => Math.ceil(mostValuable(sizes.weights, whole, demand, holds).atMost));
  // The tube that gives most worth for its cost sets the bound.
  let best = 0;
  for (let tube = 1; tube < worth.length; tube++)
    if (worth[tube] * sizes.costs[best] > worth[best] * sizes.costs[tube]) best = tube;
  const step = sizes.costs.reduce(greatestCommonDivisor);
  return {
    of(left) {
      let sum = 0;
      for (let i = 0; i < left.length; i++) sum += whole[i] * left[i];
      return worth[best] === 0 ? 0 : Math.ceil(Math.ceil((sum * sizes.costs[best]) / worth[best]) / step) * step;
    },
  };
}

/** As many of one kind as one tube holds, from the tube where that is cheapest a piece. */
function cheapestAlone(sizes: Sizes, kind: number, demand: number): Pattern {
  let best: { tube: number; fit: number } | null = null;
  for (let tube = 0; tube < sizes.holds.length; tube++) {
    const fit = Math.min(demand, Math.floor(sizes.holds[tube] / sizes.weights[kind]));
    if (fit > 0 && (best === null || sizes.costs[tube] * best.fit < sizes.costs[best.tube] * fit)) best = { tube, fit };
  }
  const { tube, fit } = best ?? { tube: 0, fit: 0 };
  return { tube, counts: sizes.weights.map((_, i) => (i === kind ? fit : 0)) };
}

function enteringColumn(
  sizes: Sizes,
  demand: Counts,
  prices: readonly number[],
  kinds: readonly number[],
): { pattern: Pattern | null; column: number[] } | undefined {
  const negative = kinds.findIndex((kind) => prices[kind] < -ROUNDING);
  if (negative >= 0) return { pattern: null, column: kinds.map((_, column) => (column === negative ? -1 : 0)) };
  let gain = ROUNDING;
  let found: Pattern | undefined;
  for (let tube = 0; tube < sizes.holds.length; tube++) {
    const { value, counts } = mostValuable(sizes.weights, prices, demand, sizes.holds[tube]);
    const relative = value / sizes.costs[tube] - 1;
    if (relative > gain) {
      gain = relative;
      found = { tube, counts };
    }
  }
  const pattern = found;
  return pattern && { pattern, column: kinds.map((kind) => pattern.counts[kind]) };
}

function pivot(inverse: number[][], times: number[], change: readonly number[], leaving: number): void {
  const line = inverse[leaving].map((value) => value / change[leaving]);
  const step = times[leaving] / change[leaving];
  for (let row = 0; row < inverse.length; row++) {
    if (row === leaving || change[row] === 0) continue;
    for (let column = 0; column < line.length; column++) inverse[row][column] -= change[row] * line[column];
    times[row] = Math.max(0, times[row] - change[row] * step);
  }
  inverse[leaving] = line;
  times[leaving] = step;
}
