import { type Silhouette, silhouettesOf, skylineSilhouette } from '../../cast/drawn/silhouettes.ts';
import { castRay } from '../../cast/points/ray.ts';
import { dayOfMonth } from '../../plan/dates/dates.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { MonthDay, Plan, PlanPoint } from '../../plan/types.ts';
import { buildScene, stateOf } from '../../scene/build.ts';
import { seasonMonths } from '../../sun/days/season.ts';
import { localIso } from '../../sun/days/zone.ts';
import { type Period, samplesOf } from '../../sun/samples.ts';
import type { Outcome } from '../types.ts';
import { weightsOf } from './weights.ts';

/** The sun at one moment of a path. */
export interface PathStep {
  /** Minutes after midnight by the site's clocks. */
  readonly clock: number;
  /** True. [°] */
  readonly azimuth: number;
  readonly altitude: number;
  /** Share of the beam that reaches the spot. */
  readonly share: number;
  /** Whether the sun then is more often harmful than not. */
  readonly hot: boolean;
  /** Feature ids, `skyline` for the land's. */
  readonly blockers: readonly string[];
}

export interface SkyPicture {
  readonly silhouettes: readonly Silhouette[];
  /** The sun's way on the 21st of each month of the season. */
  readonly paths: readonly { readonly monthDay: MonthDay; readonly steps: readonly PathStep[] }[];
}

/**
 * What stands before the sky at a spot, and how the sun passes behind it.
 * @param height above the ground [m]
 * @param monthDay the day whose leaves and cloth the picture shows
 */
export function skyFrom(plan: Plan, at: PlanPoint, height: number, monthDay: MonthDay): Outcome<SkyPicture> {
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const scene = buildScene(plan);
  const eye: SpacePoint = [at[0], at[1], height];
  const land = skylineSilhouette(scene.skyline);
  const paths: { monthDay: MonthDay; steps: PathStep[] }[] = [];
  for (const { month } of months.value) {
    const date = dayOfMonth(month, 21);
    const steps = pathOf(plan, eye, { kind: 'day', date });
    if (!steps.ok) return steps;
    paths.push({ monthDay: date, steps: steps.value });
  }
  const silhouettes = silhouettesOf(scene.states[stateOf(scene, monthDay)], scene.upBearing, eye);
  return { ok: true, value: { silhouettes: land ? [land, ...silhouettes] : silhouettes, paths } };
}

function pathOf(plan: Plan, eye: SpacePoint, period: Period): Outcome<PathStep[]> {
  const sampled = samplesOf(plan, period);
  if (!sampled.ok) return sampled;
  const { samples } = sampled;
  const scene = buildScene(plan);
  const { hotHours } = weightsOf(scene, samples, plan.climate.hotAir).channels;
  const steps = Array.from({ length: samples.count }, (_, k): PathStep => {
    const { share, blockers } = castRay(scene, eye, samples.azimuth[k], samples.altitude[k], samples.days[0].monthDay);
    const iso = localIso(samples.when[k], plan.site.timeZone);
    return {
      clock: Number(iso.slice(11, 13)) * 60 + Number(iso.slice(14, 16)) + Number(iso.slice(17, 19)) / 60,
      azimuth: samples.azimuth[k],
      altitude: samples.altitude[k],
      share,
      hot: hotHours[k] > 0.5 * samples.hours[k],
      blockers: blockers.map(({ id }) => id),
    };
  });
  return { ok: true, value: steps };
}
