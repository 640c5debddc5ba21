import { distanceToPath, distanceToSegment, pointInRing } from '../../plan/geometry/shapes.ts';
import type { PlanPoint } from '../../plan/types.ts';

/** Distance of a point from a ring's area, 0 inside. [m] */
export function distanceToRing(point: PlanPoint, ring: readonly PlanPoint[]): number {
  if (pointInRing(point, ring)) return 0;
  let least = Infinity;
  for (let k = 0; k < ring.length; k++)
    least = Math.min(least, distanceToSegment(point, ring[k], ring[(k + 1) % ring.length]));
  return least;
}

/** Distance between a shape (a ring, or the two ends of a line) and a path; 0 where they cross. [m] */
export function distanceToShape(shape: readonly PlanPoint[], path: readonly PlanPoint[]): number {
  const outline = shape.length > 2 ? [...shape, shape[0]] : shape;
  let least = Infinity;
  for (const point of shape) least = Math.min(least, distanceToPath(point, path));
  for (const point of path)
    least = Math.min(least, shape.length > 2 ? distanceToRing(point, shape) : distanceToPath(point, outline));
  return least > 0 && pathsMeet(outline, path) ? 0 : least;
}

/** Whether a shape (a ring, or the two ends of a line) and a ring share ground. */
export function meets(shape: readonly PlanPoint[], ring: readonly PlanPoint[]): boolean {
  return (
    pointInRing(shape[0], ring) ||
    (shape.length > 2 && pointInRing(ring[0], shape)) ||
    pathsMeet(shape.length > 2 ? [...shape, shape[0]] : shape, [...ring, ring[0]])
  );
}

/** Whether two paths cross or touch. */
export function pathsMeet(a: readonly PlanPoint[], b: readonly PlanPoint[]): boolean {
  for (let i = 1; i < a.length; i++)
    for (let j = 1; j < b.length; j++) if (segmentsMeet(a[i - 1], a[i], b[j - 1], b[j])) return true;
  return false;
}

function segmentsMeet(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): boolean {
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}

function sideOf(a: PlanPoint, b: PlanPoint, point: PlanPoint): number {
  return (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]);
}
