import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { ClothSheet } from '../../scene/solids.ts';
import type { Directions } from '../passes.ts';
import { ClothFrame } from './cloth-frame.ts';

/** Bearings are opened by this, so that no ray at the very edge of a sheet is passed by. [rad] */
const EDGE = 1e-9;
const ALL_ROUND = { from: -Math.PI, to: Math.PI };

/** Directions by their bearing, laid out once for many points. */
export interface Fan {
  readonly directions: Directions;
  /** From −π to π, rising. [rad] */
  readonly bearing: Float64Array;
  /** Index of each among the directions. */
  readonly ray: Int32Array;
}

export function fanOf(directions: Directions): Fan {
  const bearings = directions.x.map((x, k) => Math.atan2(directions.y[k], x));
  const ray = new Int32Array(directions.count).map((_, k) => k).sort((a, b) => bearings[a] - bearings[b]);
  return { directions, ray, bearing: bearings.map((_, n) => bearings[ray[n]]) };
}

/** What arrives at one point along many rays, laid out for asking over and over what cloth takes of it. */
export class PointRays {
  /** All that arrives. */
  readonly all: number;
  readonly point: SpacePoint;
  /** Of each ray that brings anything, by its bearing: the way it comes from, and what it brings. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly brings: Float64Array;
  private readonly bearing: Float64Array;
  /** All that arrives from the first bearing on, up to each ray, and one more. */
  private readonly upTo: Float64Array;

  /** @param brings what arrives along each of the directions; what is dark or shaded brings 0 */
  constructor(point: SpacePoint, { directions, bearing, ray }: Fan, brings: Float64Array) {
    let count = 0;
    for (let k = 0; k < brings.length; k++) if (brings[k] > 0) count++;
    this.point = point;
    this.bearing = new Float64Array(count);
    this.x = new Float64Array(count);
    this.y = new Float64Array(count);
    this.z = new Float64Array(count);
    this.brings = new Float64Array(count);
    this.upTo = new Float64Array(count + 1);
    let all = 0;
    for (let n = 0, at = 0; n < ray.length; n++) {
      const k = ray[n];
      if (brings[k] <= 0) continue;
      this.bearing[at] = bearing[n];
      this.x[at] = directions.x[k];
      this.y[at] = directions.y[k];
      this.z[at] = directions.z[k];
      this.brings[at] = brings[k];
      all += brings[k];
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
      this.upTo[this.firstFrom(high + 2 * EDGE)] - this.upTo[this.firstFrom(low - EDGE)];
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
    const { x, y, z, bearing, brings } = this;
    let taken = 0;
    for (let k = this.firstFrom(from - EDGE); k < bearing.length && bearing[k] <= to + EDGE; k++) {
      let transmittance = 1;
      for (let s = 0; s < frames.length; s++) transmittance *= frames[s].transmittance(x[k], y[k], z[k]);
      if (transmittance < 1) taken += brings[k] * (1 - transmittance);
    }
    return taken;
  }

  private firstFrom(from: number): number {
    let low = 0;
    let high = this.bearing.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.bearing[middle] < from) low = middle + 1;
      else high = middle;
    }
    return low;
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
