import { cellCenter } from '../../load/light/grid-of.ts';
import { type LoadResult, QUANTITIES } from '../../load/types.ts';
import { lonLatOf } from '../../plan/geometry/lon-lat.ts';
import type { LonLat } from '../../plan/geometry/lon-lat.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';

export interface LoadCollection {
  readonly type: 'FeatureCollection';
  /** Made as they are read; they can be read again. */
  readonly features: Iterable<object>;
}

/**
 * A load as GeoJSON (RFC 7946): a square for each cell with the nine quantities, a point for each plant with its
 * verdict and one for each hot spot. Coordinates are longitude and latitude; `plan` holds the same place in plan
 * metres. `jsonPieces` writes it.
 */
export function loadGeoJson(plan: Plan, load: LoadResult): LoadCollection {
  return { type: 'FeatureCollection', features: { [Symbol.iterator]: () => featuresOf(plan, load) } };
}

function* featuresOf(plan: Plan, load: LoadResult): Generator<object> {
  const { grid, cells } = load;
  for (let index = 0; index < cells.grade.length; index++) {
    if (Number.isNaN(cells.grade[index])) continue;
    const [x, y] = cellCenter(grid, index);
    const quantities = Object.fromEntries(QUANTITIES.map((name) => [name, cells[name][index]]));
    yield feature(
      { type: 'Polygon', coordinates: [squareRing(plan, x, y, grid.cell / 2)] },
      { what: 'cell', plan: [x, y], height: grid.height, ...quantities },
    );
  }
  for (const plant of load.plants) {
    const { id, kind, at, height, verdict, sentence, scorchDose, sunHours, hotHours, hotLoad, dailyLight } = plant;
    const properties = {
      what: kind,
      id,
      plan: at,
      height,
      verdict,
      sentence,
      scorchDose,
      sunHours,
      hotHours,
      hotLoad,
      dailyLight,
    };
    yield feature({ type: 'Point', coordinates: lonLatOf(plan, at) }, properties);
  }
  for (const { center, area, grade, hotLoad, from, sentence } of load.hotSpots) {
    yield feature(
      { type: 'Point', coordinates: lonLatOf(plan, center) },
      { what: 'hot spot', plan: center, area, grade, hotLoad, from, sentence },
    );
  }
}

function feature(geometry: object, properties: object): object {
  return { type: 'Feature', geometry, properties };
}

/** Closed, counter-clockwise. */
function squareRing(plan: Plan, x: number, y: number, half: number): LonLat[] {
  const corners: PlanPoint[] = [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
    [x - half, y - half],
  ];
  return corners.map((corner) => lonLatOf(plan, corner));
}
