import { radiansOf } from '../plan/geometry/angles.ts';
import { distance } from '../plan/geometry/shapes.ts';
import { ROUNDING } from '../plan/numbers/tolerances.ts';
import type { PlanPoint } from '../plan/types.ts';
import { type Finding, found, refused } from './estimate.ts';
import { TAPE_PM } from './known-by.ts';

/** Where a thing stands by two tape lengths, and how far it may be off. [m] */
export interface TapedPoint {
  readonly at: PlanPoint;
  readonly pm: number;
}

/** Tapes that meet flatter than this leave the place vague along the tapes. [°] */
const FLAT = 20;

/**
 * A place from its distances to two drawn points: the crossing of two circles.
 * @returns Both crossings: the one to the left of the line from `a` to `b` first, then its mirror image; one point
 *   where the tapes
 *   just meet on the line.
 */
export function placeFromTapes(
  a: PlanPoint,
  fromA: number,
  b: PlanPoint,
  fromB: number,
  tapePm = TAPE_PM,
): Finding<readonly TapedPoint[]> {
  const base = distance(a, b);
  if (!(base > 0)) return refused('The two points measured from are the same: choose two corners apart.');
  if (!(fromA > 0 && fromB > 0))
    return refused(`Lengths of ${fromA.toFixed(2)} m and ${fromB.toFixed(2)} m: both must be longer than 0 m.`);
  const slack = 2 * tapePm;
  if (fromA + fromB < base - slack)
    return refused(`${words(fromA)} + ${words(fromB)} can't reach across ${words(base)}.`);
  if (Math.abs(fromA - fromB) > base + slack) {
    const [longer, shorter] = fromA > fromB ? [fromA, fromB] : [fromB, fromA];
    return refused(
      `${words(longer)} is more than ${words(shorter)} + ${words(base)} between the points: the tapes don't meet. ` +
        `Was one length read to another point?`,
    );
  }
  const along = (fromA * fromA - fromB * fromB + base * base) / (2 * base);
  const off = Math.sqrt(Math.max(0, fromA * fromA - along * along));
  const ux = (b[0] - a[0]) / base;
  const uy = (b[1] - a[1]) / base;
  const foot: PlanPoint = [a[0] + along * ux, a[1] + along * uy];
  // The two tapes cross at angle γ; an error of each moves the crossing by up to pm·√2/sin γ, but never more than the
  // sagitta.
  const sine = (base * off) / (fromA * fromB);
  const pm = Math.min((tapePm * Math.SQRT2) / Math.max(sine, 1e-6), Math.sqrt(2 * tapePm * (fromA + fromB)) + tapePm);
  const notes =
    sine < Math.sin(radiansOf(FLAT))
      ? [
          `The tapes meet in a flat triangle: the place may be off by ${pm.toFixed(2)} m. Better measure from a ` +
            `corner to its side.`,
        ]
      : [];
  if (off < ROUNDING) return found([{ at: foot, pm }], notes);
  return found(
    [
      { at: [foot[0] - off * uy, foot[1] + off * ux], pm },
      { at: [foot[0] + off * uy, foot[1] - off * ux], pm },
    ],
    notes,
  );
}

function words(metres: number): string {
  return `${Number(metres.toFixed(2))} m`.replace(/^(\d+) m$/, '$1.0 m');
}
