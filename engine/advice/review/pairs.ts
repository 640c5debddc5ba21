/** Two readings that belong together, one under the cloth and one in the open. */

import { coolerBy, type LeafCase } from '../../load/leaf/spread.ts';
import type { Plan, Reading } from '../../plan/types.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { instantOf } from '../../sun/days/zone.ts';
import type { PairCheck, ReadingCheck } from './types.ts';

/** Light and air change: readings farther apart do not compare. [min] */
const WITHIN = 5;
/** Air is one in a yard: where a pair's two differ by more, one thermometer stood in the sun. Our choice. [K] */
const ONE_AIR = 3;

/**
 * Pairs by what the readings say of each other, else the nearest in time on the same plant or none; each reading in one
 * pair at most.
 */
export function pairsOf(
  plan: Plan,
  checks: readonly ReadingCheck[],
  cases: ReadonlyMap<string, LeafCase>,
): PairCheck[] {
  const readings = plan.features.filter(
    (feature): feature is Reading => feature.kind === 'reading' && feature.covered !== undefined,
  );
  const open = readings.filter(({ covered }) => covered === false);
  const used = new Set<string>();
  const pairs: PairCheck[] = [];
  for (const covered of readings.filter((reading) => reading.covered === true)) {
    const rivals = open
      .filter(({ id }) => !used.has(id))
      .map((candidate) => ({ candidate, minutes: minutesBetween(plan, covered, candidate) }))
      .filter(({ minutes }) => minutes <= WITHIN)
      .toSorted(
        (a, b) => Number(belong(covered, b.candidate)) - Number(belong(covered, a.candidate)) || a.minutes - b.minutes,
      );
    const [best] = rivals;
    if (best === undefined) continue;
    used.add(best.candidate.id);
    pairs.push(pairOf(best.candidate, covered, best.minutes, checks, cases));
  }
  return pairs;
}

/** A pair names the other reading, or both carry the same label. */
function belong(a: Reading, b: Reading): boolean {
  return a.pair !== undefined && (a.pair === b.id || a.pair === b.pair) ? true : b.pair === a.id;
}

function minutesBetween(plan: Plan, a: Reading, b: Reading): number {
  const [first, second] = [a, b].map(({ when }) => instantOf(when, plan.site.timeZone));
  return first === null || second === null ? Infinity : Math.abs(first - second) / MS_PER_MINUTE;
}

function pairOf(
  open: Reading,
  covered: Reading,
  minutesApart: number,
  checks: readonly ReadingCheck[],
  cases: ReadonlyMap<string, LeafCase>,
): PairCheck {
  const [a, b] = [open, covered].map(({ id }) => checks.find((check) => check.id === id));
  const [sunny, shaded] = [open, covered].map(({ id }) => cases.get(id));
  const by = sunny && shaded ? coolerBy(sunny, shaded) : null;
  const light =
    open.light !== undefined && covered.light !== undefined && open.light > 0 && covered.light <= open.light
      ? 1 - covered.light / open.light
      : null;
  const airs = open.air === undefined || covered.air === undefined ? 0 : Math.abs(open.air - covered.air);
  const steps =
    a === undefined || b === undefined || airs > ONE_AIR
      ? null
      : [a.watered - b.watered, a.thirsty - b.thirsty].toSorted((x, y) => x - y);
  return {
    open: open.id,
    covered: covered.id,
    minutesApart,
    cooler: open.leaf !== undefined && covered.leaf !== undefined ? open.leaf - covered.leaf : null,
    estimated: steps === null ? null : [steps[0], steps[1]],
    spread: by && by.spread,
    opened: by && by.opened,
    density: light,
    airsApart: airs > ONE_AIR ? airs : null,
  };
}
