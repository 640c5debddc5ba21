/**
 * How tall a thing may stand unseen. Walls, hedges and buildings hide what is behind them when no more than a tenth of
 * the light passes through them; trees and cloth do not count, for leaves fall and cloth comes down. The ground is
 * level.
 *
 * A sight line from an eye at height e to a place at height z runs straight. A solid with its top at w that the line
 * crosses on the plan between the shares t1 and t2 of the way hides everything below e + (w − e)/t, with t = t1 where
 * it is taller than the eye (its near face decides) and t = t2 where it is lower (its far face does).
 */

import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { opennessOf } from '../../plan/defaults.ts';
import { cleanPath, distance, pointInRing } from '../../plan/geometry/shapes.ts';
import { countUp } from '../../plan/numbers/tolerances.ts';
import type { Eye, Feature, Plan, PlanPoint } from '../../plan/types.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { buildScene } from '../../scene/build.ts';
import type { Solid } from '../../scene/solids.ts';

/** Eyes on a line stand at most this far apart. [m] */
const EYE_STEP = 1;
/** What lets more of the light through than this does not hide. Our choice. */
const HIDES_UP_TO_OPENNESS = 0.1;
/**
 * Above this a hidden height is only said to be "over" it; below `LEAST_USEFUL` nothing worth standing there is hidden.
 * Our choice. [m]
 */
export const TALLEST_SAID = 4;
export const LEAST_USEFUL = 0.5;

/** Numbers a face takes in `Hider.faces`: ax, ay, bx, by. [m] */
const FACE = 4;

interface Hider {
  readonly top: number;
  readonly ring: readonly PlanPoint[];
  /** `FACE` numbers a side of the ring. */
  readonly faces: Float64Array;
}

/** Where somebody looks from. */
interface EyePoint {
  /** Id of the `eye` feature. */
  readonly id: string;
  readonly at: PlanPoint;
  /** Above the ground. [m] */
  readonly height: number;
  /** Of the onlooker's line, for which this place stands. [m] 0: it is no line */
  readonly stretch: number;
}

/** A yard laid out for asking what is seen: its eyes, and for each the solids that it does not stand in. */
export interface SightLines {
  /** The highest first: they see most. */
  readonly eyes: readonly EyePoint[];
  readonly hidersOf: readonly (readonly Hider[])[];
  /** Ids of the `eye` features, in the plan's order. */
  readonly onlookers: readonly string[];
}

/** A hidden height and the eye that sets it. */
export interface HiddenHeight {
  /**
   * A thing that stands on the ground here and is no taller is seen by nobody. [m] 0: seen whatever its height;
   * Infinity: hidden at any.
   */
  readonly height: number;
  /** Id of the eye that sees most; `null` where none sees anything. */
  readonly eye: string | null;
}

/**
 * Lays a plan's eyes and what hides out once. An eye inside a building or wall and below its top looks out of a window:
 * that solid does not hide.
 */
export function sightLinesOf(plan: Plan): SightLines {
  const onlookers = plan.features.filter((feature): feature is Eye => feature.kind === 'eye');
  const eyes = onlookers.flatMap(eyePointsOf).sort((a, b) => b.height - a.height);
  const hiders = buildScene({ ...plan, features: plan.features.filter(hides) }).states[0].flatMap(({ solids }) =>
    solids.flatMap(hidersOfSolid),
  );
  return {
    eyes,
    onlookers: onlookers.map(({ id }) => id),
    hidersOf: eyes.map((eye) => hiders.filter(({ top, ring }) => top <= eye.height || !pointInRing(eye.at, ring))),
  };
}

/**
 * How tall a thing may stand at a point unseen from all eyes. Without eyes: any height.
 * @param least, most heights below and above these are not told apart [m]
 */
export function hiddenHeightAt(sight: SightLines, [x, y]: PlanPoint, least = -Infinity, most = Infinity): HiddenHeight {
  let height = most;
  let eye: string | null = null;
  for (let k = 0; k < sight.eyes.length && height >= least; k++) {
    const hidden = hiddenFrom(sight.eyes[k], sight.hidersOf[k], x, y, height);
    if (hidden >= height) continue;
    height = hidden;
    eye = sight.eyes[k].id;
  }
  return { height, eye };
}

/** `hiddenHeightAt` of every cell, index = j·columns + i. [m] 0: cannot be hidden; Infinity: hidden at any height. */
export function hiddenHeightGrid(sight: SightLines, grid: GridSpec): Float64Array {
  const heights = new Float64Array(grid.columns * grid.rows).fill(Infinity);
  for (let k = 0; k < sight.eyes.length; k++) {
    const eye = sight.eyes[k];
    const hiders = sight.hidersOf[k];
    for (let j = 0; j < grid.rows; j++) {
      const y = grid.y0 + (j + 0.5) * grid.cell;
      for (let i = 0; i < grid.columns; i++) {
        const index = j * grid.columns + i;
        const hidden = hiddenFrom(eye, hiders, grid.x0 + (i + 0.5) * grid.cell, y, heights[index]);
        if (hidden < heights[index]) heights[index] = hidden;
      }
    }
  }
  return heights;
}

