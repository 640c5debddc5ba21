/** What a frosty night asks for. */

import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { monthOfDate } from '../../../plan/dates/parts.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { MS_PER_HOUR } from '../../../plan/units/per-unit.ts';
import { formatTemperature } from '../../../plan/units/shown.ts';
import type { Units } from '../../../plan/units/units.ts';
import { namesInside } from '../../../plan/words/names.ts';
import { monthClimate } from '../../../sun/climate.ts';
import { clockOf } from '../../../sun/days/zone.ts';
import { sunTimes } from '../../../sun/sun-times.ts';
import { CLEAR_NIGHT } from '../frost/clear-night.ts';
import { isOver } from '../frost/frost.ts';
import { type FrostHelp, frostHelp } from '../frost/help.ts';
import type { TomorrowTask } from './types.ts';

/** A night is believed to freeze where the month's usual low is at most so many standard deviations off. Our choice. */
const BELIEVED_SPREADS = 3;

/**
 * Who is to be carried in or covered before the cold night's sunset: the low comes towards the morning. None where
 * nobody is tender to it, nor in a month in which such a night is no more than a slip of the pen.
 * @param low In this yard. [°C]
 */
export function frostTasks(plan: Plan, low: number, date: CivilDate, units: Units): TomorrowTask[] {
  const usual = monthClimate(plan, monthOfDate(date));
  const tender = plantFeatures(plan).filter((feature) => {
    const row = rowOf(plan, feature);
    if (row === undefined || isOver(plan, row, date)) return false;
    const { frostDamage: damage } = row;
    return (
      damage !== undefined &&
      low <= damage + CLEAR_NIGHT &&
      (usual === null || usual.low - BELIEVED_SPREADS * usual.spread <= damage + CLEAR_NIGHT)
    );
  });
  const byHelp = (help: FrostHelp) => tender.filter((each) => frostHelp(each) === help).map(({ id }) => id);
  const [carried, wrapped] = [byHelp('carry'), byHelp('wrap')];
  const { riseMs } = sunTimes(plan, date);
  const morning = riseMs === null ? '10:00' : clockOf(riseMs + 2 * MS_PER_HOUR, plan.site.timeZone);
  const why =
    `with ${formatTemperature(low, units)} in the air a leaf is ${units === 'metric' ? '1 to 3 °C' : '2 to 5 °F'} ` +
    `colder under a clear sky`;
  const task = (at: TomorrowTask['at'], plants: readonly string[], text: string): TomorrowTask[] =>
    plants.length === 0 ? [] : [{ at, plants, advice: { basis: 'common practice', text } }];
  return [
    ...task('the evening before', carried, `Carry in ${namesInside(plan, carried)} before sunset: ${why}.`),
    ...task(
      'the evening before',
      wrapped,
      `Cover ${namesInside(plan, wrapped)} before sunset, down to the ground, off the leaves: ${why}.`,
    ),
    ...task(
      morning,
      wrapped,
      `Open the cover of ${namesInside(plan, wrapped)} once it is above freezing, before the sun heats it up.`,
    ),
    ...task(morning, carried, `Carry ${namesInside(plan, carried)} out again once it is well above freezing.`),
  ];
}
