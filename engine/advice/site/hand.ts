import { withoutNoise } from '../../plan/numbers/rounding.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import { METRES_PER_INCH } from '../../plan/units/per-unit.ts';
import type { Units } from '../../plan/units/units.ts';

/** What somebody with a tape measures and cuts by, in whole units of whoever reads it. [m] */
export const HAND: Readonly<Record<Units, number>> = { metric: 0.05, imperial: 2 * METRES_PER_INCH };

/** @param metres a length that is rounded down to the hand */
export function downToHand(metres: number, units: Units): number {
  return withoutNoise(Math.floor(metres / HAND[units] + ROUNDING) * HAND[units]);
}
