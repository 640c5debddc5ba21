/** What a hot day asks for: water the evening before, shade by the minute, work done before the heat. */
import { stretchOf } from '../../../load/verdict/clock.ts';
import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import { compassWord } from '../../../plan/compass.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { Stretch } from '../../../load/types.ts';
import { featureOf } from '../../../plan/edit/edit-feature.ts';
import type { CivilDate, ClockTime, Plan } from '../../../plan/types.ts';
import { type ClockStretch, formatClock, minutesOf } from '../../../plan/units/clock.ts';
import { formatHeatLimit, formatTemperature } from '../../../plan/units/shown.ts';
import type { Units } from '../../../plan/units/units.ts';
import { sunUp } from '../../../sun/sun-up.ts';
import { litresWords } from '../water/litres-words.ts';
import { clothOn } from '../cloth/hung-on.ts';
import { usableWater } from '../water/water.ts';
import { namesInside } from '../words.ts';
import { potTasks } from './pots.ts';
import type { TomorrowPlant, TomorrowTask } from './types.ts';

/** Above this, work in the garden is for the early morning. Our choice. [°C] */
export const HOT_WORK = 30;

/** Ground and pots may be white by morning at or below this in the air. Our choice. [°C] */
const FROSTY_MORNING = 2;

/** How times and figures are told. */
interface Told {
  readonly units: Units;
  /** From sunrise to sunset of the day. */
  readonly up: ClockStretch | null;
}

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
  const told = { units, up: sunUp(plan, date) };
  const dawn = told.up?.from ?? '06:00';
  return [
    ...(hurt.length > 0 ? [soak(plan, hurt), ...hangings(plan, date)] : []),
    ...potTasks(plan, plants, units),
    // All that means work stands before the heat; when the sun comes is told as the reason.
    ...hurt
      .filter((plant) => plant.when !== null && !(isPot(plan, plant) && waterDoes(plan, plant)))
      .map((plant) => shading(plan, plant, dawn, told)),
    // Water on cold roots and ice on the way help nobody, and a pot lasts a winter's day.
    ...(heat.day.low <= FROSTY_MORNING ? [] : plants.flatMap((plant) => potWatering(plan, plant, dawn, heat, told))),
    ...goingIn(heat, plan.site.timeZone, dawn, told),
  ];
}

function soak(plan: Plan, hurt: readonly TomorrowPlant[]): TomorrowTask {
  const plants = hurt.map(({ plant }) => plant);
  return {
    at: 'the evening before',
    plants,
    advice: {
      basis: 'extension practice',
      source: 'UC ANR, avocado heat advisory 2016',
      text: `Soak ${namesInside(plan, plants)}: half as much again as on other days.`,
    },
  };
}

/** Cloth that is down on that day. */
function hangings(plan: Plan, date: CivilDate): TomorrowTask[] {
  return clothOn(plan, date)
    .filter(({ hangs }) => hangs === 'no')
    .map(({ id, saidBy }) => ({
      at: 'the evening before',
      plants: [id],
      advice: {
        basis: 'our estimate',
        text:
          `${saidBy === 'diary' ? 'By your diary' : 'In the plan'} the cloth of ${namesInside(plan, [id])} is down ` +
          `that day: hang it now, in calm air.`,
      },
    }));
}

function shading(plan: Plan, plant: TomorrowPlant, dawn: ClockTime, told: Told): TomorrowTask {
  return { at: dawn, plants: [plant.plant], advice: { basis: 'our estimate', text: shadeWords(plan, plant, told) } };
}

function isPot(plan: Plan, { plant }: TomorrowPlant): boolean {
  const feature = featureOf(plan, plant);
  return feature?.kind === 'plant' && feature.container === true;
}

/** What a pot drinks; and where water is all that its plant needs, what happens without. */
function potWatering(plan: Plan, stands: TomorrowPlant, dawn: ClockTime, heat: HeatDay, told: Told): TomorrowTask[] {
  const { units } = told;
  const { plant, water } = stands;
  const feature = featureOf(plan, plant);
  if (feature?.kind !== 'plant' || feature.container !== true || water === null) return [];
  const holds = usableWater(feature);
  const again =
    heat.day.high < HOT_WORK
      ? ''
      : water > holds
        ? `, and the pot holds only ${litresWords(holds, units)}: fill it, and stand it in a saucer of water too`
        : ', so fill it to the brim';
  const why = isHurt(stands) && stands.when !== null && waterDoes(plan, stands) ? ` ${waterWords(stands, told)}` : '';
  const about = `Water ${namesInside(plan, [plant])}: it uses about ${litresWords(water, units)} that day`;
  const text = `${about}${again}.${why}`;
  return [{ at: dawn, plants: [plant], advice: { basis: 'our estimate', text } }];
}

