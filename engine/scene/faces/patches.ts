/** How a face is cut into patches, and on which of them a place lies. */

import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { TOUCH } from '../ties.ts';
import type { Level, Side } from './face.ts';

/** How a face is cut into parts along and up (or across). */
export interface Cut {
  /** Number of its first patch, and how many it has along and up; a level face has as many again for its underside. */
  readonly first: number;
  readonly along: number;
  readonly up: number;
}

export interface Cuts {
  /** Into patches as small as asked for, and into finer ones for what looks at it from close by. */
  readonly coarse: Cut;
  readonly fine: Cut;
}

/** A part of a face, lit alike all over. */
export interface FacePatch {
  /** Of the wall or building. */
  readonly id: string;
  readonly reflects: number;
  readonly middle: SpacePoint;
  /** The way out of the face, of length 1: the same object for all patches of one face. */
  readonly outward: SpacePoint;
}

export function patchOnSide(side: Side, { first, along, up }: Cut, x: number, y: number, z: number): number {
  const { ax, ay, nx, ny, length, height } = side;
  // Along a → b, whose way is (−ny, nx) for an outward way to its right.
  const i = part((y - ay) * nx - (x - ax) * ny, length, along);
  return first + part(z, height, up) * along + i;
}

export function patchOnLevel(
  level: Level,
  { first, along, up }: Cut,
  x: number,
  y: number,
  fromBelow: boolean,
): number {
  const { minX, minY, wide, deep } = level;
  const within = part(y - minY, deep, up) * along + part(x - minX, wide, along);
  return first + within + (fromBelow ? along * up : 0);
}

/** Which of so many equal parts of a stretch a place lies in. */
function part(at: number, length: number, parts: number): number {
  return Math.min(parts - 1, Math.max(0, Math.floor((at / length) * parts)));
}

/** Parts no longer than the patch asks for. */
export function partsOf(length: number, size: number): number {
  return Math.max(1, Math.ceil(length / size - TOUCH));
}
