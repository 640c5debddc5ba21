import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import { firstFrom } from '../../scene/bearings.ts';
import type { ClothSheet } from '../../scene/solids.ts';
import type { Directions } from '../passes.ts';
import { ClothFrame, type Ways } from './cloth-frame.ts';

/** Room for what is left of rays. */
let left = new Float64Array(0);
const ALL_ROUND = { from: -Math.PI, to: Math.PI };

/** Directions by their bearing, from −π to π, rising; laid out once for many points. */
export interface Fan extends Ways {
  /** [rad] */
  readonly bearing: Float64Array;
  /** Index of each among the directions. */
  readonly ray: Int32Array;
}

export function fanOf({ count, x, y, z }: Directions): Fan {
  const bearings = x.map((each, k) => Math.atan2(y[k], each));
  const ray = new Int32Array(count).map((_, k) => k).sort((a, b) => bearings[a] - bearings[b]);
  const inOrder = (of: Float64Array): Float64Array => of.map((_, n) => of[ray[n]]);
  return { ray, bearing: inOrder(bearings), x: inOrder(x), y: inOrder(y), z: inOrder(z) };
}

/** What arrives at one point along many rays, laid out for asking over and over what cloth takes of it. */
export class PointRays {
  /** All that arrives. */
  readonly all: number;
  readonly point: SpacePoint;
  readonly fan: Fan;
  /** Place in the fan of each ray that brings anything, rising, and what it brings. */
  readonly places: Int32Array;
  readonly brings: Float64Array;
  /** All that arrives from the first bearing on, up to each ray, and one more. */
  private readonly upTo: Float64Array;

  /** @param brings what arrives along each of the directions; what is dark or shaded brings 0 */
  constructor(point: SpacePoint, fan: Fan, brings: Float64Array) {
    let count = 0;
    for (let k = 0; k < brings.length; k++) if (brings[k] > 0) count++;
    this.point = point;
    this.fan = fan;
    this.places = new Int32Array(count);
    this.brings = new Float64Array(count);
    this.upTo = new Float64Array(count + 1);
    let all = 0;
    for (let n = 0, at = 0; n < fan.ray.length; n++) {
      const each = brings[fan.ray[n]];
      if (each <= 0) continue;
      this.places[at] = n;
      this.brings[at] = each;
      all += each;
      this.upTo[++at] = all;
    }
    this.all = all;
  }

  /** No less than what sheets that hang all at once take: all that arrives from where they are. Quickly told. */
  mostTakenBy(sheets: readonly ClothSheet[]): number {
    const [x, y] = this.point;
    const above = this.above(sheets);
    if (above.length === 0) return 0;
    const { from, to } = bearingsOfSheets(above, x, y);
    const between = (low: number, high: number) =>
      this.upTo[this.firstFrom(high + 2 * ROUNDING)] - this.upTo[this.firstFrom(low - ROUNDING)];
    const first = between(from, Math.min(to, Math.PI));
    return to > Math.PI ? first + between(-Math.PI, to - 2 * Math.PI) : first;
  }

  /** What sheets that hang all at once take of all that arrives. */
  takenBy(sheets: readonly ClothSheet[]): number {
    const [x, y, z] = this.point;
    const above = this.above(sheets);
    if (above.length === 0) return 0;
    const frames = above.map((sheet) => new ClothFrame(sheet, x, y, z));
    const { from, to } = bearingsOfSheets(above, x, y);
    const taken = this.takenFrom(frames, from, Math.min(to, Math.PI));
    return to > Math.PI ? taken + this.takenFrom(frames, -Math.PI, to - 2 * Math.PI) : taken;
  }

  private above(sheets: readonly ClothSheet[]): ClothSheet[] {
    const z = this.point[2];
    return sheets.filter(({ corner, u, v }) => corner[2] + Math.max(0, u[2]) + Math.max(0, v[2]) > z);
  }

  private takenFrom(frames: readonly ClothFrame[], from: number, to: number): number {
    const { fan, places, brings } = this;
    const first = this.firstFrom(from - ROUNDING);
    const end = this.firstFrom(to + 2 * ROUNDING);
    if (left.length < end - first) left = new Float64Array(end - first);
    left.fill(1, 0, end - first);
    for (let s = 0; s < frames.length; s++) frames[s].dim(fan, places, first, end, left);
    let taken = 0;
    for (let k = first; k < end; k++) taken += brings[k] * (1 - left[k - first]);
    return taken;
  }

  private firstFrom(from: number): number {
    return firstFrom(this.places, firstFrom(this.fan.bearing, from));
  }
}

/**
 * Bearings between which the sheets are seen from a point, counter-clockwise, `from` within ±π; all round where no half
 * of the sky is free of them. [rad]
 */
export function bearingsOfSheets(sheets: readonly ClothSheet[], x: number, y: number): { from: number; to: number } {
  const firstX = sheets[0].corner[0] - x;
  const firstY = sheets[0].corner[1] - y;
  let right = 0;
  let left = 0;
  for (const { corner, u, v } of sheets) {
    for (let c = 0; c < 4; c++) {
      const cx = corner[0] - x + (c & 1 ? u[0] : 0) + (c & 2 ? v[0] : 0);
      const cy = corner[1] - y + (c & 1 ? u[1] : 0) + (c & 2 ? v[1] : 0);
      if (cx === 0 && cy === 0) return ALL_ROUND;
      const turned = Math.atan2(firstX * cy - firstY * cx, firstX * cx + firstY * cy);
      if (turned < right) right = turned;
      if (turned > left) left = turned;
    }
  }
  if (left - right >= Math.PI) return ALL_ROUND;
  const from = Math.atan2(firstY, firstX) + right;
  return from < -Math.PI
    ? { from: from + 2 * Math.PI, to: from + left - right + 2 * Math.PI }
    : { from, to: from + left - right };
}