/** A hidden height as a person reads it: "cannot be hidden", "1.93 m", "over 4.00 m". */
export function hiddenHeightWords(height: number, units: Units): string {
  if (height < LEAST_USEFUL) return 'cannot be hidden';
  return height > TALLEST_SAID ? `over ${formatLength(TALLEST_SAID, units)}` : formatLength(height, units);
}

/**
 * How much of an upright at a point, from the ground to `top`, shows above what hides it from one eye [m]; where that
 * is no more than `least`, some value of at most that.
 */
export function seenAbove(
  sight: SightLines,
  eyeIndex: number,
  [x, y]: PlanPoint,
  top: number,
  least = -Infinity,
): number {
  return top - hiddenFrom(sight.eyes[eyeIndex], sight.hidersOf[eyeIndex], x, y, top - least);
}

function hides(feature: Feature): boolean {
  switch (feature.kind) {
    case 'building':
      return true;
    case 'wall':
    case 'hedge':
      return opennessOf(feature) <= HIDES_UP_TO_OPENNESS;
    default:
      return false;
  }
}

function hidersOfSolid(solid: Solid): Hider[] {
  if (solid.kind !== 'prism') return [];
  return solid.rings.map((ring) => ({
    top: solid.height,
    ring,
    faces: Float64Array.from(ring.flatMap((a, k) => [...a, ...ring[(k + 1) % ring.length]])),
  }));
}

function eyePointsOf({ id, path: drawn, height }: Eye): EyePoint[] {
  const path = cleanPath(drawn);
  if (path.length === 1) return [{ id, at: path[0], height, stretch: 0 }];
  return path.slice(1).flatMap((b, k) => {
    const a = path[k];
    const length = distance(a, b);
    const steps = countUp(length / EYE_STEP);
    // Both ends of a side stand for half a step; where two sides meet, the two halves are one place twice.
    return Array.from({ length: steps + 1 }, (_, n): EyePoint => {
      const at: PlanPoint = [a[0] + ((b[0] - a[0]) * n) / steps, a[1] + ((b[1] - a[1]) * n) / steps];
      return { id, at, height, stretch: (n === 0 || n === steps ? 0.5 : 1) * (length / steps) };
    });
  });
}

/**
 * Hidden height of a point from one eye, or some height of at least `enough` where it is that much. A place right under
 * the eye is seen. [m]
 */
function hiddenFrom(eye: EyePoint, hiders: readonly Hider[], x: number, y: number, enough: number): number {
  const [ex, ey] = eye.at;
  let hidden = 0;
  for (let n = 0; n < hiders.length && hidden < enough; n++) {
    const { top, faces } = hiders[n];
    const taller = top > eye.height;
    // Cheapest first: a lower solid never hides more than its own top.
    if (!taller && top <= hidden) continue;
    const share = crossing(faces, ex, ey, x, y, taller);
    if (share === Infinity) continue;
    const height = share === 0 ? Infinity : eye.height + (top - eye.height) / share;
    if (height > hidden) hidden = height;
  }
  return hidden;
}

/**
 * Where the line from an eye to a point crosses a ring's faces, as a share of the way: the first crossing, or the last
 * (1 where the point is inside); Infinity where it crosses none.
 */
function crossing(faces: Float64Array, ex: number, ey: number, x: number, y: number, first: boolean): number {
  const dx = x - ex;
  const dy = y - ey;
  let nearest = Infinity;
  let farthest = -Infinity;
  let crossings = 0;
  for (let f = 0; f < faces.length; f += FACE) {
    const ax = faces[f] - ex;
    const ay = faces[f + 1] - ey;
    const bx = faces[f + 2] - ex;
    const by = faces[f + 3] - ey;
    const aside = dx * ay - dy * ax;
    const bside = dx * by - dy * bx;
    if (aside > 0 === bside > 0) continue;
    const along = aside / (aside - bside);
    const squared = dx * dx + dy * dy;
    const share = (dx * (ax + along * (bx - ax)) + dy * (ay + along * (by - ay))) / squared;
    if (share < 0 || share > 1) {
      if (share > 1) crossings++;
      continue;
    }
    if (share < nearest) nearest = share;
    if (share > farthest) farthest = share;
  }
  // An odd number of faces still ahead: the point itself is inside.
  const inside = crossings % 2 === 1;
  if (first) return nearest === Infinity && inside ? 0 : nearest;
  return inside ? 1 : farthest === -Infinity ? Infinity : farthest;
}
