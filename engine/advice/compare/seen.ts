import { canopyCorners, cleanPath, distance } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Canopy, Plan, Screen } from '../../plan/types.ts';
import type { SeenFrom } from './types.ts';
import { seenAbove, sightLinesOf } from '../sight/hidden-height.ts';

/** Points of a cloth's upper edge that are looked at stand at most this far apart. [m] */
const STEP = 0.25;
/** Less than this shows as nothing. [m] */
const NOTHING = 0.005;

/**
 * Who sees any of the cloth, over what the plan's walls, hedges and buildings hide. One entry an eye of the plan, in
 * the plan's order.
 */
export function seenFrom(plan: Plan, cloths: readonly (Canopy | Screen)[]): SeenFrom[] {
  if (cloths.length === 0) return [];
  const sight = sightLinesOf(plan);
  const points = cloths.flatMap(topPoints);
  const shows = new Map<string, number>(plan.features.filter(({ kind }) => kind === 'eye').map(({ id }) => [id, 0]));
  sight.eyes.forEach(({ id }, k) => {
    for (const [x, y, z] of points)
      shows.set(id, Math.max(shows.get(id) ?? 0, Math.min(z, seenAbove(sight, k, [x, y], z))));
  });
  return [...shows].map(([eye, most]) => ({ eye, hidden: most <= NOTHING, shows: most <= NOTHING ? 0 : most }));
}

/** Points over a canopy's roof, its edges and corners among them, or along a screen's upper edge. */
export function topPoints(cloth: Canopy | Screen): SpacePoint[] {
  if (cloth.kind === 'screen') {
    const path = cleanPath(cloth.path);
    return path.slice(1).flatMap((b, k) => {
      const [from, to]: SpacePoint[] = [
        [...path[k], cloth.height],
        [...b, cloth.height],
      ];
      return between(from, to, stepsOf(from, to));
    });
  }
  const [frontLeft, backLeft, backRight, frontRight] = canopyCorners(cloth);
  // Opposite edges of a turned roof differ by rounding: the steps of one hold for both.
  const along = stepsOf(backLeft, frontLeft);
  const right = between(backRight, frontRight, along);
  const across = stepsOf(backLeft, backRight);
  return between(backLeft, frontLeft, along).flatMap((from, n) => between(from, right[n], across));
}

function stepsOf(a: SpacePoint, b: SpacePoint): number {
  return Math.max(1, Math.ceil(distance([a[0], a[1]], [b[0], b[1]]) / STEP));
}

function between(a: SpacePoint, b: SpacePoint, steps: number): SpacePoint[] {
  return Array.from({ length: steps + 1 }, (_, n): SpacePoint => [
    a[0] + ((b[0] - a[0]) * n) / steps,
    a[1] + ((b[1] - a[1]) * n) / steps,
    a[2] + ((b[2] - a[2]) * n) / steps,
  ]);
}
