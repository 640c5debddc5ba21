/** The sides and tops of walls and buildings as they stand, before they are cut into patches. */

import { boundsOf } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { SEGMENT, unionOutline } from '../outline.ts';
import type { Occluder, Ring } from '../solids.ts';
import { TOUCH } from '../ties.ts';

/** What every face says of itself. */
export interface Face {
  /** Of the wall or building. */
  readonly id: string;
  /** Share of sunlight that it throws back. */
  readonly reflects: number;
}

/** Upright, outward to the right of a → b. */
export interface Side extends Face {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** [m] */
  readonly length: number;
  readonly height: number;
  /** Outward, of length 1. */
  readonly nx: number;
  readonly ny: number;
  readonly outward: SpacePoint;
}

/** A top is met from above alone, an eaves' sheet from below as well. */
export interface Level extends Face {
  readonly rings: readonly Ring[];
  readonly height: number;
  readonly thin: boolean;
  readonly upward: SpacePoint;
  readonly downward: SpacePoint;
  readonly minX: number;
  readonly minY: number;
  readonly wide: number;
  readonly deep: number;
}

/** Shares of sunlight that the faces of a yard throw back, each once. */
export function faceColours(occluders: readonly Occluder[]): number[] {
  const all = occluders.flatMap(({ solids }) =>
    solids.flatMap((solid) => (solid.kind === 'prism' && solid.reflects !== null ? [solid.reflects] : [])),
  );
  return [...new Set(all)];
}

/** The outer sides of a wall or building: where parts of it overlap, the sides of all of them together. */
export function sidesOf({ id, solids }: Occluder): Side[] {
  return solids.flatMap((solid) => {
    if (solid.kind !== 'prism' || solid.reflects === null) return [];
    const { height, reflects, rings } = solid;
    const outline = unionOutline(rings);
    return Array.from({ length: outline.length / SEGMENT }, (_, k) => {
      const [ax, ay, bx, by] = outline.subarray(k * SEGMENT, (k + 1) * SEGMENT);
      const length = Math.hypot(bx - ax, by - ay);
      const [nx, ny] = [(by - ay) / length, (ax - bx) / length];
      const outward: SpacePoint = [nx, ny, 0];
      return { id, reflects, ax, ay, bx, by, length, height, nx, ny, outward };
    }).filter(({ length }) => length > TOUCH);
  });
}

/** Its tops, and the sheets of its eaves. */
export function levelsOf({ id, solids }: Occluder): Level[] {
  return solids.flatMap((solid) => {
    if ((solid.kind !== 'prism' && solid.kind !== 'lid') || solid.reflects === null) return [];
    const { rings, height, reflects } = solid;
    const { minX, minY, maxX, maxY } = boundsOf(rings.flat());
    const [wide, deep] = [maxX - minX, maxY - minY];
    const [upward, downward]: SpacePoint[] = [
      [0, 0, 1],
      [0, 0, -1],
    ];
    const thin = solid.kind === 'lid';
    return [{ id, reflects, rings, height, thin, upward, downward, minX, minY, wide, deep }];
  });
}
