/** What a cloth takes of the light that plants need. */

import { lightStanding } from '../../../load/light/light-class.ts';
import type { Outcome } from '../../../load/types.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { monthDayOf } from '../../../plan/dates/parts.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import type { Period } from '../../../sun/samples.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { dayLight } from '../../words/plant-light.ts';
import type { ClothLight } from './types.ts';

/** A plant of which a cloth takes less than this share of its light does not notice it. */
const NOTICED = 0.1;

/**
 * Plants whose light a cloth takes noticeably, under it and without it.
 * @param without the yard without the cloth @param among these plants
 */
export function lightUnder(
  hung: Plan,
  without: Plan,
  among: readonly PlantFeature[],
  period: Period,
  weather?: Weather,
): Outcome<ClothLight[]> {
  const under = dayLight(hung, period, weather);
  const bare = dayLight(without, period, weather);
  if (!under.ok) return under;
  if (!bare.ok) return bare;
  const value = among.flatMap((feature): ClothLight[] => {
    const row = rowOf(hung, feature);
    if (row === undefined) return [];
    const [covered, open] = [under.value.of(feature).dailyLight, bare.value.of(feature).dailyLight];
    if (covered > (1 - NOTICED) * open) return [];
    const [standing, standingOpen] = [lightStanding(row, covered), lightStanding(row, open)];
    return [{ plant: feature.id, open, covered, standing, standingOpen }];
  });
  return { ok: true, value };
}

/** By date, the plants that have light enough without a cloth on some 21sts and too little under it. */
export function shortOn(
  hung: Plan,
  without: Plan,
  dates: readonly CivilDate[],
  weather?: Weather,
): Outcome<ReadonlyMap<CivilDate, readonly string[]>> {
  const value = new Map<CivilDate, readonly string[]>();
  for (const date of dates) {
    const light = lightUnder(hung, without, plantFeatures(hung), { kind: 'day', date: monthDayOf(date) }, weather);
    if (!light.ok) return light;
    const short = light.value.filter((one) => one.standingOpen === 'enough' && one.standing !== 'enough');
    value.set(
      date,
      short.map(({ plant }) => plant),
    );
  }
  return { ok: true, value };
}
