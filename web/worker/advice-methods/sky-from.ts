import {
  buildScene,
  castRay,
  localIso,
  samplesOf,
  seasonMonths,
  stateOf,
  weightsOf,
  withOptions,
} from '../../../engine/index.ts';
import type { MonthDay, Outcome, Period, Plan, PlanPoint, SpacePoint } from '../../../engine/index.ts';
import { silhouettesOf, skylineSilhouette } from '../../charts/silhouettes.ts';
import type { Silhouette } from '../../charts/silhouettes.ts';

export interface SkyFromArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
  /** The day whose leaves and cloth the picture shows. */
  readonly monthDay: MonthDay;
}

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

/** What stands before the sky at a spot, and how the sun passes behind it. */
export function skyFrom({ plan, options, at, height, monthDay }: SkyFromArgs): Outcome<SkyPicture> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const months = seasonMonths(built.plan);
  if (!months.ok) return months;
  const scene = buildScene(built.plan);
  const eye: SpacePoint = [at[0], at[1], height];
  const land = skylineSilhouette(scene.skyline);
  const paths: { monthDay: MonthDay; steps: PathStep[] }[] = [];
  for (const { month } of months.value) {
    const date = `${String(month).padStart(2, '0')}-21`;
    const steps = pathOf(built.plan, eye, { kind: 'day', date });
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
