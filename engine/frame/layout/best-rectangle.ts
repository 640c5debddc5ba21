/** The true rectangle that four measured corners fit best. */

import { distance, meanPoint } from '../../plan/geometry/shapes.ts';
import type { PlanPoint } from '../../plan/types.ts';

/** Back left, back right, front left, front right. */
export type FourCorners = readonly PlanPoint[];

export interface FittedRectangle {
  readonly center: PlanPoint;
  /** From left to right, and from back to front. [m] */
  readonly width: number;
  readonly length: number;
  readonly turnRad: number;
  /** How far the worst corner lies from it. [m] */
  readonly worst: number;
}

export function bestRectangle([backLeft, backRight, frontLeft, frontRight]: FourCorners): FittedRectangle {
  const center = meanPoint([backLeft, backRight, frontLeft, frontRight]);
  const forward = minus(meanPoint([frontLeft, frontRight]), meanPoint([backLeft, backRight]));
  const right = minus(meanPoint([backRight, frontRight]), meanPoint([backLeft, frontLeft]));
  // Best direction of both pairs of sides together: the forward side turned back by 90° onto the right one.
  const turnRad = Math.atan2(forward[0] - right[1], forward[1] + right[0]);
  const [f, r] = [[Math.sin(turnRad), Math.cos(turnRad)] as const, [Math.cos(turnRad), -Math.sin(turnRad)] as const];
  const length = forward[0] * f[0] + forward[1] * f[1];
  const width = right[0] * r[0] + right[1] * r[1];
  const off = (across: 1 | -1, along: 1 | -1, corner: PlanPoint): number =>
    distance(corner, [
      center[0] + (across * width * r[0]) / 2 + (along * length * f[0]) / 2,
      center[1] + (across * width * r[1]) / 2 + (along * length * f[1]) / 2,
    ]);
  const worst = Math.max(off(-1, -1, backLeft), off(1, -1, backRight), off(-1, 1, frontLeft), off(1, 1, frontRight));
  return { center, width, length, turnRad, worst };
}

function minus(a: PlanPoint, b: PlanPoint): PlanPoint {
  return [a[0] - b[0], a[1] - b[1]];
}
