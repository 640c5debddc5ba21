/**
 * Among equally cheap ways of cutting, the one that is least work to do: fewest different patterns, then the longest
 * left-over.
 */

import { weightOf } from './patterns.ts';
import type { Budget, Counts, Pattern, Sizes } from './patterns.ts';
import type { Bound } from './relaxation.ts';

/** One pattern and how many tubes are cut so. */
export interface PatternUse {
  readonly pattern: Pattern;
  readonly times: number;
}

/** A matter of taste, so it is given only so many steps; the cost is never touched. */
const STEPS = 8_000;
/** Places looked at in listing what to try. */
const PLACES = 1_000_000;

/** Gathers equal patterns. */
export function gathered(patterns: readonly Pattern[]): PatternUse[] {
  const uses = new Map<string, { pattern: Pattern; times: number }>();
  for (const pattern of patterns) {
    const key = `${pattern.tube}:${pattern.counts.join(' ')}`;
    const use = uses.get(key);
    if (use) use.times += 1;
    else uses.set(key, { pattern, times: 1 });
  }
  return [...uses.values()];
}

/** What is to be cut, for how much at most. */
interface Job {
  readonly sizes: Sizes;
  readonly demand: Counts;
  readonly bound: Bound;
  readonly cost: number;
}

/** What may yet be spent on looking. */
interface Looking {
  steps: number;
  readonly places: Budget;
}

/** A way of cutting that costs no more than `uses` and has no more different patterns. */
export function tidied(sizes: Sizes, demand: Counts, bound: Bound, uses: readonly PatternUse[]): readonly PatternUse[] {
  const cost = uses.reduce((sum, use) => sum + use.times * sizes.costs[use.pattern.tube], 0);
  const job: Job = { sizes, demand, bound, cost };
  const looking: Looking = { steps: STEPS, places: { left: PLACES } };
  for (let different = 1; different < uses.length; different++) {
    const found = longestLeft(job, different, null, looking);
    if (found !== null) return found;
    if (spentOut(looking)) return uses;
  }
  return longestLeft(job, uses.length, uses, looking) ?? uses;
}

/**
 * Of the ways with at most so many different patterns the one with the longest left-over; `null` when none is found.
 * @param known One of them, to be bettered.
 */
function longestLeft(
  { sizes, demand, bound, cost }: Job,
  different: number,
  known: readonly PatternUse[] | null,
  looking: Looking,
): readonly PatternUse[] | null {
  let best = known;
  let longest = known === null ? -1 : longestLeftOver(sizes, known);
  const left = [...demand];
  const chosen: PatternUse[] = [];
  const take = (counts: Counts, times: number): void => {
    for (let i = 0; i < left.length; i++) left[i] -= times * counts[i];
  };
  const visit = (spent: number): void => {
    if (spent + bound.of(left) > cost) return;
    const first = left.findIndex((count) => count > 0);
    if (first < 0) {
      const leftOver = longestLeftOver(sizes, chosen);
      if (leftOver > longest) [best, longest] = [[...chosen], leftOver];
      return;
    }
    if (chosen.length === different) return;
    for (let tube = 0; tube < sizes.holds.length; tube++) {
      for (const pattern of exactPatterns(sizes, left, tube, first, looking.places)) {
        for (let times = mostTimes(pattern, left); times >= 1; times--) {
          looking.steps--;
          if (spentOut(looking)) return;
          take(pattern.counts, times);
          chosen.push({ pattern, times });
          visit(spent + times * sizes.costs[tube]);
          chosen.pop();
          take(pattern.counts, -times);
        }
      }
    }
  };
  visit(0);
  return best;
}

function spentOut({ steps, places }: Looking): boolean {
  return steps < 0 || places.left < 0;
}

/** How often a pattern can be cut before a kind of piece runs out. */
function mostTimes({ counts }: Pattern, left: Counts): number {
  return Math.min(...counts.map((count, i) => (count > 0 ? Math.floor(left[i] / count) : Infinity)));
}

/** Every pattern with a piece of kind `first` and none longer, full or not, fullest first. */
function exactPatterns(sizes: Sizes, left: Counts, tube: number, first: number, budget: Budget): Pattern[] {
  const found: { pattern: Pattern; weight: number }[] = [];
  const taken = left.map(() => 0);
  const visit = (kind: number, room: number): void => {
    if (--budget.left < 0) return;
    if (kind === left.length) {
      const counts = [...taken];
      found.push({ pattern: { tube, counts }, weight: weightOf(sizes, counts) });
      return;
    }
    for (
      let take = Math.min(left[kind], Math.floor(room / sizes.weights[kind]));
      take >= (kind === first ? 1 : 0);
      take--
    ) {
      taken[kind] = take;
      visit(kind + 1, room - take * sizes.weights[kind]);
    }
    taken[kind] = 0;
  };
  visit(first, sizes.holds[tube]);
  return found.sort((a, b) => b.weight - a.weight).map(({ pattern }) => pattern);
}

function longestLeftOver(sizes: Sizes, uses: readonly PatternUse[]): number {
  return Math.max(0, ...uses.map(({ pattern }) => sizes.holds[pattern.tube] - weightOf(sizes, pattern.counts)));
}
