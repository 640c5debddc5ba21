import { NO_HARM } from '../../load/verdict/harm-of.ts';
import type { PlanPoint } from '../../plan/types.ts';
import { NOTHING } from '../sight/seen.ts';
import { LEAST_OF_BEST } from './answers.ts';
import type { LaidOut } from './lay-out.ts';
import type { Progress } from './progress.ts';
import { lightTakers } from './rules/light-planes.ts';
import { Contest, type Standings } from './search/contest.ts';
import { searchLattice } from './search/lattice-search.ts';
import type { Lattice } from './search/lattice.ts';

/**
 * What spares less than this share of the best is no answer by itself; together with another it may be one. Our choice.
 */
const WORTH_SHOWING = { one: LEAST_OF_BEST, several: 0.1 } as const;
/**
 * Cloth that takes off less of the harm is not looked for: nobody would build it, and where no cloth does more all
 * places had to be scored.
 */
const WORTH_FINDING = 0.001;

/** Some turns, and of the heights from the first on every so-manieth: no frame is priced for two parts of one turn. */
export interface LatticePart {
  readonly turns: readonly number[];
  readonly first: number;
  readonly every: number;
}

/**
 * Holds the cloth of a part of the lattice, or of all of it, against what it could spare.
 * @param known of others: what cannot beat it is not looked at
 */
export function searchYard(
  laidOut: LaidOut,
  progress: Progress,
  part: LatticePart = { turns: laidOut.lattice.turns, first: 0, every: 1 },
  known: readonly Standings[] = [],
): Standings {
  const { plan, targets, shades, pairs, responses, places, rules, guard, cap, hiding } = laidOut;
  const contest = contestOf(laidOut, known);
  if (pairs.harm <= NO_HARM) return contest.standings();
  // Corners alone do not tell whether it is seen but a little.
  const hiddenHeight = hiding.from.length > 0 && !hiding.little ? hiddenReader(laidOut) : null;
  const takers = guard && lightTakers(guard);
  const lattice = partOf(laidOut.lattice, part);
  searchLattice(
    { plan, targets, shades, pairs, responses, lattice, places, contest, rules, takers, cap, hiddenHeight },
    (done) =>
      progress(done, `${contest.candidates.toLocaleString('en')} places held against what they could spare at best`),
  );
  return contest.standings();
}

/** What the searches of some parts each have come to, as if it had been one. */
export function together(laidOut: LaidOut, parts: readonly Standings[]): Standings {
  return {
    ...contestOf(laidOut, parts).standings(),
    candidates: parts.reduce((sum, { candidates }) => sum + candidates, 0),
  };
}

function partOf({ roof, drops, screen, ...lattice }: Lattice, { turns, first, every }: LatticePart): Lattice {
  const some = (heights: readonly number[]) => heights.filter((_, k) => k % every === first);
  const heights = some(roof.heights);
  const tops = some(screen.tops);
  const withDrops = drops.heights.filter((height) => heights.includes(height));
  const left = { roof: heights, 'roof with drops': withDrops, screen: tops };
  return {
    ...lattice,
    turns,
    kinds: lattice.kinds.filter((kind) => left[kind].length > 0),
    roof: { ...roof, heights },
    drops: { ...drops, heights: withDrops },
    screen: { ...screen, tops },
  };
}

function contestOf({ places, judges, request, pairs }: LaidOut, known: readonly Standings[]): Contest {
  const worthShowing = WORTH_SHOWING[request.count === 1 ? 'one' : 'several'];
  const contest = new Contest(Math.max(1, places.length), judges, worthShowing, WORTH_FINDING * pairs.harm);
  known.forEach((one) => contest.take(one));
  return contest;
}

/** How tall a thing may stand unseen at a point, as far as the heights that are tried tell it apart. */
function hiddenReader({ hiding, lattice }: LaidOut): (at: PlanPoint) => number {
  const heights = [...lattice.roof.heights, ...lattice.screen.tops];
  const [least, most] = [Math.min(...heights) - NOTHING, Math.max(...heights)];
  return (at) => hiding.heightAt(at, least, most);
}
