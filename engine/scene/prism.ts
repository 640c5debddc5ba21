import { pointInRing } from '../plan/geometry/shapes.ts';
import type { SpacePoint } from '../plan/geometry/vectors.ts';
import type { Prism, Ring } from './solids.ts';
import { JOIN, TOUCH, UPRIGHT } from './ties.ts';

/** A stretch of a beam, as distances from its point. [m] */
export type Stretch = readonly [from: number, to: number];

/**
 * How often a beam passes through a prism: its stretches inside any of the rings, those that touch counted once.
 * @param point Where the beam arrives.
 * @param direction Unit vector towards the source; its z is above 0.
 */
export function prismCrossings(prism: Prism, point: SpacePoint, direction: SpacePoint): number {
  const from = Math.max(0, -point[2] / direction[2]);
  const to = (prism.height - point[2]) / direction[2];
  if (to - from <= TOUCH) return 0;
  const stretches: Stretch[] = [];
  for (const ring of prism.rings) {
    for (const [start, end] of stretchesInside(ring, point, direction)) {
      if (Math.min(end, to) > Math.max(start, from)) stretches.push([Math.max(start, from), Math.min(end, to)]);
    }
  }
  stretches.sort((a, b) => a[0] - b[0]);
  let crossings = 0;
  for (let k = 0; k < stretches.length;) {
    const start = stretches[k][0];
    let end = stretches[k][1];
    for (k++; k < stretches.length && stretches[k][0] - end <= JOIN; k++) end = Math.max(end, stretches[k][1]);
    if (end - start > TOUCH) crossings++;
  }
  return crossings;
}

/** Where the endless line of a beam is above a ring's inside, whatever the height, from the farthest behind on. */
export function stretchesInside(ring: Ring, [x, y]: SpacePoint, [dx, dy]: SpacePoint): Stretch[] {
  const level = Math.hypot(dx, dy);
  if (level < UPRIGHT) return pointInRing([x, y], ring) ? [[-Infinity, Infinity]] : [];
  const ex = dx / level;
  const ey = dy / level;
  const meets: number[] = [];
  for (let i = 0; i < ring.length; i++) {
    const [ax, ay] = ring[i];
    const [bx, by] = ring[(i + 1) % ring.length];
    const aside = ex * (ay - y) - ey * (ax - x);
    const bside = ex * (by - y) - ey * (bx - x);
    if (aside > 0 === bside > 0) continue;
    const along = aside / (aside - bside);
    meets.push((ex * (ax + along * (bx - ax) - x) + ey * (ay + along * (by - ay) - y)) / level);
  }
  meets.sort((a, b) => a - b);
  return Array.from({ length: meets.length / 2 }, (_, k): Stretch => [meets[2 * k], meets[2 * k + 1]]);
}
