/** What a frosty night asks for. */
import { clockOf } from '../../../load/verdict/clock.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { formatTemperature, type Units } from '../../../plan/units.ts';
import { sunTimes } from '../../../sun/sun-times.ts';
import { CLEAR_NIGHT } from '../frost.ts';
import { namesInside } from '../season/words.ts';
import type { TomorrowTask } from './types.ts';

/**
 * Who is to be covered before the cold night's sunset: the low comes towards the morning. None where nobody is tender
 * to it.
 * @param low In this yard. [°C]
 */
export function frostTasks(plan: Plan, low: number, date: CivilDate, units: Units): TomorrowTask[] {
  const tender = plantFeatures(plan)
    .filter((feature) => {
      const damage = rowOf(plan, feature)?.frostDamage;
      return damage !== undefined && low <= damage + CLEAR_NIGHT;
    })
    .map(({ id }) => id);
  if (tender.length === 0) return [];
  const cover: TomorrowTask = {
    at: 'the evening before',
    plants: tender,
    advice: {
      basis: 'common practice',
      text:
        `Cover ${namesInside(plan, tender)} before sunset, down to the ground, off the leaves: with ` +
        `${formatTemperature(low, units)} in the air a leaf is ${units === 'metric' ? '1 to 3 °C' : '2 to 5 °F'} ` +
        `colder under a clear sky.`,
    },
  };
  const { riseMs } = sunTimes(plan, date);
  const open: TomorrowTask = {
    at: riseMs === null ? '10:00' : clockOf(riseMs + 2 * 3_600_000, plan.site.timeZone),
    plants: tender,
    advice: {
      basis: 'extension practice',
      text:
        `Open the cover of ${namesInside(plan, tender)} once it is above freezing, before the sun heats what ` +
        `is under it.`,
    },
  };
  return [cover, open];
}
