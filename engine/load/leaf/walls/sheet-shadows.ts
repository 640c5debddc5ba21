/** Where a sheet of cloth throws its shadow on faces: samples whose shadow misses a patch are passed over unasked. */

import { ClothFrame } from '../../../cast/points/cloth-frame.ts';
import { dot, type SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { FacePatch } from '../../../scene/faces/patches.ts';
import type { ClothSheet } from '../../../scene/solids.ts';
import type { Facing, LitDays } from './lit-days.ts';
import { outOf } from './patch-light.ts';

/** What a sheet takes of the sun on faces. */
export class SheetShadows {
  private readonly sheet: ClothSheet;
  private readonly days: LitDays;
  /** By the way out of a face: where on its plane the sheet's shadow lies. */
  private readonly bounds = new Map<SpacePoint, Bounds>();

  constructor(sheet: ClothSheet, days: LitDays) {
    this.sheet = sheet;
    this.days = days;
  }

  /** @param into receives what is left of `shares`; `null`: a copy is made if anything is taken @returns it */
  dim(patch: FacePatch, shares: Float64Array, into: Float64Array | null): Float64Array | null {
    const { outward } = patch;
    const { directions } = this.days.before(outward);
    const out = outOf(patch);
    const { all, bounds } = this.boundsOn(outward, out);
    const [s, t] = onAxes(outward, out);
    if (s < all[0] || s > all[1] || t < all[2] || t > all[3]) return into;
    let frame: ClothFrame | null = null;
    let left = into;
    for (let n = 0, at = 0; n < directions.count; n++, at += 4) {
      if (s < bounds[at] || s > bounds[at + 1] || t < bounds[at + 2] || t > bounds[at + 3] || shares[n] === 0) continue;
      frame ??= new ClothFrame(this.sheet, ...out);
      const transmittance = frame.transmittance(directions.x[n], directions.y[n], directions.z[n]);
      if (transmittance === 1) continue;
      left ??= shares.slice();
      left[n] *= transmittance;
    }
    return left;
  }

  private boundsOn(outward: SpacePoint, out: SpacePoint): Bounds {
    let bounds = this.bounds.get(outward);
    if (!bounds) {
      bounds = shadowBounds(this.sheet, outward, dot(outward, out), this.days.before(outward));
      this.bounds.set(outward, bounds);
    }
    return bounds;
  }
}

/** Between what a sheet's shadow lies along the two axes of a plane: from, to, from, to. [m] */
interface Bounds {
  /** Of all samples, 4 numbers. */
  readonly all: Float64Array;
  /** 4 numbers a sample. */
  readonly bounds: Float64Array;
}

/** Wider than any rounding. [m] */
const SLACK = 1e-6;

/** Of the plane outward · p = away; a sheet that is not wholly before it has no bounds there. */
function shadowBounds(
  { corner, u, v }: ClothSheet,
  outward: SpacePoint,
  away: number,
  { directions, cosine }: Facing,
): Bounds {
  const bounds = new Float64Array(4 * directions.count);
  const all = Float64Array.of(Infinity, -Infinity, Infinity, -Infinity);
  const corners = [0, 1, 2, 3].map((c): SpacePoint => [
    corner[0] + (c & 1 ? u[0] : 0) + (c & 2 ? v[0] : 0),
    corner[1] + (c & 1 ? u[1] : 0) + (c & 2 ? v[1] : 0),
    corner[2] + (c & 1 ? u[2] : 0) + (c & 2 ? v[2] : 0),
  ]);
  const before = corners.map((each) => dot(outward, each) - away);
  if (before.every((distance) => distance <= 0)) return { all, bounds };
  if (before.some((distance) => distance < 0)) {
    for (let at = 0; at < bounds.length; at += 2) bounds.set([-Infinity, Infinity], at);
    return { all: Float64Array.of(-Infinity, Infinity, -Infinity, Infinity), bounds };
  }
  const [fromS, fromT] = [0, 1].map((axis) => corners.map((each) => onAxes(outward, each)[axis]));
  for (let n = 0, at = 0; n < directions.count; n++, at += 4) {
    const [goS, goT] = onAxes(outward, [directions.x[n], directions.y[n], directions.z[n]]);
    const along = corners.map((_, c) => fromS[c] - (before[c] / cosine[n]) * goS);
    const up = corners.map((_, c) => fromT[c] - (before[c] / cosine[n]) * goT);
    bounds[at] = Math.min(...along) - SLACK;
    bounds[at + 1] = Math.max(...along) + SLACK;
    bounds[at + 2] = Math.min(...up) - SLACK;
    bounds[at + 3] = Math.max(...up) + SLACK;
    for (let b = 0; b < 4; b += 2) {
      if (bounds[at + b] < all[b]) all[b] = bounds[at + b];
      if (bounds[at + b + 1] > all[b + 1]) all[b + 1] = bounds[at + b + 1];
    }
  }
  return { all, bounds };
}

/** Along an upright face and up it; on a level one along x and y. */
function onAxes([nx, ny, nz]: SpacePoint, [x, y, z]: SpacePoint): [number, number] {
  return nz === 0 ? [y * nx - x * ny, z] : [x, y];
}
