/** Rays from one point, and what of a face they meet. */

import { pointInRing } from '../../plan/geometry/shapes.ts';
import type { Bearings } from '../bearings.ts';
import { TOUCH } from '../ties.ts';
import type { Level, Side } from './face.ts';

/** Rays from one point, each upwards and mirrored downwards. */
export interface RayFan {
  /** How many go upwards; as many go downwards. */
  readonly count: number;
  /** Unit vectors of those upwards, 3 numbers each. */
  readonly directions: Float64Array;
  readonly bearings: Bearings;
}

/** What the rays of a fan meet: two numbers a ray, upwards and downwards. */
export interface Met {
  readonly patch: Int32Array;
  /** [m] */
  readonly reach: Float64Array;
}

/** Nearer than all before, the side is what these rays meet. */
export function meetSide(side: Side, face: number, x: number, y: number, z: number, fan: RayFan, met: Met): void {
  const { ax, ay, bx, by, nx, ny, height } = side;
  const off = (ax - x) * nx + (ay - y) * ny;
  // Seen from behind, or from its edge.
  if (off >= 0) return;
  const { reach, patch } = met;
  const { count, directions, bearings } = fan;
  const { order } = bearings;
  bearings.find(Math.atan2(by - y, bx - x), Math.atan2(ay - y, ax - x));
  for (let n = bearings.first; n < bearings.end; n++) {
    const k = order[n];
    const dx = directions[3 * k];
    const dy = directions[3 * k + 1];
    const against = dx * nx + dy * ny;
    if (against >= 0) continue;
    const t = off / against;
    const aside = dx * (ay - y) - dy * (ax - x);
    const bside = dx * (by - y) - dy * (bx - x);
    if (t <= TOUCH || aside > 0 === bside > 0) continue;
    const rise = t * directions[3 * k + 2];
    const up = z + rise;
    const down = z - rise;
    if (up >= 0 && up <= height && t < reach[k]) {
      reach[k] = t;
      patch[k] = face;
    }
    if (down >= 0 && down <= height && t < reach[count + k]) {
      reach[count + k] = t;
      patch[count + k] = face;
    }
  }
}

/** The same of a level face: by rays downwards where it lies lower, upwards where it is an underside over the point. */
export function meetLevel(level: Level, face: number, x: number, y: number, z: number, fan: RayFan, met: Met): void {
  const { rings, height, thin, minX, minY, wide, deep } = level;
  if (height === z || (height > z && !thin)) return;
  const { reach, patch } = met;
  const { count, directions } = fan;
  const first = height > z ? 0 : count;
  for (let k = 0; k < count; k++) {
    const t = Math.abs(height - z) / directions[3 * k + 2];
    if (t <= TOUCH || t >= reach[first + k]) continue;
    const px = x + t * directions[3 * k];
    const py = y + t * directions[3 * k + 1];
    if (px < minX || py < minY || px > minX + wide || py > minY + deep) continue;
    if (!rings.some((ring) => pointInRing([px, py], ring, thin ? TOUCH : 0))) continue;
    reach[first + k] = t;
    patch[first + k] = face;
  }
}
