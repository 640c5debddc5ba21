import { buildScene, instantOf, shadowRingsOf, stateOf, sunAtMs } from '../../../engine/index.ts';
import type { ClockTime, Outcome, Plan, PlanPoint } from '../../../engine/index.ts';

export interface ShadowEdgeArgs {
  readonly plan: Plan;
  /** What throws the shadow. */
  readonly feature: string;
  readonly when: ClockTime;
}

/** Outlines of one thing's shadow on the ground as the plan has it; none while the sun is down. */
export function shadowEdge({ plan, feature, when }: ShadowEdgeArgs): Outcome<PlanPoint[][]> {
  const whenMs = instantOf(when, plan.site.timeZone);
  if (whenMs === null)
    return {
      ok: false,
      problems: [{ pointer: '', message: 'Say the day and the time of the mark.', severity: 'error' }],
    };
  const { azimuth, altitude } = sunAtMs(whenMs, plan.site);
  const scene = buildScene({ ...plan, features: plan.features.filter(({ id }) => id === feature) });
  return {
    ok: true,
    value: shadowRingsOf(scene.states[stateOf(scene, when.slice(5, 10))], azimuth, altitude, scene.upBearing, 0),
  };
}
