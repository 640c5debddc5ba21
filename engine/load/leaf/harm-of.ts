import { createPointCaster } from '../../cast/share.ts';
import { worthOf } from '../../plan/defaults.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Plan, PlantRow } from '../../plan/types.ts';
import { buildScene } from '../../scene/build.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import { heatDays } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather.ts';
import { bedPlaces, bedScorches } from '../verdict/bed-load.ts';
import { harmfulSamples } from './harmful-samples.ts';
import { type HeatDay, heatDayOf } from './heat-day.ts';
import { surfaceTemperature } from './leaf.ts';
import { limitOf } from './limit.ts';
import { plantPoints } from '../verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../verdict/planted.ts';
import { createSkyViewer, type SkyViewer } from '../light/sky-viewer.ts';
import type { Outcome } from '../types.ts';

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
 * @returns one entry a plant, in the plan's order, or why a heat day cannot be made
 */
export function harmOf(plan: Plan, weather?: Weather): Outcome<PlantHarm[]> {
  const scene = buildScene(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const sky = createSkyViewer(scene);
  const value = plantFeatures(plan).flatMap(
    (feature) => plantHarm(plan, scene, sky, heats.value, heatwave.value.day.date, feature) ?? [],
  );
  return { ok: true, value };
}

/**
 * Harm of one plant; `null` where it names no row.
 * @param heats the season's heat days
 * @param heatwave date of the heatwave day
 */
export function plantHarm(
  plan: Plan,
  scene: Scene,
  sky: SkyViewer,
  heats: readonly HeatDay[],
  heatwave: string,
  feature: PlantFeature,
): PlantHarm | null {
  const row = rowOf(plan, feature);
  if (!row) return null;
  const limit = limitOf(plan, feature, row, heatwave).celsius;
  const byHeatDay = dosesByHeatDay(plan, scene, sky, heats, feature, row, limit);
  return { id: feature.id, worth: worthOf(feature), harm: meanOf(byHeatDay), byHeatDay };
}

/** The heat days of a season, laid out for casting. */
export function heatDaysOf(plan: Plan, scene: Scene, weather?: Weather): Outcome<HeatDay[]> {
  const periods = heatDays(plan);
  if (!periods.ok) return periods;
  const value: HeatDay[] = [];
  for (const period of periods.value) {
    const heat = heatDayOf(plan, scene, period, weather);
    if (!heat.ok) return heat;
    value.push(heat.value);
  }
  return { ok: true, value };
}

function dosesByHeatDay(
  plan: Plan,
  scene: Scene,
  sky: SkyViewer,
  heats: readonly HeatDay[],
  feature: PlantFeature,
  row: PlantRow,
  limit: number,
): number[] {
  if (feature.kind === 'bed')
    return bedScorches(scene, sky, bedPlaces(plan, feature), row, limit, heats).map(({ dose }) => dose);
  const { points, own } = plantPoints(plan, feature);
  const { count, day, sample, passes } = harmfulSamples(heats, row, limit);
  const caster = createPointCaster(scene, passes);
  const shares = new Float64Array(count);
  const doses = heats.map(() => 0);
  for (const { point } of points) {
    caster.sharesAt(point, own, shares);
    const views = viewsByState(heats, sky, point, own);
    for (let k = 0; k < count; k++) {
      const { moments, samples, state } = heats[day[k]];
      const leaf = surfaceTemperature(moments[sample[k]], row, 'thirsty', shares[k], views.get(state) ?? 1);
      doses[day[k]] += Math.max(0, leaf - limit) * samples.hours[sample[k]];
    }
  }
  return doses.map((dose) => dose / points.length);
}

function viewsByState(heats: readonly HeatDay[], sky: SkyViewer, point: SpacePoint, own?: OwnCrown): Map<number, number> {
  const views = new Map<number, number>();
  for (const { state } of heats) if (!views.has(state)) views.set(state, sky.at(point, state, own));
  return views;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
