/** How one patch of a face is lit through heat days. */
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { FacePatch } from '../../../scene/faces.ts';
import { faceGlow, SKY_ON_FACE } from '../wall-light.ts';
import type { LitDays } from './lit-days.ts';

/** A patch is looked at from so far in front of its face, so that the face does not hide it from the sun. [m] */
const OUTSIDE = 0.01;

/** What reaches a patch, and what shines on it and its longwave. [W/m²] */
export interface PatchLight {
  /** Share of sunlight that the patch throws back. */
  readonly reflects: number;
  /** Of the beam, one value a sample in which the sun stands before the face. */
  readonly shares: Float64Array;
  /** One value a sample of all the days. */
  readonly on: Float64Array;
  readonly glow: Float64Array;
  /** The samples in which cloth that is tried takes something of it. */
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
export function litPatch({ outward, reflects }: FacePatch, days: LitDays, shares: Float64Array): PatchLight {
  const { moments } = days;
  const { samples, cosine } = days.before(outward);
  const on = new Float64Array(moments.length);
  const glow = new Float64Array(moments.length);
  for (let n = 0; n < samples.length; n++) on[samples[n]] = shares[n] * moments[samples[n]].beam * cosine[n];
  for (let k = 0; k < on.length; k++) {
    on[k] += SKY_ON_FACE * moments[k].diffuse;
    glow[k] = faceGlow(moments[k].air, reflects, on[k]);
  }
  return { reflects, shares, on, glow, dimmed: NONE };
}

/** Where a patch is looked at from. */
export function outOf({ middle, outward }: FacePatch): SpacePoint {
  return [middle[0] + OUTSIDE * outward[0], middle[1] + OUTSIDE * outward[1], middle[2] + OUTSIDE * outward[2]];
}
