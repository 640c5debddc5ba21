/** What is left of a beam by its length inside something thin: leaves, of a crown or of a bed. */

import { TOUCH } from './ties.ts';

/** Share that is left after a length of what lets a share of it through its depth: openness^(length / depth). [m] */
export function shareInside(openness: number, depth: number, length: number): number {
  return length > TOUCH ? openness ** (length / depth) : 1;
}

/** The same by a rate: the share is e^−(so much × length). [1/m] */
export function fadingIn(openness: number, depth: number): number {
  return -Math.log(openness) / depth;
}
