import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { area, centroid, openRing, pointInRing } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { Kept } from '../../plan/kept.ts';
import type { Bed, Plan, PlantRow } from '../../plan/types.ts';
import type { Scene } from '../../scene/solids.ts';
import { createDoser } from '../leaf/doses.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { surroundingsOfCells, surroundingsOn } from '../leaf/surroundings-at.ts';
import { cellReader } from '../light/cells.ts';
import { cellCenter, cellPoint, gridOf, maskOf, windowOf } from '../light/grid-of.ts';
import { meanNine } from '../light/nine.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { Nine } from '../types.ts';
import { nineAt, type Yard } from '../yard.ts';

/** A bed has cells of its own, whatever the map's. [m] */
const BED_CELL = 0.1;
/** A bed of more cells than a garden's (200 m²) is judged on a coarser grid, by about so many. */
const MOST_CELLS = 20_000;

/** The places where a bed is judged: cells of a grid, or one point where it has none. */
export type BedPlaces =
  | { readonly grid: GridSpec; readonly indices: readonly number[] }
  | { readonly point: SpacePoint };

/** A bed's cells at its plants' height, those without a value left out; its centroid where none is left. */
export function bedPlaces(plan: Plan, bed: Bed): BedPlaces {
  const ring = openRing(bed.outline);
  const cell = BED_CELL * Math.max(1, Math.ceil(Math.sqrt(area(ring) / BED_CELL ** 2 / MOST_CELLS)));
  const grid = windowOf(gridOf(plan, { cell, height: bed.plantHeight }), ring, bed.plantHeight);
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

const known = new Kept<Nine>();

/** The same of a yard that stands, once a period: several answers of one report tell it. */
export function nineOfBed(yard: Yard, bed: Bed): Nine {
  return known.of([yard.sky, yard.samples, bed], '', () => bedNine(yard, bedPlaces(yard.plan, bed)));
}

/** A heat day in a bed. */
export interface BedScorch {
  /** Mean of its cells. [K·h/day] */
  readonly dose: number;
  /** The cell with the largest dose. */
  readonly worst: SpacePoint;
}

/**
 * Scorch of a bed on heat days, each cell with its own share of the beam and of the sky.
 * @returns one entry a heat day
 */
export function bedScorches(
  scene: Scene,
  sky: SkyViewer,
  places: BedPlaces,
  row: PlantRow,
  limit: number,
  heats: readonly HeatDay[],
): BedScorch[] {
  const doser = createDoser(scene, heats, row, limit);
  if ('point' in places) {
    const doses = doser.at(places.point, surroundingsOn(sky, heats, places.point));
    return Array.from(doses, (dose) => ({ dose, worst: places.point }));
  }
  const { grid, indices } = places;
  const arounds = surroundingsOfCells(sky, heats, grid, indices);
  const sums = heats.map(() => 0);
  const largest = heats.map(() => -1);
  const worst = heats.map(() => cellPoint(grid, indices[0]));
  for (let cell = 0; cell < indices.length; cell++) {
    const point = cellPoint(grid, indices[cell]);
    const around = arounds.map((ofDay) => ofDay[cell]);
    const doses = doser.at(point, around);
    for (let d = 0; d < doses.length; d++) {
      sums[d] += doses[d];
      if (doses[d] <= largest[d]) continue;
      largest[d] = doses[d];
      worst[d] = point;
    }
  }
  return heats.map((_, d) => ({ dose: sums[d] / indices.length, worst: worst[d] }));
}
