/** The ground that walls, hedges and eaves stand on or cover, as rectangles. */

import type { PlanPoint } from '../types.ts';
import { cleanPath } from './shapes.ts';

/**
 * A rectangle about the segment a–b.
 * @param half Half its width, to both sides of the segment. [m]
 * @param before How far it is carried on beyond a. [m]
 * @param after How far it is carried on beyond b. [m]
 */
export function stripe(a: PlanPoint, b: PlanPoint, half: number, before: number, after: number): PlanPoint[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const ex = (b[0] - a[0]) / length;
  const ey = (b[1] - a[1]) / length;
  const corner = (along: number, left: number): PlanPoint => [
    a[0] + ex * along - ey * left,
    a[1] + ey * along + ex * left,
  ];
  return [corner(-before, -half), corner(length + after, -half), corner(length + after, half), corner(-before, half)];
}

/**
 * One rectangle a segment of a wall's or hedge's path. Ends are cut square; where two segments meet each is carried
 * on by half the thickness past the joint. A path whose last point equals its first has joints all round.
 */
export function pathStripes(path: readonly PlanPoint[], thickness: number): PlanPoint[][] {
  const points = cleanPath(path);
  const last = points.length - 2;
  const closed = last > 0 && points[0][0] === points[last + 1][0] && points[0][1] === points[last + 1][1];
  const half = thickness / 2;
  const stripes: PlanPoint[][] = [];
  for (let k = 0; k <= last; k++) {
    stripes.push(stripe(points[k], points[k + 1], half, k > 0 || closed ? half : 0, k < last || closed ? half : 0));
  }
  return stripes;
}

/**
 * A building's eaves beyond its outline: along each edge a rectangle `eaves` wide on both sides, `eaves` longer at both
 * ends.
 */
export function eavesStripes(outline: readonly PlanPoint[], eaves: number): PlanPoint[][] {
  return outline.map((corner, k) => stripe(corner, outline[(k + 1) % outline.length], eaves, eaves, eaves));
}
