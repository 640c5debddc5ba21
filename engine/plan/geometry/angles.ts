/** Angles: degrees are the project's own, radians stand only inside formulas. Bearings run clockwise. */

import type { PlanPoint } from '../types.ts';

/** One degree, for formulas that multiply by it. [rad] */
export const DEGREE = Math.PI / 180;

/** @returns [rad] */
export function radiansOf(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** @returns [°] */
export function degreesOf(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Direction of a line on the plan, clockwise from the plan's +y. [°, over −180 to 180] 0 for a line without length. */
export function headingOf(from: PlanPoint, to: PlanPoint): number {
  return degreesOf(Math.atan2(to[0] - from[0], to[1] - from[1]));
}

/** A bearing brought to 0 ≤ bearing < 360. [°] */
export function wrapBearing(bearing: number): number {
  const wrapped = bearing % 360;
  return wrapped < 0 ? wrapped + 360 : wrapped + 0;
}

/** The short way from one bearing to another, clockwise positive, −180 < turn ≤ 180. [°] */
export function turnBetween(from: number, to: number): number {
  const turn = wrapBearing(to - from);
  return turn > 180 ? turn - 360 : turn;
}
