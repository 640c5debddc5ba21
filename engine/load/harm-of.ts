import { worthOf } from '../plan/defaults.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import type { Plan, PlantRow } from '../plan/types.ts';
import { buildScene } from '../scene/build.ts';
import type { Crown, Scene } from '../scene/solids.ts';
import { heatDays } from '../sun/samples.ts';
import type { Weather } from '../sun/weather.ts';
import { bedPlaces, bedScorcher } from './bed-load.ts';
import { type HeatDay, heatDayOf } from './heat-day.ts';
import { limitOf } from './limit.ts';
import { plantPoints } from './plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from './planted.ts';
import { scorchDose } from './scorch.ts';
import { createSkyViewer, type SkyViewer } from './sky-viewer.ts';
import type { Outcome } from './types.ts';

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
  const value = plantFeatures(plan).flatMap((feature): PlantHarm[] => {
    const row = rowOf(plan, feature);
    if (!row) return [];
    const limit = limitOf(plan, feature, row, heatwave.value.day.date).celsius;
    const byHeatDay = dosesByHeatDay(plan, scene, sky, heats.value, feature, row, limit);
    return [{ id: feature.id, worth: worthOf(feature), harm: meanOf(byHeatDay), byHeatDay }];
  });
  return { ok: true, value };
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
  plan: Plan, scene: Scene, sky: SkyViewer, heats: readonly HeatDay[], feature: PlantFeature, row: PlantRow, limit: number,
): number[] {
  if (feature.kind === 'bed') {
    const scorch = bedScorcher(scene, sky, bedPlaces(plan, feature), row, limit);
    return heats.map((heat) => scorch(heat).dose);
  }
  const { points, own } = plantPoints(plan, feature);
  return heats.map((heat) => meanOf(points.map(({ point }) => doseAt(heat, sky, row, limit, point, own))));
}

function doseAt(heat: HeatDay, sky: SkyViewer, row: PlantRow, limit: number, point: SpacePoint, own?: Crown): number {
  return scorchDose(heat, row, limit, heat.caster.sharesAt(point, own), sky.at(point, heat.state, own));
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
