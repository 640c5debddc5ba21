import type { HeatDay } from '../../load/leaf/heat-day.ts';
import { type HotRun, hotRuns, SHADED_SHARE } from '../../load/leaf/judge.ts';
import { spreadOn } from '../../load/leaf/spread.ts';
import type { PlantSide, Stretch, WallHeat } from '../../load/types.ts';
import { cameBy, cameByWords } from '../../load/verdict/came-by.ts';
import { stretchOf } from '../../load/verdict/clock.ts';
import { type JudgePoint, judgedAt } from '../../load/verdict/judged.ts';
import { type Limit, limitOf } from '../../load/verdict/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { type PlantFeature, rowOf } from '../../load/verdict/planted.ts';
import { wallHeats } from '../../load/verdict/wall-heat.ts';
import { nineAt, type Yard } from '../../load/yard.ts';
import { centroid, openRing } from '../../plan/geometry/shapes.ts';
import type { CivilDate, Plan, PlantRow } from '../../plan/types.ts';

/** What the sun of a hot day does at one point round a plant. */
export interface SideHeat {
  /** `null` of a bed, which is judged at its middle. */
  readonly side: PlantSide | null;
  /** On a mean day of that time of year. [h] */
  readonly hotHours: number;
  /** Of the hot day. [K·h], `null` where the plant's kind is not known. */
  readonly scorchDose: number | null;
  /** Warmest thirsty leaf, or fruit, of the hot day. [°C] */
  readonly peak: number | null;
  /** How far that may be off, and how far its distance from the limit. [K] */
  readonly spread: number | null;
  readonly margin: number | null;
  /** When the sun is on it and it is at its limit, or failing that within the estimate's own ± of it; `null`: never. */
  readonly when: Stretch | null;
  /** How that sun comes: "coming over the west wall". */
  readonly sunCame: string | null;
  /** What walls and buildings add to its leaf in those hours, the most first. */
  readonly walls: readonly WallHeat[];
  /** Whether walls or buildings throw anything there, counted or not. */
  readonly amongWalls: boolean;
}

/**
 * Heat at each point of a plant, top first, then the eight sides; of a bed at its middle. `limit` is `null` where the
 * kind is not known.
 */
export function heatBySide(
  yard: Yard,
  heat: HeatDay,
  feature: PlantFeature,
  date: CivilDate | null,
): { limit: number | null; points: SideHeat[] } {
  const row = rowOf(yard.plan, feature);
  const limit = row === undefined ? null : limitOf(yard.plan, feature, row, date ?? heat.day.date);
  const points = placesOf(yard.plan, feature).map((at) => heatAt(yard, heat, feature.id, at, row, limit));
  return { limit: limit && limit.celsius, points };
}

function heatAt(
  yard: Yard,
  heat: HeatDay,
  id: string,
  at: JudgePoint,
  row: PlantRow | undefined,
  limit: Limit | null,
): SideHeat {
  const { side, point, own } = at;
  const { hotHours } = nineAt(yard, point, own);
  const never = { when: null, sunCame: null, walls: [] };
  if (row === undefined || limit === null)
    return { ...never, amongWalls: false, side, hotHours, scorchDose: null, peak: null, spread: null, margin: null };
  const { scorch, lit } = judgedAt(heat, yard.sky, row, limit.celsius, at);
  const spread = spreadOn(heat, scorch.warmest, row, 'thirsty', lit.shares, lit.around);
  const margin = Math.hypot(spread, limit.spread);
  const amongWalls = lit.around.walls !== null;
  const known = { side, hotHours, amongWalls, scorchDose: scorch.dose, peak: scorch.thirsty, spread, margin };
  const sunlitFrom = (least: number): HotRun | null =>
    longest(hotRuns(heat.leaves('thirsty', row), lit.shares, lit.around, least, SHADED_SHARE));
  const run = sunlitFrom(limit.celsius) ?? sunlitFrom(limit.celsius - margin);
  if (run === null) return { ...never, ...known };
  const middle = Math.floor((run.first + run.last) / 2);
  const came = cameBy(
    yard.scene,
    yard.plan,
    point,
    heat.samples.azimuth[middle],
    heat.samples.altitude[middle],
    heat.day.monthDay,
    id,
  );
  return {
    ...known,
    when: stretchOf(heat.samples, run.first, run.last, yard.plan.site.timeZone),
    sunCame: cameByWords(yard.plan, came),
    walls: wallHeats(yard.plan, heat, yard.sky, row, at, lit, run),
  };
}

function longest(runs: readonly HotRun[]): HotRun | null {
  return runs.reduce<HotRun | null>(
    (best, run) => (best === null || run.last - run.first > best.last - best.first ? run : best),
    null,
  );
}

function placesOf(plan: Plan, feature: PlantFeature): JudgePoint[] {
  if (feature.kind !== 'bed') {
    const { points, own } = plantPoints(plan, feature);
    return points.map((at) => ({ ...at, own }));
  }
  const [x, y] = centroid(openRing(feature.outline));
  return [{ side: null, point: [x, y, feature.plantHeight] }];
}
