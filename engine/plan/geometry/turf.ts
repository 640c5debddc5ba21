/**
 * Turf, in the one file where it enters: its planar parts that fit a plan in metres. Where a question has a home of our
 * own beside it, that home says in one line why: Turf takes degrees on a globe (area, length, distance), means another
 * thing by the word (its centroid is the mean of the corners), or is too slow or too large where it is asked.
 */

import { polygon } from '@turf/helpers';
import { kinks } from '@turf/kinks';
import type { PlanPoint } from '../types.ts';
import { openRing, sideOf, closedRing } from './shapes.ts';

/**
 * Where an outline meets itself, `null` if it is simple: edges that cross or touch, corners visited twice, an edge that
 * runs back along the one before. An outline that merely comes near itself passes.
 * @param outline Three different corners or more, not all on one line.
 */
export function selfMeeting(outline: readonly PlanPoint[]): PlanPoint | null {
  const ring = openRing(outline);
  const [first] = kinks(polygon([closedRing(ring).map(([x, y]) => [x, y])])).features;
  if (first !== undefined) return [first.geometry.coordinates[0], first.geometry.coordinates[1]];
  // Ours: Turf passes over edges that lie on one line.
  return ring.find((corner, k) => runsBack(ring[(k || ring.length) - 1], corner, ring[(k + 1) % ring.length])) ?? null;
}

/** Whether the way from b to c goes straight back towards a. */
function runsBack(a: PlanPoint, b: PlanPoint, c: PlanPoint): boolean {
  return sideOf(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}
