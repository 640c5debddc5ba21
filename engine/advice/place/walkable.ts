/** The ground on which people walk between what stands, as cells joined by their edges. */

import { joinedCells } from '../../cast/grids/joined-cells.ts';
import { potOf } from '../../plan/defaults.ts';
import { type Bounds, boundsOf, distance, distanceToPath, openRing, pointInRing } from '../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../plan/geometry/trunk.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';

/** How it is walked over, and how far off what stands a person keeps the middle. [m] */
interface Walker {
  readonly step: number;
  readonly half: number;
}

interface Left {
  /** How many cells. */
  all(): number;
  /** Whether that share of them does. */
  hangsTogether(share: number): boolean;
}

export interface Walkable {
  /** Middles of all free cells. */
  readonly walked: readonly PlanPoint[];
  /** Each part that hangs together: 1 where a cell is of it. */
  parts(): Uint8Array[];
  /** The largest of them. */
  readonly main: Uint8Array;
  /** What is left of a part. @param box round all that is taken */
  left(part: Uint8Array, box: Bounds, isTaken: (middle: PlanPoint) => boolean): Left;
}

/** @param features what stands in the way */
export function walkableOf(plan: Plan, features: readonly Feature[], { step, half }: Walker): Walkable {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const boundary = openRing(plan.site.boundary);
  const columns = Math.ceil((maxX - minX) / step);
  const rows = Math.ceil((maxY - minY) / step);
  const centre = (index: number): PlanPoint => [
    minX + ((index % columns) + 0.5) * step,
    minY + (Math.floor(index / columns) + 0.5) * step,
  ];
  const free = Uint8Array.from({ length: columns * rows }, (_, index) =>
    pointInRing(centre(index), boundary) && features.every((feature) => isClear(feature, centre(index), half)) ? 1 : 0,
  );
  const joined = joinedCells(columns, rows);
  const rest = new Uint8Array(free.length);
  const left: Left = {
    all: () => rest.reduce((sum, each) => sum + each, 0),
    hangsTogether: (share) => joined.hangsTogether(rest, share),
  };
  return {
    walked: [...free.keys()].filter((index) => free[index] === 1).map(centre),
    parts: () =>
      joined.parts(free).map((cells) => {
        const part = new Uint8Array(free.length);
        for (const cell of cells) part[cell] = 1;
        return part;
      }),
    main: joined.largest(free),
    left(part, box, isTaken) {
      rest.set(part);
      const [firstRow, lastRow] = [box.minY, box.maxY].map((y) =>
        Math.min(rows - 1, Math.max(0, Math.floor((y - minY) / step))),
      );
      for (let index = firstRow * columns; index < (lastRow + 1) * columns; index++)
        if (rest[index] === 1 && isTaken(centre(index))) rest[index] = 0;
      return left;
    },
  };
}

function isClear(feature: Feature, at: PlanPoint, half: number): boolean {
  switch (feature.kind) {
    case 'building':
    case 'bed':
      return !pointInRing(at, openRing(feature.outline), half);
    case 'wall':
    case 'hedge':
      return distanceToPath(at, feature.path) >= half + feature.thickness / 2;
    case 'tree':
      return distance(at, feature.at) >= half + trunkRadius(feature.height);
    case 'plant':
      return distance(at, feature.at) >= half + potOf(feature).width / 2;
    case 'screen':
      return distanceToPath(at, feature.path) >= half;
    default:
      return true;
  }
}
