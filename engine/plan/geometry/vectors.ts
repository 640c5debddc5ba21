/** Points and arrows in space, [x, y, z], z up from the ground. [m] Not for hot loops: each result is a new array. */

/** A point, or an arrow from one to another. */
export type SpacePoint = readonly [x: number, y: number, z: number];

export function plus(a: SpacePoint, b: SpacePoint): SpacePoint {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** From `b` to `a`. */
export function minus(a: SpacePoint, b: SpacePoint): SpacePoint {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function dot(a: SpacePoint, b: SpacePoint): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Square to both, by the right hand: x × y is z. */
export function cross(a: SpacePoint, b: SpacePoint): SpacePoint {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Distance of two points in space. [m] */
export function spaceDistance(from: SpacePoint, to: SpacePoint): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
}