/** What is to be done at dawn takes so long before the air is hot. Our choice. [min] */
const MORNING_WORK = 60;

function goingIn(heat: HeatDay, timeZone: string, dawn: ClockTime, { units, up }: Told): TomorrowTask[] {
  const hot = hotHours(heat, timeZone);
  if (hot === null) return [];
  const over = `the air is over ${formatTemperature(HOT_WORK, units)} until ${formatClock(hot.to, units, up)}`;
  const text =
    minutesOf(hot.from) - minutesOf(dawn) >= MORNING_WORK
      ? `Be out of the garden by now, and do not spray: ${over}.`
      : `Do what you can the evening before, the rest now, a few minutes at a time with rests in the shade, and do ` +
        `not spray: ${over}.`;
  // The air may be hot before the sun is up.
  return [{ at: hot.from < dawn ? dawn : hot.from, plants: [], advice: { basis: 'our estimate', text } }];
}

/** A watered leaf nearer to its limit than this is a close call. Our choice. [K] */
export const CLOSE_CALL = 1;

/** Whether water alone keeps a leaf cool enough: then nobody hangs cloth, least of all over what is short of light. */
function waterDoes(plan: Plan, { plant, verdict, watered, limit }: TomorrowPlant): boolean {
  return verdict === 'at risk' && watered <= limit - CLOSE_CALL && !bearsTheLimit(plan, plant);
}

/** Whether the limit is the fruit's, which water does not cool. */
function bearsTheLimit(plan: Plan, plant: string): boolean {
  const feature = plantFeatures(plan).find(({ id }) => id === plant);
  return feature !== undefined && rowOf(plan, feature)?.limitOf === 'fruit';
}

/** What water alone holds off: "From 09:50 a thirsty leaf reaches 53 °C, a watered one 44, …" */
function waterWords({ when, from, thirsty, watered, limit }: TomorrowPlant, told: Told): string {
  const { units } = told;
  const [dry, wet] = [thirsty, watered].map((celsius) => formatTemperature(celsius, units));
  return (
    `From ${clockOr(when?.from, 'noon', told)} a thirsty leaf reaches ${dry}${sideWords(from)}, ` +
    `a watered one ${wet}, its limit is ${formatHeatLimit(limit, units)}; it gets by without cloth.`
  );
}

/** Shade before that minute, from the side the sun comes from; only water where that does. */
function shadeWords(plan: Plan, stands: TomorrowPlant, told: Told): string {
  const { units } = told;
  const { plant, verdict, when, from, thirsty, watered, limit } = stands;
  const name = namesInside(plan, [plant]);
  if (waterDoes(plan, stands)) return `Keep ${name} well watered. ${waterWords(stands, told)}`;
  const [dry, wet] = [thirsty, watered].map((celsius) => formatTemperature(celsius, units));
  const most = formatHeatLimit(limit, units);
  const side = sideWords(from);
  const feature = featureOf(plan, plant);
  const mobile = feature?.kind === 'plant' && feature.container === true && feature.move !== 'never';
  const how = mobile ? `Carry ${name} into the shade, or hang cloth over it` : `Hang cloth or an umbrella over ${name}`;
  const until = `leave it so until ${clockOr(when?.to, 'evening', told)}`;
  const what = `${how}; ${until}. From ${clockOr(when?.from, 'noon', told)}`;
  const why = bearsTheLimit(plan, plant)
    ? `the skin of any fruit on it reaches ${dry}${side}, its limit is ${most}, and water does not cool it`
    : verdict === 'at risk'
      ? `a thirsty leaf reaches ${dry}${side}, a watered one ${wet}, its limit is ${most}; water alone is a close call`
      : `even a watered leaf reaches ${wet}${side}, its limit is ${most}`;
  return `${what} ${why}.`;
}

function sideWords(from: TomorrowPlant['from']): string {
  return typeof from === 'number' ? ` on its ${compassWord(from)} side` : from === 'top' ? ' at its top' : '';
}

function clockOr(clock: ClockTime | undefined, otherwise: string, { units, up }: Told): string {
  return clock === undefined ? otherwise : formatClock(clock, units, up);
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
