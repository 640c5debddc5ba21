import type { KnownBy } from '../plan/types.ts';

/** What kind of number is in doubt: a metre, a share from 0 to 1, or a bearing in degrees. */
export type Quantity = 'length' | 'share' | 'bearing';

/** A tape read once, its ends held by hand. [m] */
export const TAPE_PM = 0.02;
/** Two ends of a line drawn on the ground, each hit to this. [m] */
export const LINE_PM = 0.02;

/**
 * Fraction of a length, by how it was found. Our choice; a picture's is what two known lengths in it may disagree by.
 */
const LENGTH_FRACTION: Readonly<Record<Exclude<KnownBy, 'tape'>, number>> = {
  shadow: 0.05,
  paced: 0.05,
  picture: 0.03,
  compass: 0.05,
  guess: 0.2,
  catalogue: 0.2,
};

/** [°] A hand compass in a yard with steel in it; a picture traced by hand. Our choice. */
const BEARING_PM: Readonly<Record<KnownBy, number>> = {
  tape: 0,
  shadow: 2,
  paced: 5,
  picture: 2,
  compass: 8,
  guess: 15,
  catalogue: 15,
};

/** Openness or density told by eye is good to a fifth of its value, but never better than this. Our choice. */
const SHARE_FLOOR = 0.1;

/**
 * How far a number may be off when its `how` says only by which means it is known.
 * @param value The number itself: m, a share or ° as `quantity` says.
 * @returns In the number's own unit, not negative. A taped share or bearing is taken as it stands: 0.
 */
export function defaultPm(by: KnownBy, value: number, quantity: Quantity = 'length'): number {
  if (quantity === 'bearing') return BEARING_PM[by];
  if (by === 'tape') return quantity === 'length' ? TAPE_PM : 0;
  const fraction = LENGTH_FRACTION[by] * Math.abs(value);
  return quantity === 'share' ? Math.max(SHARE_FLOOR, fraction) : fraction;
}
