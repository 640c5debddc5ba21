import { cleanPath, distance, turned } from '../../../plan/geometry/shapes.ts';
import type { PlanPoint, Screen } from '../../../plan/types.ts';
import type { Units } from '../../../plan/units/units.ts';
import { downToHand } from '../hand.ts';
import { roundedInward } from './moves.ts';

/** Where a screen is bent, as shares of its length. */
const BENDS = [1 / 3, 1 / 2, 2 / 3] as const;
/** A shorter screen is not bent: each leg wants a post at either end. [m] */
const LEAST_LENGTH = 1.5;

/**
 * A straight screen's cloth on two legs that stand square to each other, bent to either side of it.
 * @param units whose lengths the legs keep whole
 */
export function bentFrom(screen: Screen, units: Units): Screen[] {
  const path = cleanPath(screen.path);
  if (path.length !== 2) return [];
  const [a, b] = path;
  const length = distance(a, b);
  if (length < LEAST_LENGTH) return [];
  const along = (share: number): PlanPoint => {
    const part = downToHand(length * share, units) / length;
    return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part];
  };
  return BENDS.flatMap((share) => {
    const corner = along(share);
    return [90, -90].flatMap((turn): Screen[] => [
      { ...screen, path: [a, corner, roundedInward(turned(b, corner, turn), corner)] },
      { ...screen, path: [roundedInward(turned(a, corner, turn), corner), corner, b] },
    ]);
  });
}
