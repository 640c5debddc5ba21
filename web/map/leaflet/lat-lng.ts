import type { LatLngTuple } from 'leaflet';
import type { PlanPoint } from '../../../engine/index.ts';

/**
 * The only place where a point of the plan becomes a point of Leaflet and back.
 * Leaflet's `CRS.Simple` puts latitude upwards and longitude to the right, so a plan point [x, y] is [lat y, lng x].
 */
export function toLatLng(point: PlanPoint): LatLngTuple {
  return [point[1], point[0]];
}

/** The inverse of `toLatLng`. [m] */
export function toPlanPoint(at: { readonly lat: number; readonly lng: number }): PlanPoint {
  return [at.lng, at.lat];
}

export function toLatLngs(points: readonly PlanPoint[]): LatLngTuple[] {
  return points.map(toLatLng);
}
