/** What a hot day asks for: water the evening before, shade by the minute, work done before the heat. */
import { clockOf, stretchOf } from '../../../load/verdict/clock.ts';
import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import { compassWord } from '../../../plan/compass.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { Stretch } from '../../../load/types.ts';
import { featureOf } from '../../../plan/edit/edit-feature.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { formatClock, formatHeatLimit, formatTemperature, type Units } from '../../../plan/units.ts';
import { inYearlySpan } from '../../../plan/year-span.ts';
import { sunTimes } from '../../../sun/sun-times.ts';
import { litresWords } from '../litres-words.ts';
import { usableWater } from '../water.ts';
import { namesInside } from '../season/words.ts';
import type { TomorrowPlant, TomorrowTask } from './types.ts';

/** Above this, work in the garden is for the early morning. Our choice. [°C] */
export const HOT_WORK = 30;

/** Ground and pots may be white by morning at or below this in the air. Our choice. [°C] */
const FROSTY_MORNING = 2;

export function isHurt({ verdict }: TomorrowPlant): boolean {
  return verdict === 'will burn' || verdict === 'at risk';
}

/** @param plants Worst first @param heat The day laid out */
export function heatTasks(
  plan: Plan,
  plants: readonly TomorrowPlant[],
  date: CivilDate,
  heat: HeatDay,
  units: Units,
): TomorrowTask[] {
  const hurt = plants.filter(isHurt);
  const thirstyOnly = hurt.filter(({ verdict }) => verdict === 'at risk');
  const isHotDay = heat.day.high >= HOT_WORK;
  // Water on cold roots and ice on the way help nobody, and a pot lasts a winter's day.
  const isFrosty = heat.day.low <= FROSTY_MORNING;
  const { timeZone } = plan.site;
  const { riseMs } = sunTimes(plan, date);
  const dawn = riseMs === null ? '06:00' : clockOf(riseMs, timeZone);
  const tasks: TomorrowTask[] = [];
  if (hurt.length > 0) {
    tasks.push({
      at: 'the evening before',
      plants: hurt.map(({ plant }) => plant),
      advice: {
        basis: 'extension practice',
        source: 'UC ANR, avocado heat advisory 2016',
        text: `Soak ${namesInside(
          plan,
          hurt.map(({ plant }) => plant),
        )}: half as much again as on other days.`,
      },
    });
    for (const cloth of plan.features) {
      if (
        (cloth.kind !== 'canopy' && cloth.kind !== 'screen') ||
        cloth.up === undefined ||
        inYearlySpan(cloth.up, date.slice(5))
      )
        continue;
      tasks.push({
        at: 'the evening before',
        plants: [cloth.id],
        advice: {
          basis: 'our estimate',
          text: `The plan has the cloth of ${namesInside(plan, [cloth.id])} down that day: hang it now, in calm air.`,
        },
      });
    }
  }
  // All that means work stands before the heat; when the sun comes is told as the reason.
  for (const each of hurt) {
    if (each.when === null) continue;
    tasks.push({
      at: dawn,
      plants: [each.plant],
      advice: { basis: 'our estimate', text: shadeWords(plan, each, thirstyOnly.includes(each), units) },
    });
  }
  for (const { plant, water } of plants) {
    const feature = featureOf(plan, plant);
    if (feature?.kind !== 'plant' || feature.container !== true || water === null || isFrosty) continue;
    const holds = usableWater(feature);
    const again = !isHotDay
      ? ''
      : water > holds
        ? `, and the pot holds only ${litresWords(holds, units)}: fill it, and stand it in a saucer of water too`
        : ', so fill it to the brim';
    tasks.push({
      at: dawn,
      plants: [plant],
      advice: {
        basis: 'our estimate',
        text: `Water ${namesInside(plan, [plant])}: it uses about ${litresWords(water, units)} that day${again}.`,
      },
    });
  }
  const hot = hotHours(heat, timeZone);
  if (hot !== null)
    tasks.push({
      at: hot.from,
      plants: [],
      advice: {
        basis: 'our estimate',
        text:
          `Be out of the garden by now, and do not spray: the air is over ${formatTemperature(HOT_WORK, units)} ` +
          `until ${formatClock(hot.to, units)}.`,
      },
    });
  return tasks;
}

/**
 * Shade before that minute, from the side the sun comes from; water alone may do where only a thirsty leaf is at its
 * limit.
 */
function shadeWords(
  plan: Plan,
  { plant, when, from, thirsty, watered, limit }: TomorrowPlant,
  waterMayDo: boolean,
  units: Units,
): string {
  const name = namesInside(plan, [plant]);
  const [dry, wet] = [thirsty, watered].map((celsius) => formatTemperature(celsius, units));
  const most = formatHeatLimit(limit, units);
  const side = typeof from === 'number' ? ` on its ${compassWord(from)} side` : from === 'top' ? ' at its top' : '';
  const feature = plantFeatures(plan).find(({ id }) => id === plant);
  const fruit = feature !== undefined && rowOf(plan, feature)?.limitOf === 'fruit';
  const mobile = feature?.kind === 'plant' && feature.container === true && feature.move !== 'never';
  const how = mobile ? `Carry ${name} into the shade, or hang cloth over it` : `Hang cloth or an umbrella over ${name}`;
  const spoken = (clock: string | undefined, otherwise: string) =>
    clock === undefined ? otherwise : formatClock(clock, units);
  const what = `${how}; leave it so until ${spoken(when?.to, 'evening')}. From ${spoken(when?.from, 'noon')}`;
  const why = fruit
    ? `the skin of its fruit reaches ${dry}${side}, its limit is ${most}, and water does not cool it`
    : waterMayDo
      ? `a thirsty leaf reaches ${dry}${side}, a watered one ${wet}, its limit is ${most}; well watered it gets by`
      : `even a watered leaf reaches ${wet}${side}, its limit is ${most}`;
  return `${what} ${why}.`;
}

function hotHours({ samples }: HeatDay, timeZone: string): Stretch | null {
  const first = samples.air.findIndex((air) => air >= HOT_WORK);
  if (first < 0) return null;
  return stretchOf(
    samples,
    first,
    samples.air.findLastIndex((air) => air >= HOT_WORK),
    timeZone,
  );
}
