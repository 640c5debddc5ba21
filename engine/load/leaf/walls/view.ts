/** The patches of faces that a point looks on: the rays that end on them, and the weights those add up to. */

import { skyRays } from '../../../cast/sky.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Faces } from '../../../scene/faces/faces.ts';
import type { Met, RayFan } from '../../../scene/faces/ray-fan.ts';
import type { OwnCrown } from '../../../scene/solids.ts';

/** The patches that a point's rays end on: their numbers, and their weights from above and from below. */
export interface View {
  readonly patches: Int32Array;
  readonly up: Float64Array;
  readonly down: Float64Array;
  readonly rays: EndedRays;
}

/** The rays of a point that end on faces. */
export interface EndedRays {
  readonly point: SpacePoint;
  /** Which of the sky's rays, each upwards, or mirrored downwards and then as −1 − its number. */
  readonly ray: Int16Array;
  readonly patch: Int32Array;
  /** How far off the face is. [m] */
  readonly reach: Float64Array;
  /** Where each of the fan's rays stands among these, first those upwards, then the same downwards; −1: on none. */
  readonly ofFan: Int16Array;
}

export interface Views {
  from(point: SpacePoint, state: number, own?: OwnCrown): View;
}

/** The sky's rays on the plan, what they meet, and the patches' sums, emptied after each view. */
export interface Desk {
  readonly directions: Float64Array;
  readonly every: number;
  readonly fan: RayFan;
  readonly met: Met;
  /** As long as there are patches. */
  up: Float64Array;
  down: Float64Array;
}

export function makeRoom(desk: Desk, patches: number): void {
  if (desk.up.length >= patches) return;
  desk.up = new Float64Array(2 * patches);
  desk.down = new Float64Array(2 * patches);
}

export function viewOf(rays: EndedRays, desk: Desk): View {
  return { ...sumsOf(rays, rays.ray.keys(), desk), rays };
}

/** The patches that some of a point's rays end on, and their weights. */
export function sumsOf(
  { ray, patch }: EndedRays,
  which: Iterable<number>,
  { every, up, down }: Desk,
): Omit<View, 'rays'> {
  const { weight } = skyRays();
  const seen: number[] = [];
  for (const n of which) {
    const index = patch[n];
    if (up[index] === 0 && down[index] === 0) seen.push(index);
    if (ray[n] >= 0) up[index] += every * weight[ray[n]];
    else down[index] += every * weight[-1 - ray[n]];
  }
  const sums = {
    patches: Int32Array.from(seen),
    up: Float64Array.from(seen, (index) => up[index]),
    down: Float64Array.from(seen, (index) => down[index]),
  };
  for (const index of seen) up[index] = down[index] = 0;
  return sums;
}

/** What of a view is one wall's or building's. */
export function partOf(view: View, faces: Faces, id: string): View {
  const { patches, up, down } = view;
  const its = (_: number, n: number) => faces.patch(patches[n]).id === id;
  return { ...view, patches: patches.filter(its), up: up.filter(its), down: down.filter(its) };
}
