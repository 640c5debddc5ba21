/** How one patch of a face is lit through heat days. */

import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { FacePatch } from '../../../scene/faces/patches.ts';
import { faceGlow } from '../wall-light.ts';
import type { LitDays } from './lit-days.ts';

/** A patch is looked at from so far in front of its face, so that the face does not hide it from the sun. [m] */
const OUTSIDE = 0.01;

/** What reaches a patch from the sun, and what it is the brighter and the warmer for than a patch in the shade. */
export interface PatchLight {
  /** Share of sunlight that the patch throws back. */
  readonly reflects: number;
  /** Of the beam, one value a sample in which the sun stands before the face. */
  readonly shares: Float64Array;
  /** The samples, among those of all the days, in which the sun reaches it. */
  readonly lit: Int32Array;
  /** How much more shines on it then, and its longwave, than in the shade. [W/m²] */
  readonly on: Float64Array;
  readonly glow: Float64Array;
  /** At which places of `lit` cloth that is tried takes something of it. */
  readonly dimmed: Int32Array;
}

export interface FaceLights {
  readonly days: LitDays;
  of(patch: number): PatchLight;
}

const NONE = new Int32Array(0);

/**
 * @param shares of the beam that reach the patch, one a sample in which the sun stands before its face [0 to 1]
 * @returns the light of a patch that nothing dims but what stands in the yard
 */
export function litPatch(patch: FacePatch, days: LitDays, shares: Float64Array): PatchLight {
  const { samples } = days.before(patch.outward);
  let count = 0;
  for (let n = 0; n < shares.length; n++) if (shares[n] > 0) count++;
  const lit = new Int32Array(count);
  const on = new Float64Array(count);
  const glow = new Float64Array(count);
  const shine = shineOn(patch, days, on, glow);
  for (let n = 0, at = 0; at < count; n++) {
    if (shares[n] === 0) continue;
    lit[at] = samples[n];
    shine(n, shares[n], at++);
  }
  return { reflects: patch.reflects, shares, lit, on, glow, dimmed: NONE };
}

/**
 * Works out what a share of the beam does to a patch: for the n-th of the samples in which the sun stands before it, at
 * a place in `on` and `glow`.
 */
export function shineOn(
  { outward, reflects }: FacePatch,
  days: LitDays,
  on: Float64Array,
  glow: Float64Array,
): (n: number, share: number, at: number) => void {
  const { samples, cosine } = days.before(outward);
  const shade = days.shade(reflects);
  const { moments } = days;
  return (n, share, at) => {
    const k = samples[n];
    on[at] = share * moments[k].beam * cosine[n];
    glow[at] = faceGlow(moments[k].air, reflects, on[at] + shade.on[k]) - shade.glow[k];
  };
}

/** Where a patch is looked at from. */
export function outOf({ middle, outward }: FacePatch): SpacePoint {
  return [middle[0] + OUTSIDE * outward[0], middle[1] + OUTSIDE * outward[1], middle[2] + OUTSIDE * outward[2]];
}
