/** One day's list from a typed forecast: what to do when, for whom, from the evening before on. */
import { createPointCaster } from '../cast/share.ts';
import { cautionsFor } from '../frame/cautions.ts';
import type { Caution } from '../frame/types.ts';
import { bedPlaces, bedScorches } from '../load/bed-load.ts';
import { clockOf, stretchOf } from '../load/clock.ts';
import { type HeatDay, heatDayOf } from '../load/heat-day.ts';
import { isEstablished, limitOf } from '../load/limit.ts';
import { compassWord } from '../load/names.ts';
import { plantPoints } from '../load/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../load/planted.ts';
import { type Scorch, scorchAt } from '../load/scorch.ts';
import { createSkyViewer, type SkyViewer } from '../load/sky-viewer.ts';
import type { Outcome, PlantSide, Stretch, Verdict } from '../load/types.ts';
import { heatVerdict, milderBy, verdictOf, worstOf } from '../load/verdict.ts';
import { featureOf } from '../plan/edit.ts';
import { isCivilDate } from '../plan/reader.ts';
import type { CivilDate, Plan, PlantRow } from '../plan/types.ts';
import { formatTemperature, type Units, unitsOf } from '../plan/units.ts';
import { inYearlySpan } from '../plan/year-span.ts';
import { buildScene } from '../scene/build.ts';
import type { Scene } from '../scene/solids.ts';
import { monthOfDate } from '../sun/calendar.ts';
import { monthClimate } from '../sun/climate.ts';
import { sunTimes } from '../sun/sun-times.ts';
import { litresWords } from './clay.ts';
import type { Advice } from './season-types.ts';
import { dateWords, namesInside, sentenceCase } from './season-words.ts';
import { type PlantWater, waterOf } from './water.ts';

/** Above this, work in the garden is for the early morning. Our choice. [°C] */
const HOT_WORK = 30;
/** Between a day's high and low where the climate has no figures for the month. Our choice. [K] */
const USUAL_SWING = 15;
/** A leaf under a clear calm sky is so much colder than the air (Leuning & Cremer 1988, Agric. For. Meteorol. 42:121–133). [K] */
const CLEAR_NIGHT = 2;
/** Stands before every clock time. */
const EVENING_BEFORE = -1;

export interface Forecast {
  readonly date: CivilDate;
  /** As the weather service gives them; the plan's own offset is added. [°C] */
  readonly high: number;
  /** Absent: as far below the high as in a mean day of the month. */
  readonly low?: number;
}

/** How a plant stands that day, under a clear sky. */
export interface TomorrowPlant {
  readonly plant: string;
  readonly verdict: Exclude<Verdict, 'too dark'>;
  /** When its worst side is at or over the limit; `null` where it never is. */
  readonly when: Stretch | null;
  /** `null` for a bed, and where it never is. */
  readonly from: PlantSide | null;
  /** Warmest leaf at its worst side, and the limit. [°C] */
  readonly watered: number;
  readonly thirsty: number;
  readonly limit: number;
  /** [L] that day */
  readonly water: number | null;
}

export interface TomorrowTask {
  /** "HH:MM", or the evening before. */
  readonly at: string | 'the evening before';
  readonly plants: readonly string[];
  readonly advice: Advice;
}

export interface Tomorrow {
  readonly date: CivilDate;
  readonly high: number;
  readonly low: number;
  /** Worst first. */
  readonly plants: readonly TomorrowPlant[];
  /** In the order of the day. */
  readonly tasks: readonly TomorrowTask[];
  readonly cautions: readonly Caution[];
  readonly notes: readonly string[];
}

