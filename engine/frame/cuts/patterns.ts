/**
 * Ways of cutting one tube. Pieces p₁…pₖ fit a tube of length W with kerf c exactly when Σ(p + c) ≤ W + c: the last cut
 * may eat the whole remainder. So each piece weighs p + c and a tube holds W + c. All in one integer unit.
 */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';

/** What fits what, sorted by falling weight. */
export interface Sizes {
  /** Length + kerf of each kind of piece, falling. */
  readonly weights: readonly number[];
  /** Length + kerf of each kind of tube. */
  readonly holds: readonly number[];
  /** What each kind of tube costs, > 0. */
  readonly costs: readonly number[];
}

/** How many of each kind of piece. */
export type Counts = readonly number[];

/**
 * What may yet be spent on listing ways of cutting, in places looked at. Their number grows like two to the power of
 * the kinds of piece: what stops at an empty budget is no proof of anything.
 */
export interface Budget {
  left: number;
}

/** One way of cutting one kind of tube. */
export interface Pattern {
  readonly tube: number;
  readonly counts: Counts;
}

/** Places looked at for one tube's most valuable pieces; enough for every frame of a dozen lengths. */
const KNAPSACK_PLACES = 10_000;

/**
 * The most that one tube can hold, by value: an exact bounded knapsack, depth first with the fractional bound.
 * @param values One non-negative integer or real a kind. @param most At most so many of each kind.
 * @returns The best found, and what no filling exceeds: the same, unless the search was given up.
 */
export function mostValuable(
  weights: readonly number[],
  values: readonly number[],
  most: Counts,
  holds: number,
): { value: number; counts: number[]; atMost: number } {
  const kinds = weights.map((_, i) => i).filter((i) => values[i] > 0 && most[i] > 0 && weights[i] <= holds);
  kinds.sort((a, b) => values[b] / weights[b] - values[a] / weights[a] || weights[b] - weights[a]);
  const taken = weights.map(() => 0);
  let best = { value: 0, counts: [...taken] };
  let placesLeft = KNAPSACK_PLACES;
  const visit = (place: number, room: number, value: number): void => {
    if (value > best.value) best = { value, counts: [...taken] };
    if (place === kinds.length || --placesLeft < 0) return;
    const kind = kinds[place];
    // Everything left at the best rate left cannot beat what is known. The margin keeps rounding from cutting a winner.
    if (value + (room * values[kind]) / weights[kind] <= best.value - ROUNDING) return;
    for (let count = Math.min(most[kind], Math.floor(room / weights[kind])); count >= 0; count--) {
      taken[kind] = count;
      visit(place + 1, room - count * weights[kind], value + count * values[kind]);
    }
    taken[kind] = 0;
  };
  visit(0, holds, 0);
  return { ...best, atMost: placesLeft < 0 ? fractionally(kinds, weights, values, most, holds) : best.value };
}

/** The same with pieces that may be cut through: never less. @param kinds Best value for their weight first. */
function fractionally(
  kinds: readonly number[],
  weights: readonly number[],
  values: readonly number[],
  most: Counts,
  holds: number,
): number {
  let room = holds;
  let value = 0;
  for (const kind of kinds) {
    const count = Math.min(most[kind], room / weights[kind]);
    value += count * values[kind];
    room -= count * weights[kind];
  }
  return value;
}

/**
 * Every pattern of one tube that holds at least one piece of kind `first`, none of a longer kind, at most `left` of
 * each, and into which no further piece fits. Some best solution cuts `first` so, since pieces may move in from other
 * tubes.
 */
export function fullPatterns(
  weights: readonly number[],
  left: Counts,
  holds: number,
  first: number,
  budget: Budget,
): number[][] {
  const found: number[][] = [];
  const taken = weights.map(() => 0);
  const visit = (kind: number, room: number, lightestRefused: number): void => {
    if (--budget.left < 0) return;
    if (kind === weights.length) {
      if (room < lightestRefused) found.push([...taken]);
      return;
    }
    const count = Math.min(left[kind], Math.floor(room / weights[kind]));
    for (let take = count; take >= (kind === first ? 1 : 0); take--) {
      taken[kind] = take;
      visit(
        kind + 1,
        room - take * weights[kind],
        take < left[kind] ? Math.min(lightestRefused, weights[kind]) : lightestRefused,
      );
    }
    taken[kind] = 0;
  };
  visit(first, holds, Infinity);
  return found;
}

/** Whether a pattern also fits a tube that costs no more than its own and is shorter. */
export function fitsCheaper(sizes: Sizes, pattern: Pattern): boolean {
  const weight = weightOf(sizes, pattern.counts);
  return sizes.holds.some(
    (holds, tube) =>
      weight <= holds && holds < sizes.holds[pattern.tube] && sizes.costs[tube] <= sizes.costs[pattern.tube],
  );
}

/** Σ weight × count. */
export function weightOf(sizes: Sizes, counts: Counts): number {
  let weight = 0;
  for (let i = 0; i < counts.length; i++) weight += sizes.weights[i] * counts[i];
  return weight;
}
