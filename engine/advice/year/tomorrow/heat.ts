/** What a hot day asks for: water the evening before, shade by the minute, work done before the heat. */

import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import type { Stretch } from '../../../load/types.ts';
import { stretchOf } from '../../../load/verdict/clock.ts';
import { burnsByFruit } from '../../../load/verdict/planted.ts';
import { featureOf } from '../../../plan/edit/edit-feature.ts';
import { isMovable } from '../../../plan/kinds.ts';
import type { CivilDate, ClockTime, Feature, Plan } from '../../../plan/types.ts';
import { type ClockStretch, formatClock, minutesOf } from '../../../plan/units/clock.ts';
import { formatHeatLimit, formatTemperature } from '../../../plan/units/shown.ts';
import type { Units } from '../../../plan/units/units.ts';
import { agreeingWith } from '../../../plan/words/agreement.ts';
import { compassWord } from '../../../plan/words/compass-word.ts';
import { nameOf, namesInside } from '../../../plan/words/names.ts';
import { sunUp } from '../../../sun/sun-up.ts';
import { clothOn } from '../cloth/hung-on.ts';
import { aboutLitres, litresWords } from '../water/litres-words.ts';
import { usableWater } from '../water/water.ts';
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
        : ', so fill the pot to the brim';
  const why =
    isHurt(stands) && stands.when !== null && waterDoes(plan, stands) ? ` ${waterWords(plan, stands, told)}` : '';
  const { they, does } = agreeingWith(nameOf(plan, plant));
  const uses = `${they} ${does('use')} ${aboutLitres(water, units)} that day`;
  const about = `Water ${namesInside(plan, [plant])}: ${uses}`;
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
  return verdict === 'at risk' && watered <= limit - CLOSE_CALL && !burnsByFruit(plan, plant);
}

/** What water alone holds off: "From 09:50 a thirsty leaf reaches 53 °C, a watered one 44, …" */
function waterWords(plan: Plan, stands: TomorrowPlant, told: Told): string {
  const { plant, when, thirsty, watered, limit, cloth } = stands;
  const { units } = told;
  const { they, does } = agreeingWith(nameOf(plan, plant));
  const [dry, wet] = [thirsty, watered].map((celsius) => formatTemperature(celsius, units));
  return (
    `From ${clockOr(when?.from, 'noon', told)} a thirsty leaf reaches ${dry}${sideWords(plan, stands)}, ` +
    `a watered one ${wet}, the limit is ${formatHeatLimit(limit, units)}; ${they} ${does('get')} by without ` +
    `${cloth === null ? '' : 'more '}cloth.`
  );
}

/** Shade before that minute, from the side the sun comes from; only water where that does. */
function shadeWords(plan: Plan, stands: TomorrowPlant, told: Told): string {
  const { units } = told;
  const { plant, verdict, when, thirsty, watered, limit } = stands;
  if (waterDoes(plan, stands))
    return `Keep ${namesInside(plan, [plant])} well watered. ${waterWords(plan, stands, told)}`;
  const [dry, wet] = [thirsty, watered].map((celsius) => formatTemperature(celsius, units));
  const most = formatHeatLimit(limit, units);
  const side = sideWords(plan, stands);
  const until = `leave it so until ${clockOr(when?.to, 'evening', told)}`;
  const what = `${moreShade(plan, stands)}; ${until}. From ${clockOr(when?.from, 'noon', told)}`;
  const { them } = agreeingWith(nameOf(plan, plant));
  const why = burnsByFruit(plan, plant)
    ? `the skin of any fruit on ${them} reaches ${dry}${side}, the limit is ${most}, and water does not cool it`
    : verdict === 'at risk'
      ? `a thirsty leaf reaches ${dry}${side}, a watered one ${wet}, the limit is ${most}; water alone is a close call`
      : `even a watered leaf reaches ${wet}${side}, the limit is ${most}`;
  return `${what} ${why}.`;
}

/** [m] */
function topOf(feature: Feature): number {
  return feature.kind === 'bed' ? feature.plantHeight : 'height' in feature ? (feature.height ?? 0) : 0;
}

/** Nobody climbs for a day's cloth: so high an arm reaches. Common practice, no source. [m] */
const REACHED = 2;

/** What shades it for a day: cloth where none hangs, more of it where some does, and a pot may be carried. */
function moreShade(plan: Plan, stands: TomorrowPlant): string {
  const { plant, from, cloth } = stands;
  const name = namesInside(plan, [plant]);
  const { them } = agreeingWith(nameOf(plan, plant));
  const feature = featureOf(plan, plant);
  const mobile = feature !== undefined && isMovable(feature);
  if (cloth === null && mobile) return `Carry ${name} into the shade, or hang cloth over ${them}`;
  if (cloth === null)
    return feature !== undefined && topOf(feature) > REACHED
      ? `Hang cloth over as much of ${name} as you reach from the ground`
      : `Hang cloth or an umbrella over ${name}`;
  const roof = namesInside(plan, [cloth.id]);
  const [open, near] =
    cloth.how === 'through'
      ? ['Hang a second cloth or a sheet', `under ${roof}, for that day alone`]
      : ['Hang a cloth or a sheet', `where the sun comes in under ${roof}`];
  const where = cloth.how === 'under' && typeof from === 'number' ? `on the ${compassWord(from)} side of` : 'over';
  return mobile
    ? `Carry ${name} into full shade, or ${open.toLowerCase()} ${where} ${them} ${near}`
    : `${open} ${where} ${name} ${near}`;
}

function sideWords(plan: Plan, { plant, from }: TomorrowPlant): string {
  const { their } = agreeingWith(nameOf(plan, plant));
  return typeof from === 'number' ? ` on ${their} ${compassWord(from)} side` : from === 'top' ? ` at ${their} top` : '';
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
