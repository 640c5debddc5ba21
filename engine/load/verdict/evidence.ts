import type { Plan, PlantRow } from '../../plan/types.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { gravest } from '../leaf/judge.ts';
import { isTooDark } from '../light/light-class.ts';
import type { Nine, Verdict } from '../types.ts';
import type { Yard } from '../yard.ts';
import { type Judged, type JudgedPlant, judgedPlant } from './judged.ts';
import { isEstablished, type Limit, limitOf } from './limit.ts';
import { type PlantFeature, rowOf } from './planted.ts';
import { milderBy, verdictOf } from './verdict.ts';

/** What a verdict rests on. */
export interface Evidence extends JudgedPlant {
  readonly row: PlantRow | undefined;
  readonly limit: Limit | undefined;
  /** At the top; a bed's mean. */
  readonly light: Nine;
}

export function evidenceOf({ plan, scene, sky }: Yard, heat: HeatDay, feature: PlantFeature, light: Nine): Evidence {
  const row = rowOf(plan, feature);
  if (!row) return { row, limit: undefined, judged: [], dose: 0, light };
  const limit = limitOf(plan, feature, row, heat.day.date);
  return { row, limit, ...judgedPlant(plan, scene, sky, heat, feature, row, limit.celsius), light };
}

/** @param light the season's, at the top; a bed's mean @param of as the heat is told, or a little off either way */
export function verdictIf(
  plan: Plan,
  feature: PlantFeature,
  row: PlantRow,
  light: Nine,
  judged: readonly Judged[],
  of: 'inHeat' | 'cooler' | 'hotter',
): Verdict {
  const inHeat = gravest(judged.map(({ scorch }) => scorch[of]));
  return verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), isTooDark(row, light));
}
