import { HAND_BREADTH } from '../../../frame/layout/surroundings.ts';
import { degreesOf, wrapBearing } from '../../../plan/geometry/angles.ts';
import { cleanPath, distance, openRing, signedArea } from '../../../plan/geometry/shapes.ts';
import { pointToMillimetre } from '../../../plan/numbers/rounding.ts';
import type { Canopy, Plan, PlanPoint } from '../../../plan/types.ts';

/** A straight face of a wall or building from which cloth may hang. */
interface Face {
  readonly from: PlanPoint;
  readonly along: PlanPoint;
  readonly out: PlanPoint;
  readonly length: number;
  /** Cloth hangs no higher. [m] */
  readonly top: number;
}

/** From a face to the rail that its brackets hold: a hand's breadth, and a hair for rounding. [m] */
const STAND_OFF = HAND_BREADTH + 0.005;
/** A roof whose middle is farther than this from a face is not hung there. [m] */
const NEAR = 4;
/** The highest bracket stays this far under a wall's top. [m] */
const UNDER_TOP = 0.15;

/**
 * A level roof without drops, hung with its back from each face near by that the plan says may hold cloth: turned to
 * it, either way round, as high as it is or as the face allows.
 */
export function hungFrom(roof: Canopy, plan: Plan): Canopy[] {
  if ((roof.drops ?? []).length > 0 || roof.onWall === true) return [];
  return facesOf(plan).flatMap((face) => {
    const sides = [
      [roof.length, roof.width],
      [roof.width, roof.length],
    ] as const;
    return sides.flatMap(([length, width]) => onFace(roof, face, length, width));
  });
}

function onFace(roof: Canopy, { from, along, out, length: wall, top }: Face, length: number, width: number): Canopy[] {
  const [dx, dy] = [roof.center[0] - from[0], roof.center[1] - from[1]];
  const away = dx * out[0] + dy * out[1];
  const at = dx * along[0] + dy * along[1];
  const height = Math.min(roof.height, Math.floor((top - UNDER_TOP) * 20 + 1e-6) / 20);
  if (away <= 0 || away > NEAR || at < 0 || at > wall || width > wall || height < roof.height - 0.5) return [];
  const middle = Math.min(wall - width / 2, Math.max(width / 2, at));
  const reach = STAND_OFF + length / 2;
  const center = pointToMillimetre([
    from[0] + middle * along[0] + reach * out[0],
    from[1] + middle * along[1] + reach * out[1],
  ]);
  const turn = wrapBearing(degreesOf(Math.atan2(out[0], out[1])));
  return [{ ...roof, center, length, width, height, turn, onWall: true }];
}

/** Every face of what may hold cloth; of a wall both. */
function facesOf(plan: Plan): Face[] {
  return plan.features.flatMap((feature): Face[] => {
    if ((feature.kind !== 'wall' && feature.kind !== 'building') || feature.holdsCloth !== true) return [];
    if (feature.kind === 'wall') {
      const path = cleanPath(feature.path);
      return path
        .slice(1)
        .flatMap((end, k) => [1, -1].map((side) => faceOf(path[k], end, side, feature.thickness / 2, feature.height)));
    }
    const ring = openRing(feature.outline);
    const side = signedArea(ring) > 0 ? 1 : -1;
    return ring.map((from, k) => faceOf(from, ring[(k + 1) % ring.length], side, 0, feature.height));
  });
}

/** @param side 1: it looks to the right of its way, −1: to the left  @param off From the line to the face. [m] */
function faceOf(from: PlanPoint, to: PlanPoint, side: number, off: number, top: number): Face {
  const length = distance(from, to);
  const along: PlanPoint = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const out: PlanPoint = [side * along[1], -side * along[0]];
  return { from: [from[0] + off * out[0], from[1] + off * out[1]], along, out, length, top };
}
