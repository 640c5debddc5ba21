import { lasts } from '../../../load/leaf/judge.ts';
import { stretchOf } from '../../../load/verdict/clock.ts';
import { footprintOf } from '../../../plan/geometry/cloth-shapes.ts';
import { distanceToRing } from '../../../plan/geometry/shapes.ts';
import type { Canopy, Cloth, Plan } from '../../../plan/types.ts';
import { formatStretch } from '../../../plan/units/clock.ts';
import { unitsOf } from '../../../plan/units/units.ts';
import { compassWord } from '../../../plan/words/compass-word.ts';
import { namedInside } from '../../../plan/words/names.ts';
import { clothSheets } from '../../../scene/build.ts';
import { planDirection } from '../../../scene/direction.ts';
import { heatwaveUp } from '../../../sun/sun-up.ts';
import type { Targets } from '../search/targets.ts';
import type { LowSun } from '../types.ts';
import type { LeafTables } from './leaf-tables.ts';

/** A point is hit where at least this much of the beam reaches it past the cloth. */
const LIT = 0.3;
/** A point this near to a roof's ground is under it. [m] */
const UNDER_WITHIN = 1;

/** The longest stretch of the hottest heat day in which hot sun still reaches a plant without meeting the cloth. */
export function lowSunOn(
  plan: Plan,
  targets: Targets,
  leaves: LeafTables,
  plant: number,
  cloth: readonly Cloth[],
): LowSun | null {
  const sheets = cloth.flatMap(clothSheets);
  const heat = targets.heats.reduce(
    (hottest, { day }, h) => (day.high > targets.heats[hottest].day.high ? h : hottest),
    0,
  );
  const { samples, caster } = targets.heats[heat];
  const shares = new Float64Array(samples.count);
  const worst = new Float64Array(samples.count);
  let worstSum = 0;
  let at: readonly [number, number, number] | null = null;
  for (const point of targets.points) {
    if (point.plant !== plant) continue;
    shares.set(point.shares[heat]);
    caster.dim(point.at, sheets, shares);
    const hit = Float64Array.from(shares, (share, k) => {
      const open = point.shares[heat][k];
      const excess = leaves[plant][heat].at(k, share, point.around[heat]) - targets.plants[plant].limit;
      return share >= LIT && share === open && excess > 0 ? excess * samples.hours[k] : 0;
    });
    const sum = hit.reduce((total, each) => total + each, 0);
    if (sum <= worstSum) continue;
    worstSum = sum;
    worst.set(hit);
    at = point.at;
  }
  const run = longestRun(worst, samples.hours);
  if (at === null || run === null || !lasts(run.hours)) return null;
  const middle = Math.floor((run.first + run.last) / 2);
  const toward = planDirection(samples.azimuth[middle], 0, targets.scene.upBearing);
  const under = cloth.some(
    (one) =>
      one.kind === 'canopy' &&
      at[2] < one.height &&
      distanceToRing([at[0], at[1]], footprintOf(one)) <= UNDER_WITHIN &&
      isAhead(one, at, toward),
  );
  const how = under ? 'under' : 'past';
  const when = stretchOf(samples, run.first, run.last, plan.site.timeZone);
  const from = samples.azimuth[middle];
  const name = namedInside(plan, targets.plants[plant].feature.id);
  const sentence =
    `From ${formatStretch(when, unitsOf(plan), heatwaveUp(plan))} on the heatwave day the sun from the ` +
    `${compassWord(from)} still comes ${under ? 'in under' : 'past'} the cloth to ${name}.`;
  return { when, how, from, altitude: samples.altitude[run.first], sentence };
}

/**
 * Whether a roof still hangs over the way from a point toward the sun, or over the point: the sun is then below its
 * edge.
 */
function isAhead(
  roof: Canopy,
  [x, y]: readonly [number, number, number],
  [dx, dy]: readonly [number, number, number],
): boolean {
  const ring = footprintOf(roof);
  return [0, 0.5, 1].some((reach) => distanceToRing([x + reach * dx, y + reach * dy], ring) === 0);
}

function longestRun(hits: Float64Array, hours: Float64Array): { first: number; last: number; hours: number } | null {
  let best: { first: number; last: number; hours: number } | null = null;
  let run: { first: number; last: number; hours: number } | null = null;
  for (let k = 0; k < hits.length; k++) {
    if (hits[k] <= 0) {
      run = null;
      continue;
    }
    run =
      run === null
        ? { first: k, last: k, hours: hours[k] }
        : { first: run.first, last: k, hours: run.hours + hours[k] };
    if (best === null || run.hours > best.hours) best = run;
  }
  return best;
}
