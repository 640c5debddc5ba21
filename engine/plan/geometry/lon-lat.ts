/** The plan on the globe. */

import { upBearingOf } from '../defaults.ts';
import type { Plan, PlanPoint } from '../types.ts';
import { DEGREE } from './angles.ts';

const MEAN_RADIUS_KM = 6371;
/** WGS 84 ellipsoid: half the long axis [m], and the square of its first eccentricity. */
const EQUATOR_RADIUS = 6_378_137;
const ECCENTRICITY_SQUARED = 6.694379990141e-3;

/** [°] */
interface OnGlobe {
  readonly latitude: number;
  readonly longitude: number;
}

/** Longitude and latitude. [°] */
export type LonLat = readonly [longitude: number, latitude: number];

/**
 * Where a point of the plan lies on the globe: the plan is taken as the tangent plane at the site, its origin (0, 0) at
 * the site's latitude and longitude. Over a few hundred metres the error is millimetres; that of a typed place is
 * larger by far.
 */
export function lonLatOf(plan: Plan, [x, y]: PlanPoint): LonLat {
  const { latitude, longitude } = plan.site;
  const up = upBearingOf(plan) * DEGREE;
  const [across, along] = metresPerDegree(latitude);
  return [
    rounded(longitude + (x * Math.cos(up) + y * Math.sin(up)) / across),
    rounded(latitude + (y * Math.cos(up) - x * Math.sin(up)) / along),
  ];
}

/** The same the other way round. */
export function planPointOf(plan: Plan, [longitude, latitude]: LonLat): PlanPoint {
  const up = upBearingOf(plan) * DEGREE;
  const [across, along] = metresPerDegree(plan.site.latitude);
  const [east, north] = [(longitude - plan.site.longitude) * across, (latitude - plan.site.latitude) * along];
  return [east * Math.cos(up) - north * Math.sin(up), east * Math.sin(up) + north * Math.cos(up)];
}

/** Of longitude and of latitude, at a latitude. [m/°] */
function metresPerDegree(latitude: number): readonly [number, number] {
  const flattening = 1 - ECCENTRICITY_SQUARED * Math.sin(latitude * DEGREE) ** 2;
  const acrossRadius = EQUATOR_RADIUS / Math.sqrt(flattening);
  const alongRadius = (EQUATOR_RADIUS * (1 - ECCENTRICITY_SQUARED)) / flattening ** 1.5;
  return [acrossRadius * Math.cos(latitude * DEGREE) * DEGREE, alongRadius * DEGREE];
}

/** To a tenth of a millimetre. */
function rounded(degrees: number): number {
  return Number(degrees.toFixed(9));
}

/** Along a great circle, by the haversine formula. [km] */
export function kilometresBetween(a: OnGlobe, b: OnGlobe): number {
  const half = (degrees: number): number => Math.sin((degrees * DEGREE) / 2) ** 2;
  const across = Math.cos(a.latitude * DEGREE) * Math.cos(b.latitude * DEGREE) * half(b.longitude - a.longitude);
  return 2 * MEAN_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(half(b.latitude - a.latitude) + across)));
}
