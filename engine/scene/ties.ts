/**
 * A solid stops a beam when more than this of it lies inside; a sheet, when it is met farther than this from the point.
 * [m]
 */
export const TOUCH = 1e-9;

/** Stretches of a beam inside one prism no farther apart than this are one crossing. [m] */
export const JOIN = 1e-6;

/** A beam whose level part is shorter than this, per metre, goes straight up. */
export const UPRIGHT = 1e-12;
