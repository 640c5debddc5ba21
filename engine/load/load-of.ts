import { isDark } from '../cast/passes.ts';
import { LIMITS } from '../plan/file/limits.ts';
import { errorAt } from '../plan/problems.ts';
import type { Plan, Problem } from '../plan/types.ts';
import { type Units, unitsOf } from '../plan/units/units.ts';
import type { Period } from '../sun/samples.ts';
import type { Weather } from '../sun/weather/weather.ts';
import { heatDayOf } from './leaf/heat-day.ts';
import { cellsOf } from './light/cells.ts';
import { GRID_DEFAULTS, gridOf, maskOf, usualCell } from './light/grid-of.ts';
import { hotSpotsOf } from './light/hot-spots.ts';
import type { LoadResult, Outcome, PlantLoad, SeasonTotals } from './types.ts';
import { plantLoad } from './verdict/plant-load.ts';
import { plantFeatures } from './verdict/planted.ts';
import { type Yard, yardOf } from './yard.ts';

export interface LoadRequest {
  /** The season where nothing is said. */
  readonly period?: Period;
  /** Edge of a cell, `usualCell` where nothing is said, and its height above the ground. [m] */
  readonly cell?: number;
  readonly height?: number;
  readonly weather?: Weather;
  /** Of the sentences; the plan's where nothing is said. The numbers are always metric. */
  readonly units?: Units;
  /** Called with how far the work has come, 0 to 1. */
  readonly progress?: (done: number, what: string) => void;
}

/**
 * The graded yard: the nine quantities of every cell, the hot spots, and a verdict on each plant, planted tree and bed.
 * Whatever the period: what burns is judged by the heatwave day, and what is too dark by the season's light. The nine
 * are means of the period.
 * @returns the load, or the problems: a grid over 4 million cells, a month missing from the climate, a date that does
 *   not exist
 */
export function loadOf(plan: Plan, request: LoadRequest = {}): Outcome<LoadResult> {
  const {
    period = { kind: 'season' },
    cell = usualCell(plan),
    height = GRID_DEFAULTS.height,
    weather,
    progress,
  } = request;
  const units = request.units ?? unitsOf(plan);
  const grid = gridOf(plan, { cell, height });
  if (grid.columns * grid.rows > LIMITS.cells)
    return { ok: false, problems: [tooManyCells(grid.columns, grid.rows, cell)] };
  progress?.(0, 'the sun of the season');
  const yard = yardOf(plan, period, weather);
  if (!yard.ok) return yard;
  progress?.(0.1, 'shadows on the ground');
  const cells = cellsOf(yard.value, grid, maskOf(plan, grid));
  progress?.(0.6, 'hot spots');
  const hotSpots = hotSpotsOf(yard.value, grid, cells, units);
  progress?.(0.7, 'plants');
  const plants = plantLoads(yard.value, period, units, weather);
  if (!plants.ok) return plants;
  progress?.(1, 'done');
  return { ok: true, value: { grid, cells, hotSpots, plants: plants.value, season: totalsOf(yard.value) } };
}

interface PlantLoadRequest extends Pick<LoadRequest, 'period' | 'weather' | 'units'> {
  /** Whether heat is to settle in pots, which takes long; else nothing is said of their roots. */
  readonly pots?: boolean;
}

/** What each plant, planted tree and bed gets, and the verdict on it, without a map. */
export function plantLoadsOf(plan: Plan, request: PlantLoadRequest = {}): Outcome<PlantLoad[]> {
  const period = request.period ?? { kind: 'season' };
  const yard = yardOf(plan, period, request.weather);
  const units = request.units ?? unitsOf(plan);
  return yard.ok ? plantLoads(yard.value, period, units, request.weather, request.pots) : yard;
}

/** @param yard in the period */
function plantLoads(yard: Yard, period: Period, units: Units, weather?: Weather, pots = true): Outcome<PlantLoad[]> {
  const features = plantFeatures(yard.plan);
  if (features.length === 0) return { ok: true, value: [] };
  const season: Outcome<Yard> =
    period.kind === 'season' ? { ok: true, value: yard } : yardOf(yard.plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const heat = heatDayOf(yard.plan, yard.scene, { kind: 'heatwave' }, weather);
  if (!heat.ok) return heat;
  const value = features.map((feature) => plantLoad(yard, heat.value, feature, units, season.value, pots));
  return { ok: true, value };
}

/** Days and samples of the period, and what an open spot under the yard's skyline would get. */
function totalsOf({ scene, samples, weights }: Yard): SeasonTotals {
  let openSunHours = 0;
  let openBeamDose = 0;
  let openHotLoad = 0;
  for (let k = 0; k < samples.count; k++) {
    if (isDark(scene, samples.azimuth[k], samples.altitude[k])) continue;
    openSunHours += weights.channels.sunHours[k];
    openBeamDose += weights.channels.beamDose[k];
    openHotLoad += weights.channels.hotLoad[k];
  }
  return { days: samples.days.length, samples: samples.count, openSunHours, openBeamDose, openHotLoad };
}

function tooManyCells(columns: number, rows: number, cell: number): Problem {
  const message =
    `A cell of ${cell} m would make a grid of ${columns} × ${rows} cells; the most is ` +
    `${LIMITS.cells.toLocaleString('en')}. Choose a larger cell.`;
  return errorAt('--cell', message);
}
