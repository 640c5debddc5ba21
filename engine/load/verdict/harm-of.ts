import { worthOf } from '../../plan/defaults.ts';
import { Kept } from '../../plan/kept.ts';
import { meanOf } from '../../plan/numbers/mean.ts';
import type { Plan, PlantRow } from '../../plan/types.ts';
import { sceneOf } from '../../scene/scene-of.ts';
import type { Scene } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { createDayDoser, createDoser, type Doser } from '../leaf/doses.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../leaf/heat-day.ts';
import { surroundingsOn } from '../leaf/surroundings-at.ts';
import { type SkyViewer, skyViewerOf } from '../light/sky-viewer.ts';
import type { Outcome } from '../types.ts';
import { bedPlaces, bedScorches } from './bed-load.ts';
import { limitOf } from './limit.ts';
import { type PlantPoints, plantPoints } from './plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from './planted.ts';

/** Harm below this is rounding: none. [K·h/day] */
export const NO_HARM = 1e-6;

/** What the season's heat does to one plant, planted tree or bed. */
export interface PlantHarm {
  readonly id: string;
  readonly worth: number;
  /** Scorch dose, mean over the season's heat days. [K·h/day] */
  readonly harm: number;
  /** Scorch dose of each heat day, in the season's order. [K·h/day] */
  readonly byHeatDay: readonly number[];
}

/**
 * Harm of every plant that names its row: its scorch dose, mean over the heat days of the season's months.
 * @param ids of these plants alone
 * @returns one entry a plant, in the plan's order, or why a heat day cannot be made
 */
export function harmOf(plan: Plan, weather?: Weather, ids?: ReadonlySet<string>): Outcome<PlantHarm[]> {
  const scene = sceneOf(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const sky = skyViewerOf(scene);
  const { date } = heatwave.value.day;
  const air = heats.value.map(({ leaves }) => leaves);
  const value = plantFeatures(plan).flatMap((feature): PlantHarm[] => {
    const row = (ids?.has(feature.id) ?? true) ? rowOf(plan, feature) : undefined;
    if (!row) return [];
    const limit = limitOf(plan, feature, row, date).celsius;
    const harm = known.of([scene, feature, row, ...air], String(limit), () =>
      plantHarm(plan, scene, sky, heats.value, date, feature, createDayDoser),
    );
    return harm === null ? [] : [harm];
  });
  return { ok: true, value };
}

/** A year's advice asks several times for what the same days do to one yard. */
const known = new Kept<PlantHarm | null>();

/**
 * Harm of one plant; `null` where it names no row.
 * @param heats the season's heat days
 * @param heatwave date of the heatwave day
 * @param doserOn by which its points are judged; nothing is kept of them where nothing is said
 */
export function plantHarm(
  plan: Plan,
  scene: Scene,
  sky: SkyViewer,
  heats: readonly HeatDay[],
  heatwave: string,
  feature: PlantFeature,
  doserOn: DoserOn = (days, row, limit) => createDoser(scene, days, row, limit),
): PlantHarm | null {
  const row = rowOf(plan, feature);
  if (!row) return null;
  const limit = limitOf(plan, feature, row, heatwave).celsius;
  const byHeatDay =
    feature.kind === 'bed'
      ? bedScorches(scene, sky, bedPlaces(plan, feature), row, limit, heats).map(({ dose }) => dose)
      : dosesByHeatDay(plantPoints(plan, feature), sky, heats, doserOn(heats, row, limit));
  return { id: feature.id, worth: worthOf(feature), harm: meanOf(byHeatDay), byHeatDay };
}

type DoserOn = (heats: readonly HeatDay[], row: PlantRow, limit: number) => Doser;

function dosesByHeatDay(
  { points, own }: PlantPoints,
  sky: SkyViewer,
  heats: readonly HeatDay[],
  doser: Doser,
): number[] {
  const sums = new Float64Array(heats.length);
  for (const { point } of points) {
    const doses = doser.at(point, surroundingsOn(sky, heats, point, own), own);
    for (let d = 0; d < sums.length; d++) sums[d] += doses[d];
  }
  return Array.from(sums, (sum) => sum / points.length);
}

/** Σ worth × harm. [K·h/day] @param ids plants that count; all where none are given */
export function weighedHarm(
  harms: readonly Pick<PlantHarm, 'id' | 'worth' | 'harm'>[],
  ids?: ReadonlySet<string>,
): number {
  return harms.reduce((sum, { id, worth, harm }) => (ids === undefined || ids.has(id) ? sum + worth * harm : sum), 0);
}
