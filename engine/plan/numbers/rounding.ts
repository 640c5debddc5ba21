/** Lengths as they are kept: no finer than a tape reads, and never −0. */

import type { PlanPoint } from '../types.ts';

/** To the whole millimetre: what typed numbers and turned shapes keep. [m] */
export function toMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000 + 0;
}

/** To the whole centimetre: what is guessed, grown or read off a shadow. [m] */
export function toCentimetre(metres: number): number {
  return Math.round(metres * 100) / 100 + 0;
}

/** To the micrometre: 0.1 + 0.2 is 0.3. [m] */
export function withoutNoise(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}

export function pointToMillimetre([x, y]: PlanPoint): PlanPoint {
  return [toMillimetre(x), toMillimetre(y)];
}
