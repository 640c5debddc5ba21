import { distanceToPath, distanceToSegment, pathsCross, pointInRing } from '../../plan/geometry/shapes.ts';
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
  return least > 0 && pathsCross(outline, path) ? 0 : least;
}

/** Whether a shape (a ring, or the two ends of a line) and a ring share ground. */
export function meets(shape: readonly PlanPoint[], ring: readonly PlanPoint[]): boolean {
  return (
    pointInRing(shape[0], ring) ||
    (shape.length > 2 && pointInRing(ring[0], shape)) ||
    pathsCross(shape.length > 2 ? [...shape, shape[0]] : shape, [...ring, ring[0]])
  );
}
