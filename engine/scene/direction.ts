import type { SpacePoint } from '../plan/geometry/shapes.ts';

const RAD_PER_DEGREE = Math.PI / 180;

/**
 * Unit vector of the plan towards a point of the sky.
 * @param azimuth True bearing, clockwise from north. [°]
 * @param altitude Above the horizon. [°]
 * @param upBearing True bearing of the plan's +y axis. [°]
 */
export function planDirection(azimuth: number, altitude: number, upBearing: number): SpacePoint {
  const bearingRad = (azimuth - upBearing) * RAD_PER_DEGREE;
  const altitudeRad = altitude * RAD_PER_DEGREE;
  const level = Math.cos(altitudeRad);
  return [Math.sin(bearingRad) * level, Math.cos(bearingRad) * level, Math.sin(altitudeRad)];
}
