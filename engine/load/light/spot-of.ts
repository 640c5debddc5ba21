import { castRay } from '../../cast/points/ray.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { stateOf } from '../../scene/build.ts';
import { localIso } from '../../sun/days/zone.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { Nine, Outcome, SpotDayResult, SpotResult, SpotSeasonResult, SpotStep } from '../types.ts';
import { nineAt, skyViewsAt, type Yard, yardOf } from '../yard.ts';
import { GRID_DEFAULTS } from './grid-of.ts';
import { insideOf } from './inside-of.ts';
import { nineFromShares } from './nine.ts';

export interface SpotRequest {
  /** The season where nothing is said. */
  readonly period?: Period;
  /** Above the ground. [m] */
  readonly height?: number;
  readonly weather?: Weather;
}

/**
 * One spot: step by step through a day, or the season's means and each of its days. Always computed, on the property or
 * off it, inside a thing or not.
 */
export function spotOf(plan: Plan, at: PlanPoint, request: SpotRequest = {}): Outcome<SpotResult> {
  const { period = { kind: 'season' }, height = GRID_DEFAULTS.height, weather } = request;
  const yard = yardOf(plan, period, weather);
  if (!yard.ok) return yard;
  const point: SpacePoint = [at[0], at[1], height];
  const value = period.kind === 'season' ? seasonAt(yard.value, point) : dayAt(yard.value, point);
  return { ok: true, value };
}

function dayAt(yard: Yard, point: SpacePoint): SpotDayResult {
  const { plan, samples } = yard;
  const [day] = samples.days;
  const steps = Array.from({ length: samples.count }, (_, k): SpotStep => {
    const { share, blockers } = castRay(yard.scene, point, samples.azimuth[k], samples.altitude[k], day.monthDay);
    return {
      when: localIso(samples.when[k], plan.site.timeZone),
      hours: samples.hours[k],
      azimuth: samples.azimuth[k],
      altitude: samples.altitude[k],
      beam: samples.beam[k],
      diffuse: samples.diffuse[k],
      sunshine: samples.sunshine[k],
      air: samples.air[k],
      share,
      blockers: blockers.map(({ id, transmittance }) => ({ id, passes: transmittance })),
    };
  });
  return {
    at: [point[0], point[1]],
    height: point[2],
    date: day.date,
    inside: insideOf(yard.scene, yard.weights.sky[0].state, point),
    steps,
    day: nineAt(yard, point),
  };
}

function seasonAt(yard: Yard, point: SpacePoint): SpotSeasonResult {
  const { samples, weights } = yard;
  const shares = yard.caster.sharesAt(point);
  const views = skyViewsAt(yard, point);
  return {
    at: [point[0], point[1]],
    height: point[2],
    date: null,
    inside: insideOf(yard.scene, yard.weights.sky[0].state, point),
    season: nineFromShares(shares, weights, views),
    days: samples.days.map((day, index) => ({ date: day.date, ...dayNine(yard, shares, views, index) })),
  };
}

/** The nine of one day of the season: its part of the season's sums, over one day instead of all. */
function dayNine(yard: Yard, shares: Float64Array, views: readonly number[], index: number): Nine {
  const { samples, weights } = yard;
  const day = samples.days[index];
  const days = samples.days.length;
  const state = stateOf(yard.scene, day.monthDay);
  const view = views[weights.sky.findIndex((part) => part.state === state)];
  const ofDay = { ...weights, sky: [{ state, days: 1, light: weights.skyLightOfDay[index] * days }] };
  return nineFromShares(shares, ofDay, [view], { first: day.first, end: day.end, times: days });
}
