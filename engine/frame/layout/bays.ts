/** How a length is parted into bays. */

import { riseOf } from '../../plan/defaults.ts';
import { cleanPath, distance } from '../../plan/geometry/shapes.ts';
import { countUp, ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Cloth } from '../../plan/types.ts';

/** Longest bay by default: 10 ft, the length of the commonest tube. [m] */
export const MAX_BAY = 3.048;
/** A frame is offered to shrink by no more than this rather than grow a bay. [m] */
export const SHRINK = 0.01;

/** Number of equal bays, n = ⌈L/maxBay − 1e-9⌉, at least one. */
export function baysOf(length: number, maxBay: number): number {
  return Math.max(1, countUp(length / maxBay));
}

/** The lengths that are parted: of a roof its slope and its width, of a screen each leg. [m] */
export function lengthsInBays(cloth: Cloth): number[] {
  if (cloth.kind === 'canopy') return [Math.hypot(cloth.length, riseOf(cloth)), cloth.width];
  const path = cleanPath(cloth.path);
  return path.slice(1).map((end, k) => distance(path[k], end));
}

/** By how much the length would have to shrink to need a bay less, `null` when that is more than 10 mm. [m] */
export function shrinkOffer(length: number, maxBay: number): number | null {
  const bays = baysOf(length, maxBay);
  const shrink = length - (bays - 1) * maxBay;
  return bays > 1 && shrink <= SHRINK + ROUNDING ? shrink : null;
}
