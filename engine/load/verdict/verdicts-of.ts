import type { Plan, PlantRow } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { type HeatDay, heatDayOf } from '../leaf/heat-day.ts';
import { gravest } from '../leaf/judge.ts';
import { isTooDark } from '../light/light-class.ts';
import type { Outcome, Verdict } from '../types.ts';
import { type Yard, yardOf } from '../yard.ts';
import { judgedPlant } from './judged.ts';
import { isEstablished, limitOf } from './limit.ts';
import { lightOn } from './plant-nines.ts';
import { type PlantFeature, plantFeatures, rowOf } from './planted.ts';
import { milderBy, verdictInLight } from './verdict.ts';

/** The verdicts of `plantLoadsOf` alone, by plant: of those that name no row, none. */
export function verdictsOf(plan: Plan, weather?: Weather): Outcome<ReadonlyMap<string, Verdict>> {
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const heat = heatDayOf(plan, season.value.scene, { kind: 'heatwave' }, weather);
  if (!heat.ok) return heat;
  const value = new Map<string, Verdict>();
  for (const feature of plantFeatures(plan)) {
    const row = rowOf(plan, feature);
    if (row) value.set(feature.id, verdictOn(season.value, heat.value, feature, row));
  }
  return { ok: true, value };
}

function verdictOn(season: Yard, heat: HeatDay, feature: PlantFeature, row: PlantRow): Verdict {
  const { plan, scene, sky } = season;
  const limit = limitOf(plan, feature, row, heat.day.date).celsius;
  const { judged } = judgedPlant(plan, scene, sky, heat, feature, row, limit);
  const inHeat = gravest(judged.map(({ scorch }) => scorch.inHeat));
  return verdictInLight(inHeat, milderBy(row, isEstablished(plan, feature)), () =>
    isTooDark(row, lightOn(season, feature)),
  );
}
