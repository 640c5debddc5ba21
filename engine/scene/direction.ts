import { DEGREE } from '../plan/geometry/angles.ts';
import type { SpacePoint } from '../plan/geometry/vectors.ts';

/**
 * Unit vector of the plan towards a point of the sky.
 * @param azimuth True bearing, clockwise from north. [°]
 * @param altitude Above the horizon. [°]
 * @param upBearing True bearing of the plan's +y axis. [°]
 */
export function planDirection(azimuth: number, altitude: number, upBearing: number): SpacePoint {
  const bearingRad = (azimuth - upBearing) * DEGREE;
  const altitudeRad = altitude * DEGREE;
  const level = Math.cos(altitudeRad);
  return [Math.sin(bearingRad) * level, Math.cos(bearingRad) * level, Math.sin(altitudeRad)];
}
