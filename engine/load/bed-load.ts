import type { GridSpec } from '../cast/grid.ts';
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

/** Scorch doses of one bed on any heat day, each cell with its own share of the beam and of the sky. */
export type BedScorcher = (heat: HeatDay) => BedScorch;

/** Lays a bed out once; its sky views are worked out once a yearly state. */
export function bedScorcher(scene: Scene, sky: SkyViewer, places: BedPlaces, row: PlantRow, limit: number): BedScorcher {
  const points = 'point' in places ? [places.point] : places.indices.map((index) => cellPoint(places.grid, index));
  const viewsOfState = new Map<number, readonly number[]>();
  return (heat) => {
    let views = viewsOfState.get(heat.state);
    if (!views) viewsOfState.set(heat.state, (views = bedViews(scene, sky, heat, places)));
    const doses = dosesAt(heat, row, limit, points, views);
    const worst = doses.reduce((best, dose, cell) => (dose > doses[best] ? cell : best), 0);
    return { dose: doses.reduce((sum, dose) => sum + dose, 0) / doses.length, worst: points[worst] };
  };
}

function cellPoint(grid: GridSpec, index: number): SpacePoint {
  const [x, y] = cellCenter(grid, index);
  return [x, y, grid.height];
}

function bedViews(scene: Scene, sky: SkyViewer, heat: HeatDay, places: BedPlaces): number[] {
  if ('point' in places) return [sky.at(places.point, heat.state)];
  const views = skyViewGrid(scene, places.grid, heat.day.monthDay);
  return places.indices.map((index) => views[index]);
}

function dosesAt(heat: HeatDay, row: PlantRow, limit: number, points: readonly SpacePoint[], views: readonly number[]): number[] {
  const { count, hours } = heat.samples;
  const sharesOfPoints = points.map((point) => heat.caster.sharesAt(point));
  const doses = points.map(() => 0);
  const table = thirstyTable(row, limit);
  for (let k = 0; k < count; k++) {
    table.begin(heat.moments[k]);
    for (let p = 0; p < doses.length; p++) doses[p] += Math.max(0, table.excess(sharesOfPoints[p][k], views[p])) * hours[k];
  }
  return doses;
}
