import { contours } from 'd3-contour';
import type { GridSpec, PlanPoint } from '../../engine/index.ts';

type Patch = Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>;

/** All ground of one grade. */
export interface GradeZone {
  /** 1 to 5. */
  readonly grade: number;
  /** Closed outlines; by the even-odd rule a ring inside another is a hole. */
  readonly rings: readonly (readonly PlanPoint[])[];
  /** Where its number stands: well inside, again and again over wide ground. */
  readonly numbersAt: readonly PlanPoint[];
}

/** A number needs this much of its own ground to every side, and keeps this far from the next of its kind. [m] */
const ROOM = 0.3;
const APART = 3;
const BESIDE_A_CROWN = 0.5;

/** A crown with its name, where a number would be in the way. [m] */
export interface Occupied {
  readonly at: PlanPoint;
  readonly radius: number;
}

/**
 * The ground of each grade that there is, lowest first.
 * @param grades 1 to 5 a cell, index = j·columns + i, NaN where there is none
 */
export function gradeZonesOf(grid: Patch, grades: Float64Array, occupied: readonly Occupied[]): readonly GradeZone[] {
  const trace = contours().size([grid.columns, grid.rows]);
  return [1, 2, 3, 4, 5].flatMap((grade): GradeZone[] => {
    const within = Array.from(grades, (value) => (value === grade ? 1 : 0));
    if (!within.includes(1)) return [];
    const rings = trace.contour(within, 0.5).coordinates.flat().map((ring) => ring.map(([u, v]): PlanPoint => [grid.x0 + u * grid.cell, grid.y0 + v * grid.cell]));
    return [{ grade, rings, numbersAt: numbersIn(grid, within, occupied) }];
  });
}

/** The cell farthest from the edge of the ground, then the farthest of those that are well apart from it, and so on; under a crown only where there is no other ground. */
function numbersIn({ x0, y0, cell, columns, rows }: Patch, within: readonly number[], occupied: readonly Occupied[]): PlanPoint[] {
  const depth = depthsOf(within, columns, rows);
  const deepest = [...depth.keys()].filter((index) => depth[index] * cell >= ROOM).toSorted((a, b) => depth[b] - depth[a]);
  const inside = deepest.map((index): PlanPoint => [x0 + ((index % columns) + 0.5) * cell, y0 + (Math.floor(index / columns) + 0.5) * cell]);
  const free = inside.filter(([x, y]) => occupied.every(({ at, radius }) => Math.hypot(at[0] - x, at[1] - y) > radius + BESIDE_A_CROWN));
  const places: PlanPoint[] = [];
  for (const [x, y] of free.length > 0 ? free : inside.slice(0, 1)) {
    if (places.every(([px, py]) => Math.hypot(px - x, py - y) >= APART)) places.push([x, y]);
  }
  return places;
}

/** How many steps (aslant ones count √2) a cell is from the nearest that is not within, the grid's edge included. */
function depthsOf(within: readonly number[], columns: number, rows: number): number[] {
  const depth = within.map((one) => (one === 0 ? 0 : Infinity));
  const at = (i: number, j: number): number => (i < 0 || j < 0 || i >= columns || j >= rows ? 0 : depth[j * columns + i]);
  const sweep = (i: number, j: number, side: 1 | -1): void => {
    const index = j * columns + i;
    const steps = [at(i - side, j) + 1, at(i, j - side) + 1, at(i - side, j - side) + Math.SQRT2, at(i + side, j - side) + Math.SQRT2];
    depth[index] = Math.min(depth[index], ...steps);
  };
  for (let j = 0; j < rows; j++) for (let i = 0; i < columns; i++) sweep(i, j, 1);
  for (let j = rows - 1; j >= 0; j--) for (let i = columns - 1; i >= 0; i--) sweep(i, j, -1);
  return depth;
}
