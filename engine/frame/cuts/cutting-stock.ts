/**
 * One-dimensional cutting stock, exactly: the cheapest tubes from which all pieces can be cut. Every length is an
 * integer in one unit of the caller's choice, since floating point breaks the fits that are exact. A result is called
 * proven only when a lower bound proved in integers meets it or the search ran to its end.
 */

import { weightOf } from './patterns.ts';
import type { Counts, Pattern, Sizes } from './patterns.ts';
import { boundFrom, relax } from './relaxation.ts';
import type { Bound } from './relaxation.ts';
import { search } from './search.ts';
import { gathered, tidied } from './tidy.ts';

export interface CuttingJob {
  /** Lost at every cut, ≥ 0. */
  readonly kerf: number;
  /** Wanted. */
  readonly pieces: readonly { readonly length: number; readonly count: number }[];
  /** Sold, as many as needed; costs are whole numbers > 0. */
  readonly tubes: readonly { readonly length: number; readonly cost: number }[];
}

export interface CutUse {
  /** Index into the job's tubes. */
  readonly tube: number;
  /** Lengths cut from it, longest first. */
  readonly pieces: readonly number[];
  readonly times: number;
  /** What is left: W − Σp − k·kerf, never below 0. */
  readonly left: number;
}

export type CuttingResult =
  | {
      readonly ok: true;
      readonly uses: readonly CutUse[];
      readonly cost: number;
      readonly bound: number;
      readonly proven: boolean;
    }
  | { readonly ok: false; readonly unfit: readonly number[] };

/**
 * `best` proves the optimum if it can and tidies it; `cost` leaves it as it was found, for who only asks what it costs;
 * `quick` is for trying many jobs: still a true way of cutting, and
 * proved where that is easy.
 */
export type Effort = 'best' | 'cost' | 'quick';

/**
 * More different lengths than this are cut longest first, as one does by hand: the ways of cutting grow like two to the
 * power of their number. Only a screen of many bends has more.
 */
const LENGTHS_WEIGHED = 16;
/** Tubes tried in the search for the rest after the relaxation's whole part, and in the full search. */
const REST_STEPS: Readonly<Record<Effort, number>> = { best: 40_000, cost: 40_000, quick: 2_000 };
const FULL_STEPS: Readonly<Record<Effort, number>> = { best: 120_000, cost: 120_000, quick: 4_000 };

/** @returns Few different patterns among the cheapest ways, or the lengths that no tube holds, or that are none. */
export function cutStock(job: CuttingJob, effort: Effort = 'best'): CuttingResult {
  const lengths = [...new Set(job.pieces.filter((piece) => piece.count > 0).map((piece) => piece.length))].sort(
    (a, b) => b - a,
  );
  const longest = Math.max(0, ...job.tubes.map((tube) => tube.length));
  // Of pieces of no length a tube gives endlessly many.
  const unfit = lengths.filter((length) => length > longest || length <= 0);
  if (unfit.length > 0) return { ok: false, unfit };
  if (lengths.length === 0) return { ok: true, uses: [], cost: 0, bound: 0, proven: true };

  const demand = lengths.map((length) =>
    job.pieces.reduce((sum, piece) => (piece.length === length ? sum + piece.count : sum), 0),
  );
  const kept = worthwhileTubes(job.tubes);
  const sizes: Sizes = {
    weights: lengths.map((length) => length + job.kerf),
    holds: kept.map((tube) => job.tubes[tube].length + job.kerf),
    costs: kept.map((tube) => job.tubes[tube].cost),
  };
  const weighed = lengths.length <= LENGTHS_WEIGHED;
  const { patterns, bound, proven, lower } = weighed ? cheapest(sizes, demand, effort) : longestFirst(sizes, demand);
  const gatheredUses = gathered(patterns);
  const uses = (effort === 'best' && weighed ? tidied(sizes, demand, lower, gatheredUses) : gatheredUses).map(
    ({ pattern, times }) => ({
      tube: kept[pattern.tube],
      pieces: pattern.counts.flatMap((count, i) => Array.from({ length: count }, () => lengths[i])),
      times,
      left: Math.max(0, sizes.holds[pattern.tube] - job.kerf - weightOf(sizes, pattern.counts)),
    }),
  );
  return { ok: true, uses, cost: costOfPatterns(sizes, patterns), bound, proven };
}

interface Cheapest {
  readonly patterns: readonly Pattern[];
  readonly bound: number;
  readonly proven: boolean;
  readonly lower: Bound;
}