/** @returns the day's list, or what is wrong with the forecast or the plan */
export function tomorrowOf(plan: Plan, forecast: Forecast, units: Units = unitsOf(plan)): Outcome<Tomorrow> {
  const { date, high, low = high - usualSwing(plan, date) } = forecast;
  if (!isCivilDate(date)) return refuse('date', `"${date}" is no date: write it as 2026-07-20.`);
  if (!(high >= -60 && high <= 60)) return refuse('high', `The high must be a number between ${formatTemperature(-60, units)} and ${formatTemperature(60, units)}.`);
  if (!(low >= -60 && low <= high)) return refuse('low', `The low must be at most the high of ${formatTemperature(high, units)}.`);
  const forecastPlan = withForecast(plan, { date, high, low });
  const scene = buildScene(forecastPlan);
  const heat = heatDayOf(forecastPlan, scene, { kind: 'day', date: date.slice(5) });
  if (!heat.ok) return heat;
  const water = waterOf(forecastPlan);
  if (!water.ok) return water;
  const plants = plantFeatures(plan).flatMap((feature): TomorrowPlant[] => {
    const row = rowOf(plan, feature);
    return row === undefined ? [] : [judged(plan, scene, heat.value, feature, row, water.value)];
  });
  const worstFirst = plants.toSorted((a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || b.thirsty - b.limit - (a.thirsty - a.limit));
  const tasks = [...heatTasks(plan, worstFirst, date, heat.value, units), ...frostTasks(plan, low + (plan.climate.offset ?? 0), date, units)];
  const frosty = tasks.some(({ isFrost }) => isFrost);
  return {
    ok: true,
    value: {
      date, high, low,
      plants: worstFirst,
      tasks: tasks.toSorted((a, b) => minuteOf(a.task.at) - minuteOf(b.task.at)).map(({ task }) => task),
      cautions: cautionsFor([...(high >= HOT_WORK || !frosty ? (['heat', 'cloth'] as const) : []), ...(frosty ? (['winter'] as const) : [])], plan.cautions),
      notes: notesOf(plan, forecast, low, units),
    },
  };
}

interface Timed {
  readonly task: TomorrowTask;
  readonly isFrost: boolean;
}

const VERDICTS: readonly TomorrowPlant['verdict'][] = ['will burn', 'at risk', 'fine once established', 'no shade needed', 'fine'];

function refuse(what: string, message: string): Outcome<never> {
  return { ok: false, problems: [{ pointer: `--${what}`, message, severity: 'error' }] };
}

function usualSwing(plan: Plan, date: CivilDate): number {
  const usual = monthClimate(plan, monthOfDate(date));
  return usual === null ? USUAL_SWING : usual.high - usual.low;
}

/** A season of that one day, clear, with the typed extremes in place of the month's. */
function withForecast(plan: Plan, { date, high, low }: Required<Forecast>): Plan {
  const monthDay = date.slice(5);
  const month = Number(date.slice(5, 7));
  const own = plan.climate.months.find((row) => row.month === month);
  const row = { ...own, month, high, low, sunshine: 1, sunshineAfternoon: 1, spread: 0 };
  const months = [...plan.climate.months.filter((each) => each.month !== month), row];
  return { ...plan, season: { ...plan.season, year: Number(date.slice(0, 4)), from: monthDay, to: monthDay }, climate: { ...plan.climate, months, heatwaveHigh: high } };
}

function judged(plan: Plan, scene: Scene, heat: HeatDay, feature: PlantFeature, row: PlantRow, water: readonly PlantWater[]): TomorrowPlant {
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
    watered, thirsty, limit,
    water: water.find(({ plant }) => plant === feature.id)?.days.find(({ heatwave }) => !heatwave)?.now ?? null,
  };
}

function scorches(plan: Plan, scene: Scene, heat: HeatDay, feature: PlantFeature, row: PlantRow, limit: number): { side: PlantSide | null; scorch: Scorch }[] {
  const sky: SkyViewer = createSkyViewer(scene);
  const caster = createPointCaster(scene, heat.passes);
  if (feature.kind === 'bed') {
    const [{ worst }] = bedScorches(scene, sky, bedPlaces(plan, feature), row, limit, [heat]);
    return [{ side: null, scorch: scorchAt(heat, row, limit, caster.sharesAt(worst), sky.at(worst, heat.state)) }];
  }
  const { points, own } = plantPoints(plan, feature);
  return points.map(({ side, point }) => ({ side, scorch: scorchAt(heat, row, limit, caster.sharesAt(point, own), sky.at(point, heat.state, own)) }));
}

function heatTasks(plan: Plan, plants: readonly TomorrowPlant[], date: CivilDate, heat: HeatDay, units: Units): Timed[] {
  const hurt = plants.filter(({ verdict }) => verdict === 'will burn' || verdict === 'at risk');
  const thirstyOnly = hurt.filter(({ verdict }) => verdict === 'at risk');
  const isHotDay = heat.day.high >= HOT_WORK;
  const { timeZone } = plan.site;
  const { riseMs } = sunTimes(plan, date);
  const dawn = riseMs === null ? '06:00' : clockOf(riseMs, timeZone);
  const tasks: TomorrowTask[] = [];
  if (hurt.length > 0) {
    tasks.push({
      at: 'the evening before', plants: hurt.map(({ plant }) => plant),
      advice: { basis: 'extension practice', source: 'UC ANR, avocado heat advisory 2016', text: `Soak ${namesInside(plan, hurt.map(({ plant }) => plant))}: half as much again as on other days.` },
    });
    for (const cloth of plan.features) {
      if ((cloth.kind !== 'canopy' && cloth.kind !== 'screen') || cloth.up === undefined || inYearlySpan(cloth.up, date.slice(5))) continue;
      tasks.push({ at: 'the evening before', plants: [cloth.id], advice: { basis: 'our estimate', text: `The plan has the cloth of ${namesInside(plan, [cloth.id])} down that day: hang it now, in calm air.` } });
    }
  }
  for (const { plant, water } of plants) {
    const feature = featureOf(plan, plant);
    if (feature?.kind !== 'plant' || feature.container !== true || water === null) continue;
    tasks.push({ at: dawn, plants: [plant], advice: { basis: 'our estimate', text: `Water ${namesInside(plan, [plant])}: it uses about ${litresWords(water, units)} that day${isHotDay ? ', so fill it and look again at midday' : ''}.` } });
  }
  for (const each of hurt) {
    if (each.when === null) continue;
    tasks.push({ at: each.when.from, plants: [each.plant], advice: { basis: 'our estimate', text: shadeWords(plan, each, thirstyOnly.includes(each), units) } });
  }
  const hot = hotHours(heat, timeZone);
  if (hot !== null) tasks.push({ at: hot.from, plants: [], advice: { basis: 'our estimate', text: `The air is over ${formatTemperature(HOT_WORK, units)} from ${hot.from} to ${hot.to}: be done in the garden before then, and do not spray.` } });
  return tasks.map((task) => ({ task, isFrost: false }));
}

