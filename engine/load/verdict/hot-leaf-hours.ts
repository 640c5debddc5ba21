import { monthOfDate } from '../../plan/dates/parts.ts';
import type { Plan } from '../../plan/types.ts';
import { sceneOf } from '../../scene/scene-of.ts';
import { clockOf } from '../../sun/days/zone.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { heatDaysOf } from '../leaf/heat-day.ts';
import { litPoint } from '../leaf/scorch.ts';
import { skyViewerOf } from '../light/sky-viewer.ts';
import type { Outcome } from '../types.ts';
import { limitOf } from './limit.ts';
import { plantPoints } from './plant-points.ts';
import { plantFeatures, rowOf } from './planted.ts';

/** An hour counts when the leaf is over its limit for this much of it. [h] */
const LEAST_OVER = 0.25;

/** The hours of the clock at which a plant's thirsty leaf is too hot on one month's heat day. */
export interface HotLeafHours {
  readonly month: number;
  /** Hours 0 to 23. */
  readonly over: readonly boolean[];
}

/**
 * When a thirsty leaf at the top of a plant or tree is over its limit, by month of the season.
 * @returns empty for a bed, and for a feature that names no plant; or why a heat day cannot be made
 */
export function hotLeafHours(plan: Plan, plantId: string, weather?: Weather): Outcome<HotLeafHours[]> {
  const feature = plantFeatures(plan).find(({ id }) => id === plantId);
  const row = feature && rowOf(plan, feature);
  if (!feature || !row || feature.kind === 'bed') return { ok: true, value: [] };
  const scene = sceneOf(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const sky = skyViewerOf(scene);
  const {
    points: [{ point }],
    own,
  } = plantPoints(plan, feature);
  const value = heats.value.map((heat): HotLeafHours => {
    const { day, samples } = heat;
    const limit = limitOf(plan, feature, row, day.date).celsius;
    const { shares, around } = litPoint(heat, sky, point, own);
    const leaf = heat.leaves('thirsty', row);
    const hoursOver = Array.from({ length: 24 }, () => 0);
    for (const k of leaf.hotSamples(limit))
      if (leaf.on(k, shares, around) > limit)
        hoursOver[Number(clockOf(samples.when[k], plan.site.timeZone).slice(0, 2))] += samples.hours[k];
    return { month: monthOfDate(day.date), over: hoursOver.map((hours) => hours >= LEAST_OVER) };
  });
  return { ok: true, value };
}
