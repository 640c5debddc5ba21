import type { SpacePoint } from '../plan/geometry.ts';
import type { Sheet } from '../scene/solids.ts';
import type { Directions } from './passes.ts';
import { SheetFrame } from './sheet-frame.ts';

/** Bearings are opened by this, so that no ray at the very edge of a sheet is passed by. [rad] */
const EDGE = 1e-9;

/** Directions by their bearing, laid out once for many points. */
export interface Fan {
  readonly directions: Directions;
  /** From −π to π, rising. [rad] */
  readonly bearing: Float64Array;
  /** Index of each among the directions. */
  readonly ray: Int32Array;
}

export function fanOf(directions: Directions): Fan {
  const bearings = Float64Array.from(directions.x, (x, k) => Math.atan2(directions.y[k], x));
  const ray = Int32Array.from(bearings.keys()).sort((a, b) => bearings[a] - bearings[b]);
  return { directions, ray, bearing: Float64Array.from(ray, (k) => bearings[k]) };
}

/** What arrives at one point along many rays, laid out for asking over and over what cloth takes of it. */
export class PointRays {
  /** All that arrives. */
  readonly all: number;
  private readonly point: SpacePoint;
  /** Of each ray that brings anything, by its bearing. */
  private readonly bearing: Float64Array;
  private readonly x: Float64Array;
  private readonly y: Float64Array;
  private readonly z: Float64Array;
  private readonly brings: Float64Array;

  /** @param brings what arrives along each of the directions; what is dark or shaded brings 0 */
  constructor(point: SpacePoint, { directions, bearing, ray }: Fan, brings: Float64Array) {
    const kept = Int32Array.from(ray.keys()).filter((n) => brings[ray[n]] > 0);
    const ordered = (values: Float64Array) => Float64Array.from(kept, (n) => values[ray[n]]);
    this.point = point;
    this.bearing = Float64Array.from(kept, (n) => bearing[n]);
    this.x = ordered(directions.x);
    this.y = ordered(directions.y);
    this.z = ordered(directions.z);
    this.brings = ordered(brings);
    this.all = this.brings.reduce((sum, each) => sum + each, 0);
  }

  /** What sheets that hang all at once take of all that arrives. */
  takenBy(sheets: readonly Sheet[]): number {
    const [x, y, z] = this.point;
    const above = sheets.filter(({ corner, u, v }) => corner[2] + Math.max(0, u[2]) + Math.max(0, v[2]) > z);
    if (above.length === 0) return 0;
    const frames = above.map((sheet) => new SheetFrame(sheet, x, y, z));
    const { from, to } = bearingsOf(above, x, y);
    const taken = this.takenFrom(above, frames, from, Math.min(to, Math.PI));
    return to > Math.PI ? taken + this.takenFrom(above, frames, -Math.PI, to - 2 * Math.PI) : taken;
  }

  private takenFrom(sheets: readonly Sheet[], frames: readonly SheetFrame[], from: number, to: number): number {
    const { x, y, z, bearing, brings } = this;
    let taken = 0;
    for (let k = this.firstFrom(from - EDGE); k < bearing.length && bearing[k] <= to + EDGE; k++) {
      let passes = 1;
      for (let s = 0; s < frames.length; s++) if (frames[s].meets(x[k], y[k], z[k])) passes *= sheets[s].share;
      if (passes < 1) taken += brings[k] * (1 - passes);
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

/** Bearings between which the sheets are seen from a point, counter-clockwise, `from` within ±π; all round where no half of the sky is free of them. [rad] */
function bearingsOf(sheets: readonly Sheet[], x: number, y: number): { from: number; to: number } {
  const corners = sheets.flatMap(({ corner: [cx, cy], u, v }) => [[cx, cy], [cx + u[0], cy + u[1]], [cx + v[0], cy + v[1]], [cx + u[0] + v[0], cy + u[1] + v[1]]]);
  const bearings = corners.map(([cx, cy]) => Math.atan2(cy - y, cx - x)).sort((a, b) => a - b);
  // The widest gap between corners that follow each other; the sheets lie in the rest where it is more than half a turn.
  let widest = 2 * Math.PI + bearings[0] - bearings[bearings.length - 1];
  let from = bearings[0];
  for (let k = 1; k < bearings.length; k++) {
    if (bearings[k] - bearings[k - 1] <= widest) continue;
    widest = bearings[k] - bearings[k - 1];
    from = bearings[k];
  }
  return widest > Math.PI ? { from, to: from + 2 * Math.PI - widest } : { from: -Math.PI, to: Math.PI };
}