/** Shade by that minute, from the side the sun comes from; water alone may do where only a thirsty leaf is at its limit. */
function shadeWords(plan: Plan, { plant, when, from, thirsty, watered, limit }: TomorrowPlant, waterMayDo: boolean, units: Units): string {
  const name = namesInside(plan, [plant]);
  const [dry, wet, most] = [thirsty, watered, limit].map((celsius) => formatTemperature(celsius, units));
  const side = typeof from === 'number' ? ` on its ${compassWord(from)} side` : from === 'top' ? ' at its top' : '';
  const feature = plantFeatures(plan).find(({ id }) => id === plant);
  const fruit = feature !== undefined && rowOf(plan, feature)?.limitOf === 'fruit';
  const mobile = feature?.kind === 'plant' && feature.container === true && feature.move !== 'never';
  const how = mobile ? `Have ${name} in the shade by now, or cloth over it` : `Have cloth or an umbrella over ${name} by now`;
  const what = `${how}, until ${when?.to ?? 'evening'}`;
  const why = fruit ? `the skin of its fruit reaches ${dry}${side}, its limit is ${most}, and water does not cool it` : waterMayDo ? `a thirsty leaf reaches ${dry}${side}, a watered one ${wet}, its limit is ${most}; well watered it gets by` : `even a watered leaf reaches ${wet}${side}, its limit is ${most}`;
  return `${what}: ${why}.`;
}

function hotHours({ samples }: HeatDay, timeZone: string): Stretch | null {
  const first = samples.air.findIndex((air) => air >= HOT_WORK);
  if (first < 0) return null;
  return stretchOf(samples, first, samples.air.findLastIndex((air) => air >= HOT_WORK), timeZone);
}

/** Who is to be covered before the cold night's sunset: the low comes towards the morning. */
function frostTasks(plan: Plan, low: number, date: CivilDate, units: Units): Timed[] {
  const tender = plantFeatures(plan).filter((feature) => {
    const damage = rowOf(plan, feature)?.frostDamage;
    return damage !== undefined && low <= damage + CLEAR_NIGHT;
  }).map(({ id }) => id);
  if (tender.length === 0) return [];
  const cover: TomorrowTask = {
    at: 'the evening before', plants: tender,
    advice: { basis: 'common practice', text: `Cover ${namesInside(plan, tender)} before sunset, down to the ground, off the leaves: with ${formatTemperature(low, units)} in the air a leaf is ${units === 'metric' ? '1 to 3 K' : '2 to 5 °F'} colder under a clear sky.` },
  };
  const { riseMs } = sunTimes(plan, date);
  const open: TomorrowTask = {
    at: riseMs === null ? '10:00' : clockOf(riseMs + 2 * 3_600_000, plan.site.timeZone), plants: tender,
    advice: { basis: 'extension practice', text: `Open the cover of ${namesInside(plan, tender)} once it is above freezing, before the sun heats what is under it.` },
  };
  return [{ task: cover, isFrost: true }, { task: open, isFrost: true }];
}

function minuteOf(at: string): number {
  return at === 'the evening before' ? EVENING_BEFORE : Number(at.slice(0, 2)) * 60 + Number(at.slice(3, 5));
}

function notesOf(plan: Plan, { date, high, low: typed }: Forecast, low: number, units: Units): string[] {
  const { offset = 0, months } = plan.climate;
  return [
    sentenceCase(`for ${dateWords(date)}, taken as a clear day: cloud makes it milder. A leaf’s figure may be 4 K off.`.replace('4 K', units === 'imperial' ? '7 °F' : '4 K')),
    ...(typed === undefined ? [`No low was given: ${formatTemperature(low, units)} is taken, as far below the high as on a usual day of the month.`] : []),
    ...(offset === 0 ? [] : [`Your own thermometer’s offset is added: the air in this yard reaches ${formatTemperature(high + offset, units)}.`]),
    ...(months.some(({ month }) => month === Number(date.slice(5, 7))) ? [] : ['The plan has no figures for that month: usual humidity and wind are taken.']),
  ];
}
