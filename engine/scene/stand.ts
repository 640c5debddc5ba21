import type { Stand } from './solids.ts';
import { TOUCH, UPRIGHT } from './ties.ts';

/**
 * Length inside a stand of plants of the beam that arrives at x, y, z from the unit vector dx, dy, dz (dz above 0). [m]
 * What the beam has run on leaving the outline less what it had run on entering, each kept within the stand's height,
 * adds up to the length inside however the outline is bent.
 */
export function lengthInStand(
  { ring, height }: Stand,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const from = z < 0 ? -z / dz : 0;
  const to = (height - z) / dz;
  if (to - from <= TOUCH) return 0;
  const level = dx * dx + dy * dy;
  if (level < UPRIGHT * UPRIGHT) return isInside(ring, x, y) ? to - from : 0;
  let length = 0;
  let [ax, ay] = ring[ring.length - 1];
  let aside = dx * (ay - y) - dy * (ax - x);
  for (let k = 0; k < ring.length; k++) {
    const bx = ring[k][0];
    const by = ring[k][1];
    const bside = dx * (by - y) - dy * (bx - x);
    if (aside > 0 !== bside > 0) {
      const along = aside / (aside - bside);
      const met = (dx * (ax + along * (bx - ax) - x) + dy * (ay + along * (by - ay) - y)) / level;
      const run = met < from ? from : met > to ? to : met;
      // Counter-clockwise, the beam leaves where an edge passes it from its right to its left.
      length += bside > 0 ? run : -run;
    }
    ax = bx;
    ay = by;
    aside = bside;
  }
  return length;
}

function isInside(ring: Stand['ring'], x: number, y: number): boolean {
  let inside = false;
  let [ax, ay] = ring[ring.length - 1];
  for (const [bx, by] of ring) {
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    ax = bx;
    ay = by;
  }
  return inside;
}
