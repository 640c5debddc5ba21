/**
 * Depth-first search for the cheapest way of cutting, tube by tube, with a proved bound and a memory of what was seen.
 */

import { fitsCheaper, fullPatterns } from './patterns.ts';
import type { Budget, Counts, Pattern, Sizes } from './patterns.ts';
import type { Bound } from './relaxation.ts';

/** Places looked at in listing what to try, for each tube that may be tried. */
const PLACES_A_STEP = 8;

export interface SearchResult {
  /** The cheapest found below `below`, `null` when there is none or none was found. */
  readonly best: readonly Pattern[] | null;
  /** Whether every possibility was ruled in or out. */
  readonly complete: boolean;
}

/**
 * @param below Only ways that cost less are of interest.
 * @param enough Stop at a way that costs no more.
 * @param prices Of the relaxation: patterns that are worth most by them are tried first.
 * @param steps How many tubes may be tried before giving up.
 */
export function search(
  sizes: Sizes,
  demand: Counts,
  bound: Bound,
  prices: readonly number[],
  below: number,
  enough: number,
  steps: number,
): SearchResult {
  const left = [...demand];
  const cut: Pattern[] = [];
  const seen = new Map<string, number>();
  let best: readonly Pattern[] | null = null;
  let limit = below;
  let stepsLeft = steps;
  const budget: Budget = { left: steps * PLACES_A_STEP };

  const visit = (cost: number): boolean => {
    if (cost + bound.of(left) >= limit) return true;
    const first = left.findIndex((count) => count > 0);
    if (first < 0) {
      best = [...cut];
      limit = cost;
      return cost > enough;
    }
    const key = left.join(' ');
    const before = seen.get(key);
    if (before !== undefined && before <= cost) return true;
    seen.set(key, cost);
    const tries = candidates(sizes, left, prices, first, budget);
    if (budget.left < 0) return false;
    for (const pattern of tries) {
      if (--stepsLeft < 0) return false;
      for (let i = first; i < left.length; i++) left[i] -= pattern.counts[i];
      cut.push(pattern);
      const goOn = visit(cost + sizes.costs[pattern.tube]);
      cut.pop();
      for (let i = first; i < left.length; i++) left[i] += pattern.counts[i];
      if (!goOn) return false;
    }
    return true;
  };
  const finished = visit(0);
  return { best, complete: finished || (best !== null && limit <= enough) };
}

/** Full patterns of every tube for the longest piece left, those that are worth most for their cost first. */
function candidates(sizes: Sizes, left: Counts, prices: readonly number[], first: number, budget: Budget): Pattern[] {
  const found: { pattern: Pattern; worth: number }[] = [];
  for (let tube = 0; tube < sizes.holds.length; tube++) {
    for (const counts of fullPatterns(sizes.weights, left, sizes.holds[tube], first, budget)) {
      const pattern = { tube, counts };
      if (sizes.holds.length > 1 && fitsCheaper(sizes, pattern)) continue;
      let worth = 0;
      for (let i = first; i < counts.length; i++) worth += counts[i] * prices[i];
      found.push({ pattern, worth: worth / sizes.costs[tube] });
    }
  }
  // The sort is stable, and patterns come with many long pieces first.
  return found.sort((a, b) => b.worth - a.worth).map(({ pattern }) => pattern);
}
