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
