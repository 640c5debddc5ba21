import { NO_HARM } from '../../load/verdict/harm-of.ts';
import type { PlanPoint } from '../../plan/types.ts';
import { NOTHING } from '../sight/seen.ts';
import { LEAST_OF_BEST } from './answers.ts';
import type { LaidOut } from './lay-out.ts';
import type { Progress } from './progress.ts';
import { lightTakers } from './rules/light-planes.ts';
import { Contest, type Standings } from './search/contest.ts';
import { searchLattice } from './search/lattice-search.ts';

/**
 * What spares less than this share of the best is no answer by itself; together with another it may be one. Our choice.
 */
const WORTH_SHOWING = { one: LEAST_OF_BEST, several: 0.1 } as const;
/**
 * Cloth that takes off less of the harm is not looked for: nobody would build it, and where no cloth does more all
 * places had to be scored.
 */
const WORTH_FINDING = 0.001;

/** Holds all cloth of the lattice against what it could spare. */
export function searchYard(laidOut: LaidOut, progress: Progress): Standings {
  const { plan, targets, shades, pairs, responses, lattice, places, rules, guard, cap, hiding, request, judges } =
    laidOut;
  const worthShowing = WORTH_SHOWING[request.count === 1 ? 'one' : 'several'];
  const contest = new Contest(Math.max(1, places.length), judges, worthShowing, WORTH_FINDING * pairs.harm);
  if (pairs.harm <= NO_HARM) return contest.standings();
  // Corners alone do not tell whether it is seen but a little.
  const hiddenHeight = hiding.from.length > 0 && !hiding.little ? hiddenReader(laidOut) : null;
  const takers = guard && lightTakers(guard);
  searchLattice(
    { plan, targets, shades, pairs, responses, lattice, places, contest, rules, takers, cap, hiddenHeight },
    (done) =>
      progress(done, `${contest.candidates.toLocaleString('en')} places held against what they could spare at best`),
  );
  return contest.standings();
}

/** How tall a thing may stand unseen at a point, as far as the heights that are tried tell it apart. */
function hiddenReader({ hiding, lattice }: LaidOut): (at: PlanPoint) => number {
  const heights = [...lattice.roof.heights, ...lattice.screen.tops];
  const [least, most] = [Math.min(...heights) - NOTHING, Math.max(...heights)];
  return (at) => hiding.heightAt(at, least, most);
}