/** Its bound counts the tubes that the bare lengths would fill. */
function longestFirst(sizes: Sizes, demand: Counts): Cheapest {
  const patterns = greedily(sizes, demand);
  const dearest = Math.max(...sizes.costs) / Math.max(...sizes.holds);
  const lower = boundFrom(
    sizes,
    demand,
    sizes.weights.map((weight) => weight * dearest),
  );
  const bound = lower.of(demand);
  return { patterns, bound, proven: costOfPatterns(sizes, patterns) <= bound, lower };
}

function cheapest(sizes: Sizes, demand: Counts, effort: Effort): Cheapest {
  const relaxation = relax(sizes, demand);
  const lower = boundFrom(sizes, demand, relaxation.prices);
  const bound = lower.of(demand);
  let best = greedily(sizes, demand);

  // Whole tubes of the relaxation first, then the small rest by search: nearly always meets the bound.
  const whole = wholePart(demand, relaxation.uses);
  const spent = costOfPatterns(sizes, whole.patterns);
  if (costOfPatterns(sizes, best) > bound && spent > 0) {
    const rest = cheapestRest(
      sizes,
      whole.left,
      costOfPatterns(sizes, best) - spent,
      bound - spent,
      REST_STEPS[effort],
    );
    if (rest !== null) best = [...whole.patterns, ...rest];
  }
  if (costOfPatterns(sizes, best) <= bound) return { patterns: best, bound, proven: true, lower };

  const full = search(sizes, demand, lower, relaxation.prices, costOfPatterns(sizes, best), bound, FULL_STEPS[effort]);
  const patterns = full.best ?? best;
  return { patterns, bound: full.complete ? costOfPatterns(sizes, patterns) : bound, proven: full.complete, lower };
}

function cheapestRest(
  sizes: Sizes,
  left: Counts,
  below: number,
  enough: number,
  steps: number,
): readonly Pattern[] | null {
  if (left.every((count) => count === 0)) return below > 0 ? [] : null;
  const { prices } = relax(sizes, left);
  return search(sizes, left, boundFrom(sizes, left, prices), prices, below, enough, steps).best;
}

/** The relaxation's patterns rounded down, no piece cut more often than wanted, and what is then left to cut. */
function wholePart(
  demand: Counts,
  uses: readonly { readonly pattern: Pattern; readonly times: number }[],
): { patterns: Pattern[]; left: number[] } {
  const left = [...demand];
  const patterns: Pattern[] = [];
  for (const { pattern, times } of uses) {
    for (let time = 0; time < Math.floor(times + 1e-6); time++) {
      if (pattern.counts.some((count, i) => count > left[i])) break;
      for (let i = 0; i < left.length; i++) left[i] -= pattern.counts[i];
      patterns.push(pattern);
    }
  }
  return { patterns, left };
}

/** Longest pieces first, each tube filled with the longest that fit: a first way of cutting, seldom the best. */
function greedily(sizes: Sizes, demand: Counts): Pattern[] {
  const left = [...demand];
  const patterns: Pattern[] = [];
  for (let first = left.findIndex((count) => count > 0); first >= 0; first = left.findIndex((count) => count > 0)) {
    const tube = sizes.holds.findIndex((holds) => holds >= sizes.weights[first]);
    const counts = left.map(() => 0);
    let room = sizes.holds[tube];
    for (let kind = first; kind < left.length; kind++) {
      counts[kind] = Math.min(left[kind], Math.floor(room / sizes.weights[kind]));
      room -= counts[kind] * sizes.weights[kind];
      left[kind] -= counts[kind];
    }
    patterns.push({ tube, counts });
  }
  return patterns;
}

/** Tubes that no other beats in both length and cost, shortest first. */
function worthwhileTubes(tubes: CuttingJob['tubes']): number[] {
  return tubes
    .map((_, index) => index)
    .filter((index) => {
      const { length, cost } = tubes[index];
      return !tubes.some(
        (other, at) =>
          at !== index &&
          other.length >= length &&
          other.cost <= cost &&
          (other.length > length || other.cost < cost || at < index),
      );
    })
    .sort((a, b) => tubes[a].length - tubes[b].length);
}

function costOfPatterns(sizes: Sizes, patterns: readonly Pattern[]): number {
  return patterns.reduce((sum, pattern) => sum + sizes.costs[pattern.tube], 0);
}
