import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { cellCount } from '../../plan/file/limits.ts';
import { boundsOf, openRing, pointInRing, strictlyInRing } from '../../plan/geometry/shapes.ts';
import { pathStripes } from '../../plan/geometry/stripes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { countUp, ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';

/** Used where nobody says otherwise. [m] */
export const GRID_DEFAULTS = { cell: 0.25, height: 0.5 } as const;
/** Work that nobody need wait for: cells, each as often as things throw shade, eight things to one. */
const USUAL_WORK = 60_000;
const THINGS_TO_ONE = 8;

/** The grid over a plan's boundary: its lower-left corner is the smallest x and y of the boundary's points. */
export function gridOf(plan: Plan, { cell, height }: { readonly cell: number; readonly height: number }): GridSpec {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  return {
    x0: minX,
    y0: minY,
    cell,
    columns: cellsAlong(maxX - minX, cell),
    rows: cellsAlong(maxY - minY, cell),
    height,
  };
}

/**
 * Edge of a cell where nobody says otherwise: 0.25 m, twice, four, eight times as much … for a ground so large or so
 * crowded that a map of it would take long. [m]
 */
export function usualCell({ site, features }: Pick<Plan, 'site' | 'features'>): number {
  const { minX, minY, maxX, maxY } = boundsOf(site.boundary);
  const things = features.reduce((sum, thing) => sum + ('path' in thing ? thing.path.length - 1 : 1), 0);
  let { cell }: { cell: number } = GRID_DEFAULTS;
  while (cellCount(maxX - minX, maxY - minY, cell) * (1 + things / THINGS_TO_ONE) > USUAL_WORK) cell *= 2;
  return cell;
}

/** Cells of a grid that lie over a box, on the same anchor, at a height of their own; at least one. */
export function windowOf(grid: GridSpec, ring: readonly PlanPoint[], height: number): GridSpec {
  const { minX, minY, maxX, maxY } = boundsOf(ring);
  const left = Math.floor((minX - grid.x0) / grid.cell);
  const bottom = Math.floor((minY - grid.y0) / grid.cell);
  const right = Math.max(left + 1, Math.ceil((maxX - grid.x0) / grid.cell));
  const top = Math.max(bottom + 1, Math.ceil((maxY - grid.y0) / grid.cell));
  return {
    x0: grid.x0 + left * grid.cell,
    y0: grid.y0 + bottom * grid.cell,
    cell: grid.cell,
    columns: right - left,
    rows: top - bottom,
    height,
  };
}

/** Centre of the cell of an index. [m] */
export function cellCenter(grid: GridSpec, index: number): PlanPoint {
  const i = index % grid.columns;
  const j = (index - i) / grid.columns;
  return [grid.x0 + (i + 0.5) * grid.cell, grid.y0 + (j + 0.5) * grid.cell];
}

/** The same at the grid's height. */
export function cellPoint(grid: GridSpec, index: number): SpacePoint {
  const [x, y] = cellCenter(grid, index);
  return [x, y, grid.height];
}

/**
 * Which cells have no value: 1 where the centre lies outside the boundary, or inside the footprint of a building (eaves
 * aside) or of a wall taller than the grid's height; else 0. Index = j·columns + i. Hedges, crowns and trunks never
 * take a cell away.
 */
export function maskOf(plan: Plan, grid: GridSpec): Uint8Array {
  const mask = new Uint8Array(grid.columns * grid.rows);
  const boundary = openRing(plan.site.boundary);
  for (let index = 0; index < mask.length; index++) {
    if (!pointInRing(cellCenter(grid, index), boundary, ROUNDING)) mask[index] = 1;
  }
  for (const { ring } of footprintsAbove(plan, grid.height)) maskRing(mask, grid, ring);
  return mask;
}

/** Footprints of the buildings and walls taller than a height, counter-clockwise, with the feature each belongs to. */
function footprintsAbove(plan: Plan, height: number): { readonly id: string; readonly ring: readonly PlanPoint[] }[] {
  return plan.features.flatMap((feature) => {
    if (feature.kind === 'building' && feature.height > height)
      return [{ id: feature.id, ring: openRing(feature.outline) }];
    if (feature.kind !== 'wall' || feature.height <= height) return [];
    return pathStripes(feature.path, feature.thickness).map((ring) => ({ id: feature.id, ring }));
  });
}

/** Whether a point lies in a footprint and not on its edge. */
export function strictlyInside(point: PlanPoint, ring: readonly PlanPoint[]): boolean {
  return strictlyInRing(point, ring, ROUNDING);
}

function maskRing(mask: Uint8Array, grid: GridSpec, ring: readonly PlanPoint[]): void {
  const { minX, minY, maxX, maxY } = boundsOf(ring);
  const firstColumn = Math.max(0, Math.floor((minX - grid.x0) / grid.cell) - 1);
  const lastColumn = Math.min(grid.columns - 1, Math.ceil((maxX - grid.x0) / grid.cell));
  const firstRow = Math.max(0, Math.floor((minY - grid.y0) / grid.cell) - 1);
  const lastRow = Math.min(grid.rows - 1, Math.ceil((maxY - grid.y0) / grid.cell));
  for (let j = firstRow; j <= lastRow; j++) {
    for (let i = firstColumn; i <= lastColumn; i++) {
      const index = j * grid.columns + i;
      if (mask[index] === 0 && strictlyInside(cellCenter(grid, index), ring)) mask[index] = 1;
    }
  }
}

/** Cells to cover a length; a length a hair over a whole number of cells takes no more. */
function cellsAlong(length: number, cell: number): number {
  return Math.max(1, countUp(length / cell));
}
