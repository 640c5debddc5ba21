import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import { SEGMENT } from '../../scene/outline.ts';
import { TOUCH } from '../../scene/ties.ts';
import { compassOf } from '../compass.ts';
import type { Directions } from '../passes.ts';

/** A solid as seen from a point, coarsely: enough to pass by most directions without meeting its geometry. */
export interface View {
  /** Level distance of its nearest and farthest part; nearest 0 when the point is over or under it. [m] */
  readonly near: number;
  readonly far: number;
  /** Heights of its lowest and highest part above the point. [m] */
  readonly foot: number;
  readonly top: number;
  /**
   * It lies from the right vector counter-clockwise to the left one, or `round` the point where no such window holds.
   */
  readonly round: boolean;
  readonly rightX: number;
  readonly rightY: number;
  readonly leftX: number;
  readonly leftY: number;
}

/** A view that passes by nothing but what is too high or too low. */
const ALL_ROUND = { near: 0, round: true, rightX: 0, rightY: 0, leftX: 0, leftY: 0 } as const;

/** Of what lies below the point no beam comes through. */
const BELOW: View = { ...ALL_ROUND, far: 0, foot: 0, top: 0 };

/** View of an upright disc. @param dx, dy Its centre, seen from the point. [m] */
export function viewOfDisc(dx: number, dy: number, radius: number, foot: number, top: number): View {
  if (top <= 0) return BELOW;
  const distance = Math.sqrt(dx * dx + dy * dy);
  const far = distance + radius;
  if (distance <= radius) return { ...ALL_ROUND, far, foot, top };
  const sin = radius / distance;
  const cos = Math.sqrt(1 - sin * sin);
  return {
    near: distance - radius,
    far,
    foot,
    top,
    round: false,
    rightX: dx * cos + dy * sin,
    rightY: dy * cos - dx * sin,
    leftX: dx * cos - dy * sin,
    leftY: dy * cos + dx * sin,
  };
}

/** View of an upright outline, `SEGMENT` numbers an edge. @param x, y The point. [m] */
export function viewOfOutline(outline: Float64Array, x: number, y: number, foot: number, top: number): View {
  if (top <= 0) return BELOW;
  let nearSquared = Infinity;
  let farSquared = 0;
  let winding = 0;
  let middleX = 0;
  let middleY = 0;
  for (let e = 0; e < outline.length; e += SEGMENT) {
    const ax = outline[e] - x;
    const ay = outline[e + 1] - y;
    const bx = outline[e + 2] - x;
    const by = outline[e + 3] - y;
    nearSquared = Math.min(nearSquared, squaredDistanceToEdge(ax, ay, bx, by));
    farSquared = Math.max(farSquared, ax * ax + ay * ay, bx * bx + by * by);
    winding += windingOf(ax, ay, bx, by);
    middleX += ax + bx;
    middleY += ay + by;
  }
  const far = Math.sqrt(farSquared);
  if (winding !== 0) return { ...ALL_ROUND, far, foot, top };
  const { round, rightX, rightY, leftX, leftY } = windowOf(outline, x, y, middleX, middleY);
  return { near: Math.sqrt(nearSquared), far, foot, top, round, rightX, rightY, leftX, leftY };
}

/** The narrowest window of bearings around an outline, given a vector to somewhere amid it. */
function windowOf(
  outline: Float64Array,
  x: number,
  y: number,
  middleX: number,
  middleY: number,
): Omit<View, 'near' | 'far' | 'foot' | 'top'> {
  let rightmost = Infinity;
  let leftmost = -Infinity;
  let rightX = 0;
  let rightY = 0;
  let leftX = 0;
  let leftY = 0;
  for (let e = 0; e < outline.length; e += 2) {
    const px = outline[e] - x;
    const py = outline[e + 1] - y;
    const turned = turnedBy(middleX * px + middleY * py, middleX * py - middleY * px);
    if (turned < rightmost) {
      rightmost = turned;
      rightX = px;
      rightY = py;
    }
    if (turned > leftmost) {
      leftmost = turned;
      leftX = px;
      leftY = py;
    }
  }
  // Half a turn or more: two vectors no longer tell inside from outside.
  const aside = rightX * leftY - rightY * leftX;
  const round = aside < 0 || (aside === 0 && rightX * leftX + rightY * leftY <= 0);
  return { round, rightX, rightY, leftX, leftY };
}

/** Grows with the angle to the left that a vector makes, given what of it goes ahead and what aside: −2 to 2. */
function turnedBy(ahead: number, aside: number): number {
  const share = aside / (Math.abs(ahead) + Math.abs(aside));
  return ahead >= 0 ? share : aside >= 0 ? 2 - share : -2 - share;
}

/**
 * Lists the passes that may meet a solid: those not yet at share 0, in which it stands, in its window and between
 * its foot and its top.
 * @param stands 1 for the passes in which it stands, 0 for the others; null: in all.
 * @param into Receives the indices, in no particular order. @returns How many.
 */
export function passesToward(
  view: View,
  directions: Directions,
  stands: Uint8Array | null,
  shares: Float64Array,
  into: Int32Array,
): number {
  const { near, far, foot, top, rightX, rightY, leftX, leftY } = view;
  if (top <= 0) return 0;
  const { x, y, z, level } = directions;
  const compass = compassOf(directions);
  const { order, slope, begins, bins } = compass;
  // From a place in its outline a solid spans no part of the compass.
  const round = view.round || near < TOUCH;
  const first = round ? 0 : compass.binOf(rightX, rightY, -ROUNDING);
  const last = round ? bins - 1 : compass.binOf(leftX, leftY, ROUNDING);
  const lowest = foot > 0 && far > 0 ? foot / far : -Infinity;
  const highest = near > 0 ? (top / near) * (1 + ROUNDING) : Infinity;
  let found = 0;
  for (let bin = first; ; bin = bin + 1 === bins ? 0 : bin + 1) {
    const end = begins[bin + 1];
    for (let n = compass.firstIn(bin, lowest); n < end && slope[n] <= highest; n++) {
      const k = order[n];
      const dz = z[k];
      if (dz * near > top * level[k] || dz * far < foot * level[k] || shares[k] === 0) continue;
      if (!view.round && (rightX * y[k] < rightY * x[k] || x[k] * leftY < y[k] * leftX)) continue;
      if (stands !== null && stands[k] === 0) continue;
      into[found++] = k;
    }
    if (bin === last) return found;
  }
}

/** What an edge a → b adds to the winding number of the origin: crossings of the ray along +x, upward less downward. */
export function windingOf(ax: number, ay: number, bx: number, by: number): number {
  if (ay <= 0) return by > 0 && ax * by > ay * bx ? 1 : 0;
  return by <= 0 && ax * by < ay * bx ? -1 : 0;
}

function squaredDistanceToEdge(ax: number, ay: number, bx: number, by: number): number {
  const ex = bx - ax;
  const ey = by - ay;
  const squared = ex * ex + ey * ey;
  const along = squared === 0 ? 0 : Math.min(1, Math.max(0, -(ax * ex + ay * ey) / squared));
  const dx = ax + along * ex;
  const dy = ay + along * ey;
  return dx * dx + dy * dy;
}
