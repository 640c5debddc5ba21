import type { SkylinePoint } from '../../plan/types.ts';

/**
 * Altitude of the skyline at a true azimuth: linear between the neighbouring points, round through north; a single
 * point holds all round, no point is the level horizon. [°] The points may stand in any order; of two at one azimuth
 * the plan is refused before it comes here.
 */
export function skylineAltitude(skyline: readonly SkylinePoint[] | undefined, azimuth: number): number {
  if (skyline === undefined || skyline.length === 0) return 0;
  let behind = Infinity;
  let ahead = Infinity;
  let behindAltitude = 0;
  let aheadAltitude = 0;
  for (const point of skyline) {
    const forward = turn(point.azimuth - azimuth);
    if (forward === 0) return point.altitude;
    if (forward < ahead) {
      ahead = forward;
      aheadAltitude = point.altitude;
    }
    if (360 - forward < behind) {
      behind = 360 - forward;
      behindAltitude = point.altitude;
    }
  }
  return (behindAltitude * ahead + aheadAltitude * behind) / (ahead + behind);
}

/** An angle brought to 0 ≤ angle < 360. [°] */
function turn(angle: number): number {
  const turned = angle % 360;
  return turned < 0 ? turned + 360 : turned;
}
