import { boundsOf, closedRing, distanceToPath, openRing } from '../../../plan/geometry/shapes.ts';
import type { Cloth, Feature, Plan } from '../../../plan/types.ts';
import { type Walkable, walkableOf } from '../../place/walkable.ts';
import { hungOf } from '../kinds/hung.ts';

/** A person needs so much to pass. Common practice, no source. [m] */
const PASSES = 0.8;
/** Ground is looked at in steps of this. [m] */
const STEP = 0.2;
/** In a gap of just that width, however it runs, free cells hang together still. [m] */
const HALF = (PASSES - Math.SQRT2 * STEP) / 2;
/** So much ground may be cut off: corners nobody walks into. Our choice. [m²] */
const CUT_OFF = 0.5;

/**
 * Whether people still get everywhere they got before, past upright cloth. Beds and plants are walked up to; a gap of
 * 0.8 m is passed, one of 0.5 m is not, and between them it is as the steps fall.
 */
export function wayReader(plan: Plan): (cloth: readonly Cloth[]) => boolean {
  const most = CUT_OFF / STEP ** 2;
  let known: Walked | null = null;
  return (cloth) => {
    const lines = cloth.flatMap((one) =>
      hungOf(one)
        .uprights()
        .map(({ line }) => line),
    );
    if (lines.length === 0) return true;
    const { parts, left } = (known ??= walkedOn(plan, most));
    const { minX, minY, maxX, maxY } = boundsOf(lines.flat());
    const box = { minX: minX - HALF, minY: minY - HALF, maxX: maxX + HALF, maxY: maxY + HALF };
    return parts.every((part) => {
      const rest = left(part, box, (middle) => lines.some((line) => distanceToPath(middle, line) < HALF));
      const all = rest.all();
      return all > 0 && rest.hangsTogether(1 - most / all);
    });
  };
}

interface Walked extends Pick<Walkable, 'left'> {
  readonly parts: readonly Uint8Array[];
}

/** @param least what has no more cells than this is no ground to walk on */
function walkedOn(plan: Plan, least: number): Walked {
  const standing = plan.features.filter(({ kind }) => kind !== 'bed' && kind !== 'plant');
  // Along the edge of the property runs a rail or a fence, drawn or not.
  const path = closedRing(openRing(plan.site.boundary));
  const rail: Feature = { id: '', kind: 'screen', path, bottom: 0, height: 1, density: 0 };
  const { parts, left } = walkableOf(plan, [...standing, rail], { step: STEP, half: HALF });
  return { left, parts: parts().filter((part) => part.reduce((sum, each) => sum + each, 0) > least) };
}
