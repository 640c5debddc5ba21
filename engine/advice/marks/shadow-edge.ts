import { shadowRingsOf } from '../../cast/drawn/shadow-rings.ts';
import type { Outcome } from '../../load/types.ts';
import { refusal } from '../../plan/problems.ts';
import type { ClockTime, Plan, PlanPoint } from '../../plan/types.ts';
import { buildScene, stateOf } from '../../scene/build.ts';
import { instantOf } from '../../sun/days/zone.ts';
import { sunAtMs } from '../../survey/place/sun-at.ts';

/**
 * Outlines of one thing's shadow on the ground as the plan has it; none while the sun is down.
 * @param feature its id
 */
export function shadowEdge(plan: Plan, feature: string, when: ClockTime): Outcome<PlanPoint[][]> {
  const whenMs = instantOf(when, plan.site.timeZone);
  if (whenMs === null) return refusal('', 'Say the day and the time of the mark.');
  const { azimuth, altitude } = sunAtMs(whenMs, plan.site);
  const scene = buildScene({ ...plan, features: plan.features.filter(({ id }) => id === feature) });
  return {
    ok: true,
    value: shadowRingsOf(scene.states[stateOf(scene, when.slice(5, 10))], azimuth, altitude, scene.upBearing, 0),
  };
}
