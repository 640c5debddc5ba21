/** How a plant stands on one day of a typed forecast: at its worst side, under a clear sky. */

import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import type { SkyViewer } from '../../../load/light/sky-viewer.ts';
import { rootsOf } from '../../../load/pot/pot-load.ts';
import { stretchOf } from '../../../load/verdict/clock.ts';
import { clothNow } from '../../../load/verdict/cloth-now.ts';
import { judgedPlant } from '../../../load/verdict/judged.ts';
import { isEstablished, limitOf } from '../../../load/verdict/limit.ts';
import type { PlantFeature } from '../../../load/verdict/planted.ts';
import { sunCame } from '../../../load/verdict/sun-came.ts';
import { milderBy, verdictOf, worstOf } from '../../../load/verdict/verdict.ts';
import { monthOfDate } from '../../../plan/dates/parts.ts';
import type { Plan, PlantRow } from '../../../plan/types.ts';
import type { Scene } from '../../../scene/solids.ts';
import { bearsWhatBurns } from '../growth/fruit.ts';
import type { TomorrowPlant } from './types.ts';

/** @param heat The day laid out @param water of that day, by plant [L] */
export function plantOfDay(
  plan: Plan,
  scene: Scene,
  sky: SkyViewer,
  heat: HeatDay,
  feature: PlantFeature,
  row: PlantRow,
  water: ReadonlyMap<string, number>,
): TomorrowPlant {
  const limit = limitOf(plan, feature, row, heat.day.date).celsius;
  const { judged } = judgedPlant(plan, scene, sky, heat, feature, row, limit);
  const worst = judged[worstOf(judged.map(({ scorch }) => scorch))];
  const { run, watered, thirsty } = worst.scorch;
  // Nobody hangs cloth for fruit that is not there.
  const bears = bearsWhatBurns(row, monthOfDate(heat.day.date), plan.site.latitude);
  const inHeat = bears ? worst.scorch.inHeat : 'fine';
  const verdict = verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), false);
  const isHot = inHeat !== 'fine' && run !== null;
  return {
    plant: feature.id,
    verdict: verdict === 'too dark' ? 'fine' : verdict,
    when: isHot ? stretchOf(heat.samples, run.first, run.last, plan.site.timeZone) : null,
    from: isHot ? worst.side : null,
    cloth: isHot ? clothNow(plan, sunCame({ plan, scene }, heat, feature, worst, run)?.by ?? null) : null,
    watered,
    thirsty,
    limit,
    roots: feature.kind === 'plant' && feature.container === true ? rootsOf(plan, sky, heat, feature) : null,
    water: water.get(feature.id) ?? null,
  };
}
