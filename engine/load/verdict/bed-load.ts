import type { GridSpec } from '../../cast/grid.ts';
import type { Passes } from '../../cast/passes.ts';
import { createPointCaster } from '../../cast/share.ts';
import { skyViewGrid } from '../../cast/sky.ts';
import { centroid, openRing, pointInRing, type SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Bed, Plan, PlantRow } from '../../plan/types.ts';
import type { Scene } from '../../scene/solids.ts';
import { cellReader } from '../light/cells.ts';
import { cellCenter, gridOf, maskOf, windowOf } from '../light/grid-of.ts';
import { harmfulSamples } from '../leaf/harmful-samples.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { meanNine } from '../light/nine.ts';
import { shareStep, skyStep, thirstyTable } from '../leaf/scorch.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { Nine } from '../types.ts';
import { nineAt, type Yard } from '../yard.ts';

/** A bed has cells of its own, whatever the map's. [m] */
const BED_CELL = 0.1;

/** The places where a bed is judged: cells of a grid, or one point where it has none. */
export type BedPlaces =
  { readonly grid: GridSpec; readonly indices: readonly number[] } | { readonly point: SpacePoint };

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

/**
 * Scorch of a bed on heat days, each cell with its own share of the beam and of the sky. All days are cast together, a
 * cell at a time, and only
 * the samples at which a leaf can be too hot; sky views are worked out once a yearly state.
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
  const points = 'point' in places ? [places.point] : places.indices.map((index) => cellPoint(places.grid, index));
  const doses = dosesOf(scene, heats, row, limit, points, viewsOfDays(scene, sky, heats, places));
  return doses.map((ofCells) => {
    const worst = ofCells.reduce((best, dose, cell) => (dose > ofCells[best] ? cell : best), 0);
    return { dose: ofCells.reduce((sum, dose) => sum + dose, 0) / points.length, worst: points[worst] };
  });
}

function cellPoint(grid: GridSpec, index: number): SpacePoint {
  const [x, y] = cellCenter(grid, index);
  return [x, y, grid.height];
}

/** Steps of sky view of every cell, one array a heat day; days in the same yearly state share theirs. */
function viewsOfDays(scene: Scene, sky: SkyViewer, heats: readonly HeatDay[], places: BedPlaces): Uint8Array[] {
  const ofState = new Map<number, Uint8Array>();
  return heats.map((heat) => {
    const views = ofState.get(heat.state) ?? Uint8Array.from(bedViews(scene, sky, heat, places), skyStep);
    ofState.set(heat.state, views);
    return views;
  });
}

function bedViews(scene: Scene, sky: SkyViewer, heat: HeatDay, places: BedPlaces): number[] {
  if ('point' in places) return [sky.at(places.point, heat.state)];
  const views = skyViewGrid(scene, places.grid, heat.day.monthDay);
  return places.indices.map((index) => views[index]);
}

/** Doses of every point, one array a heat day. @param views steps of sky view, alike */
function dosesOf(
  scene: Scene,
  heats: readonly HeatDay[],
  row: PlantRow,
  limit: number,
  points: readonly SpacePoint[],
  views: readonly Uint8Array[],
): Float64Array[] {
  const { count, day, sample, passes } = harmfulSamples(heats, row, limit);
  const doses = heats.map(() => new Float64Array(points.length));
  const steps = shareSteps(scene, passes, points);
  const table = thirstyTable(row, limit);
  for (let k = 0; k < count; k++) {
    const { moments, samples } = heats[day[k]];
    const ofDay = doses[day[k]];
    const viewOf = views[day[k]];
    const hours = samples.hours[sample[k]];
    table.begin(moments[sample[k]]);
    for (let p = 0; p < points.length; p++)
      ofDay[p] += Math.max(0, table.excess(steps[k * points.length + p], viewOf[p])) * hours;
  }
  return doses;
}

/** The table's steps of share, points next to each other within a pass. */
function shareSteps(scene: Scene, passes: Passes, points: readonly SpacePoint[]): Uint16Array {
  const caster = createPointCaster(scene, passes);
  const shares = new Float64Array(passes.count);
  const steps = new Uint16Array(passes.count * points.length);
  points.forEach((point, p) => {
    caster.sharesAt(point, undefined, shares);
    for (let k = 0; k < shares.length; k++) steps[k * points.length + p] = shareStep(shares[k]);
  });
  return steps;
}
