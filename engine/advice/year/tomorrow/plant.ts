/** How a plant stands on one day of a typed forecast: at its worst side, under a clear sky. */
import { createPointCaster } from '../../../cast/share.ts';
import { bedPlaces, bedScorches } from '../../../load/verdict/bed-load.ts';
import { stretchOf } from '../../../load/verdict/clock.ts';
import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import { isEstablished, limitOf } from '../../../load/leaf/limit.ts';
import { plantPoints } from '../../../load/verdict/plant-points.ts';
import type { PlantFeature } from '../../../load/verdict/planted.ts';
import { type Scorch, scorchAt } from '../../../load/leaf/scorch.ts';
import { createSkyViewer, type SkyViewer } from '../../../load/light/sky-viewer.ts';
import type { PlantSide } from '../../../load/types.ts';
import { heatVerdict, milderBy, verdictOf, worstOf } from '../../../load/verdict/verdict.ts';
import type { Plan, PlantRow } from '../../../plan/types.ts';
import type { Scene } from '../../../scene/solids.ts';
import type { TomorrowPlant } from './types.ts';
import type { PlantWater } from '../water.ts';

/** @param heat The day laid out @param water of that day, by plant */
export function plantOfDay(
  plan: Plan,
  scene: Scene,
  heat: HeatDay,
  feature: PlantFeature,
  row: PlantRow,
  water: readonly PlantWater[],
): TomorrowPlant {
  const limit = limitOf(plan, feature, row, heat.day.date).celsius;
  const sides = scorches(plan, scene, heat, feature, row, limit);
  const worst = sides[worstOf(sides.map(({ scorch }) => scorch))];
  const inHeat = heatVerdict(worst.scorch);
  const verdict = verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), false);
  const { run, watered, thirsty } = worst.scorch;
  const isHot = inHeat !== 'fine' && run !== null;
  return {
    plant: feature.id,
    verdict: verdict === 'too dark' ? 'fine' : verdict,
    when: isHot ? stretchOf(heat.samples, run.first, run.last, plan.site.timeZone) : null,
    from: isHot ? worst.side : null,
    watered,
    thirsty,
    limit,
    water: water.find(({ plant }) => plant === feature.id)?.days.find(({ heatwave }) => !heatwave)?.now ?? null,
  };
}

function scorches(
  plan: Plan,
  scene: Scene,
  heat: HeatDay,
  feature: PlantFeature,
  row: PlantRow,
  limit: number,
): { side: PlantSide | null; scorch: Scorch }[] {
  const sky: SkyViewer = createSkyViewer(scene);
  const caster = createPointCaster(scene, heat.passes);
  if (feature.kind === 'bed') {
    const [{ worst }] = bedScorches(scene, sky, bedPlaces(plan, feature), row, limit, [heat]);
    return [{ side: null, scorch: scorchAt(heat, row, limit, caster.sharesAt(worst), sky.at(worst, heat.state)) }];
  }
  const { points, own } = plantPoints(plan, feature);
  return points.map(({ side, point }) => ({
    side,
    scorch: scorchAt(heat, row, limit, caster.sharesAt(point, own), sky.at(point, heat.state, own)),
  }));
}
