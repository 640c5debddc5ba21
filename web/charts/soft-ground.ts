import { boundsOf } from '../../engine/index.ts';
import type { PlanPoint } from '../../engine/index.ts';
import { outlinesOf } from './contours.ts';
import { softened } from './softened.ts';

/**
 * Squares of ground as soft outlines round those that lie together, the ground to their left, holes the other way
 * round.
 * @param middles on one lattice
 * @param side of a square [m]
 */
export function softGround(middles: readonly PlanPoint[], side: number): (readonly PlanPoint[])[] {
  if (middles.length === 0) return [];
  const { minX, minY, maxX, maxY } = boundsOf(middles);
  const columns = Math.round((maxX - minX) / side) + 1;
  const rows = Math.round((maxY - minY) / side) + 1;
  const ground = new Float64Array(columns * rows);
  for (const [x, y] of middles) ground[Math.round((y - minY) / side) * columns + Math.round((x - minX) / side)] = 1;
  return outlinesOf({ x0: minX - side / 2, y0: minY - side / 2, cell: side, columns, rows }, ground, 0.5).map(softened);
}
