/** Where the number of a grade stands on its ground, on the map and on paper. */

import { centreOf, type GridSpec } from '../../cast/grids/grid-spec.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';

/** A number needs this much of its own ground to every side, and keeps this far from the next of its kind. [m] */
const ROOM = 0.3;
const APART = 3;
const BESIDE_A_CROWN = 0.5;

/** A crown with its name, where a number would be in the way. [m] */
export interface Occupied {
  readonly at: PlanPoint;
  readonly radius: number;
}

/** Every crown of the plan. */
export function crownsOf({ features }: Plan): Occupied[] {
  return features.flatMap((feature): Occupied[] =>
    feature.kind === 'plant'
      ? [{ at: feature.at, radius: feature.spread / 2 }]
      : feature.kind === 'tree'
        ? [{ at: feature.at, radius: feature.crownWidth / 2 }]
        : [],
  );
}

/**
 * The cell farthest from the edge of the ground, then the farthest of those that are well apart from it, and so on;
 * under a crown only where there is no other ground.
 * @param within 1 for a cell of the grade, else 0; index = j·columns + i @param occupied Ground to keep clear of
 */
export function gradeNumbersAt(grid: GridSpec, within: readonly number[], occupied: readonly Occupied[]): PlanPoint[] {
  const { cell, columns, rows } = grid;
  const depth = depthsOf(within, columns, rows);
  const deepest = [...depth.keys()]
    .filter((index) => depth[index] * cell >= ROOM)
    .toSorted((a, b) => depth[b] - depth[a]);
  const inside = deepest.map((index) => centreOf(grid, index % columns, Math.floor(index / columns)));
  const free = inside.filter(([x, y]) =>
    occupied.every(({ at, radius }) => Math.hypot(at[0] - x, at[1] - y) > radius + BESIDE_A_CROWN),
  );
  const places: PlanPoint[] = [];
  for (const [x, y] of free.length > 0 ? free : inside.slice(0, 1)) {
    if (places.every(([px, py]) => Math.hypot(px - x, py - y) >= APART)) places.push([x, y]);
  }
  return places;
}

/** How many steps (aslant ones count √2) a cell is from the nearest that is not within, the grid's edge included. */
function depthsOf(within: readonly number[], columns: number, rows: number): number[] {
  const depth = within.map((one) => (one === 0 ? 0 : Infinity));
  const at = (i: number, j: number): number =>
    i < 0 || j < 0 || i >= columns || j >= rows ? 0 : depth[j * columns + i];
  const sweep = (i: number, j: number, side: 1 | -1): void => {
    const index = j * columns + i;
    const steps = [
      at(i - side, j) + 1,
      at(i, j - side) + 1,
      at(i - side, j - side) + Math.SQRT2,
      at(i + side, j - side) + Math.SQRT2,
    ];
    depth[index] = Math.min(depth[index], ...steps);
  };
  for (let j = 0; j < rows; j++) for (let i = 0; i < columns; i++) sweep(i, j, 1);
  for (let j = rows - 1; j >= 0; j--) for (let i = columns - 1; i >= 0; i--) sweep(i, j, -1);
  return depth;
}
