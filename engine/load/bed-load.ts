import { castGrid, type GridSpec } from '../cast/grid.ts';
import type { Passes } from '../cast/passes.ts';
import { skyViewGrid } from '../cast/sky.ts';
import { centroid, openRing, pointInRing, type SpacePoint } from '../plan/geometry.ts';
import type { Bed, Plan, PlantRow } from '../plan/types.ts';
import type { Scene } from '../scene/solids.ts';
import { cellReader } from './cells.ts';
import { cellCenter, gridOf, maskOf, windowOf } from './grid-of.ts';
import type { HeatDay } from './heat-day.ts';
import { meanNine } from './nine.ts';
import { thirstyTable } from './scorch.ts';
import type { SkyViewer } from './sky-viewer.ts';
import type { Nine } from './types.ts';
import { nineAt, type Yard } from './yard.ts';

/** A bed has cells of its own, whatever the map's. [m] */
const BED_CELL = 0.1;

/** The places where a bed is judged: cells of a grid, or one point where it has none. */
export type BedPlaces = { readonly grid: GridSpec; readonly indices: readonly number[] } | { readonly point: SpacePoint };

/** A bed's cells at its plants' height, those without a value left out; its centroid where none is left. */
export function bedPlaces(plan: Plan, bed: Bed): BedPlaces {
  const ring = openRing(bed.outline);
  const grid = windowOf(gridOf(plan, { cell: BED_CELL, height: bed.plantHeight }), ring, bed.plantHeight);
  const mask = maskOf(plan, grid);
  const indices: number[] = [];
  for (let index = 0; index < mask.length; index++) {
    if (mask[index] === 0 && pointInRing(cellCenter(grid, index), ring)) indices.push(index);
  }
  if (indices.length > 0) return { grid, indices };
  const [x, y] = centroid(ring);
  return { point: [x, y, bed.plantHeight] };
}

/** The nine quantities of a bed: the mean of its cells. */
export function bedNine(yard: Yard, places: BedPlaces): Nine {
  if ('point' in places) return nineAt(yard, places.point);
  const nineOfCell = cellReader(yard, places.grid);
  return meanNine(places.indices.map(nineOfCell));
}

/** A heat day in a bed. */
export interface BedScorch {
  /** Mean of its cells. [K·h/day] */
  readonly dose: number;
  /** The cell with the largest dose. */
  readonly worst: SpacePoint;
}

/** Scorch dose of a bed, each cell with its own share of the beam and of the sky. */
export function bedScorch(scene: Scene, sky: SkyViewer, heat: HeatDay, places: BedPlaces, row: PlantRow, limit: number): BedScorch {
  if ('point' in places) {
    const shares = heat.caster.sharesAt(places.point);
    return { dose: dosesOf(heat, row, limit, [shares], [sky.at(places.point, heat.state)])[0], worst: places.point };
  }
  const { grid, indices } = places;
  const views = skyViewGrid(scene, grid, heat.day.monthDay);
  const one = [Float64Array.of(1)];
  const sharesOfCells = indices.map(() => new Float64Array(heat.samples.count));
  for (let k = 0; k < heat.samples.count; k++) {
    const [shares] = castGrid(scene, grid, onePass(heat.passes, k), one);
    for (let cell = 0; cell < indices.length; cell++) sharesOfCells[cell][k] = shares[indices[cell]];
  }
  const doses = dosesOf(heat, row, limit, sharesOfCells, indices.map((index) => views[index]));
  const worst = doses.indexOf(Math.max(...doses));
  const [x, y] = cellCenter(grid, indices[worst]);
  return { dose: doses.reduce((sum, dose) => sum + dose, 0) / doses.length, worst: [x, y, grid.height] };
}

function dosesOf(heat: HeatDay, row: PlantRow, limit: number, sharesOfCells: readonly Float64Array[], views: readonly number[]): number[] {
  const doses = sharesOfCells.map(() => 0);
  for (let k = 0; k < heat.samples.count; k++) {
    const table = thirstyTable(heat.moments[k], row, limit);
    for (let cell = 0; cell < doses.length; cell++) {
      doses[cell] += Math.max(0, table.excess(sharesOfCells[cell][k], views[cell])) * heat.samples.hours[k];
    }
  }
  return doses;
}

function onePass(passes: Passes, k: number): Passes {
  return {
    count: 1,
    azimuth: passes.azimuth.subarray(k, k + 1),
    altitude: passes.altitude.subarray(k, k + 1),
    state: passes.state.subarray(k, k + 1),
  };
}
