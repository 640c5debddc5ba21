import type { PlanPoint } from '../types.ts';
import { sideOf } from './shapes.ts';

/**
 * The convex hull of points, counter-clockwise (Andrew's monotone chain). Ours, not Turf's: a hull for every shadow at
 * every step while the day plays, and wanted before the first picture, which has no room for another library.
 */
export function hullOf(points: readonly PlanPoint[]): PlanPoint[] {
  const sorted = points.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (list: readonly PlanPoint[]): PlanPoint[] => {
    const chain: PlanPoint[] = [];
    for (const point of list) {
      while (chain.length > 1 && sideOf(chain[chain.length - 2], chain[chain.length - 1], point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}
