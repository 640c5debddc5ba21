/** One day's list from a typed forecast: what to do when, for whom, from the evening before on. */

import { cautionsFor } from '../../../frame/work/cautions.ts';
import { heatDayOf } from '../../../load/leaf/heat-day.ts';
import { saturationVapour } from '../../../load/leaf/leaf-balance.ts';
import { createSkyViewer } from '../../../load/light/sky-viewer.ts';
import type { Outcome } from '../../../load/types.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { isCivilDate, monthWord, dateWords } from '../../../plan/dates/dates.ts';
import { monthOfDate, yearOf, monthDayOf } from '../../../plan/dates/parts.ts';
import { inYearlySpan } from '../../../plan/dates/year-span.ts';
import { offsetOf } from '../../../plan/defaults.ts';
import { isCloth } from '../../../plan/kinds.ts';
import { refuseOption } from '../../../plan/problems.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { minutesOf } from '../../../plan/units/clock.ts';
import { formatTemperature } from '../../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../../plan/units/units.ts';
import { capital } from '../../../plan/words/first-letter.ts';
import { namesInside } from '../../../plan/words/names.ts';
import { buildScene } from '../../../scene/build.ts';
import { type MonthClimate, monthClimate } from '../../../sun/climate.ts';
import { sunUp } from '../../../sun/sun-up.ts';
import { clothOn, withClothOn } from '../cloth/hung-on.ts';
import { waterOn } from '../water/water.ts';
import { frostTasks } from './frost.ts';
import { heatTasks, HOT_WORK, isHurt } from './heat.ts';
import { plantOfDay } from './plant.ts';
import type { Forecast, Tomorrow, TomorrowPlant } from './types.ts';

/** Between a day's high and low where the climate has no figures for the month. Our choice. [K] */
const USUAL_SWING = 15;
/** Stands before every clock time. */
const EVENING_BEFORE = -1;

/** @returns the day's list, or what is wrong with the forecast or the plan */
export function tomorrowOf(plan: Plan, forecast: Forecast, units: Units = unitsOf(plan)): Outcome<Tomorrow> {
  const { date, high, low = high - usualSwing(plan, date) } = forecast;
  if (!isCivilDate(date)) return refuseOption('date', `"${date}" is no date: write it as 2026-07-20.`);
  if (!(high >= -60 && high <= 60)) return refuseOption('high', highRefusal(high, units));
  if (!(low >= -60 && low <= high))
    return refuseOption('low', `The low must be at most the high of ${formatTemperature(high, units)}.`);
  const forecastPlan = withForecast(withClothOn(plan, date), { date, high, low });
  const scene = buildScene(forecastPlan);
  const heat = heatDayOf(forecastPlan, scene, { kind: 'day', date: monthDayOf(date) });
  if (!heat.ok) return heat;
  const sky = createSkyViewer(scene);
  const water = waterOn(forecastPlan, { kind: 'day', date: monthDayOf(date) });
  if (!water.ok) return water;
  const plants = plantFeatures(plan).flatMap((feature): TomorrowPlant[] => {
    const row = rowOf(plan, feature);
    return row === undefined ? [] : [plantOfDay(plan, scene, sky, heat.value, feature, row, water.value)];
  });
  const worstFirst = plants.toSorted(
    (a, b) => VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || b.thirsty - b.limit - (a.thirsty - a.limit),
  );
  const frost = frostTasks(plan, low + offsetOf(plan.climate), date, units);
  const heatOnes = heatTasks(plan, worstFirst, date, heat.value, units);
  return {
    ok: true,
    value: {
      date,
      high,
      low,
      sunUp: sunUp(plan, date),
      asked: askedBack(plan, forecast, units),
      plants: worstFirst,
      tasks: [...heatOnes, ...frost].toSorted((a, b) => minuteOf(a.at) - minuteOf(b.at)),
      cautions: cautionsFor(
        [
          ...(high >= HOT_WORK ? (['heat'] as const) : []),
          ...(worstFirst.some(isHurt) ? [plan.features.some(isCloth) ? ('cloth' as const) : ('drape' as const)] : []),
          ...(frost.length > 0 ? (['winter'] as const) : []),
        ],
        { ...plan, units },
      ),
      notes: notesOf(plan, forecast, low, units),
    },
  };
}

/** Degrees of the other kind are the likeliest slip. */
function highRefusal(high: number, units: Units): string {
  const [least, most] = [-60, 60].map((celsius) => formatTemperature(celsius, units));
  const range = `The high must be a number between ${least} and ${most}.`;
  return units === 'metric' && high > 60 && high <= 130
    ? `${range} ${high.toFixed(0)} °F would be ${formatTemperature((high - 32) / 1.8, units)}.`
    : range;
}

/** A high is asked back from so many standard deviations off the month's. Our choice. */
const FAR_SPREADS = 3;

/**
 * Whether a typed high or low is so far from the month's that it may be a slip, as a question; else `null`. What the
 * plan itself calls a heatwave's high is none in its season.
 */
function askedBack(plan: Plan, { date, high, low }: Forecast, units: Units): string | null {
  const usual = monthClimate(plan, monthOfDate(date));
  if (usual === null) return null;
  const offset = offsetOf(plan.climate);
  const far = FAR_SPREADS * usual.spread;
  const month = monthWord(monthOfDate(date));
  const isHeatwave =
    high > usual.high && high <= plan.climate.heatwaveHigh && inYearlySpan(plan.season, monthDayOf(date));
  const [typed, most] =
    !isHeatwave && Math.abs(high + offset - usual.high) > far
      ? [
          `high of ${formatTemperature(high, units)}`,
          `${month}’s usual ${formatTemperature(usual.high - offset, units)}`,
        ]
      : low !== undefined && Math.abs(low + offset - usual.low) > (isHeatwave ? far + high - usual.high : far)
        ? [
            `low of ${formatTemperature(low, units)}`,
            `${month}’s usual ${formatTemperature(usual.low - offset, units)}`,
          ]
        : [null, ''];
  return typed === null ? null : `Is the ${typed} right? It is far from ${most}.`;
}

const VERDICTS: readonly TomorrowPlant['verdict'][] = [
  'will burn',
  'at risk',
  'fine once established',
  'no shade needed',
  'fine',
];

function usualSwing(plan: Plan, date: CivilDate): number {
  const usual = monthClimate(plan, monthOfDate(date));
  return usual === null ? USUAL_SWING : usual.high - usual.low;
}

/**
 * A season of that one day, clear, with the typed extremes in place of the month's. The air holds the month's vapour,
 * as on the heatwave day.
 */
function withForecast(plan: Plan, { date, high, low }: Required<Forecast>): Plan {
  const monthDay = monthDayOf(date);
  const month = monthOfDate(date);
  const own = plan.climate.months.find((row) => row.month === month);
  const usual = monthClimate(plan, month);
  const row = {
    ...own,
    ...(usual && { humidity: humidityAt((high + low) / 2 + offsetOf(plan.climate), usual) }),
    month,
    high,
    low,
    sunshine: 1,
    sunshineAfternoon: 1,
    spread: 0,
  };
  const months = [...plan.climate.months.filter((each) => each.month !== month), row];
  return {
    ...plan,
    season: { ...plan.season, year: yearOf(date), from: monthDay, to: monthDay },
    climate: { ...plan.climate, months, heatwaveHigh: high },
  };
}

/** What the month's vapour comes to in other air, dew where that air holds less. @param air [°C] @returns [%] */
function humidityAt(air: number, { high, low, humidity }: Pick<MonthClimate, 'high' | 'low' | 'humidity'>): number {
  return Math.min(100, (humidity * saturationVapour((high + low) / 2)) / saturationVapour(air));
}

/** Cloth that nobody says hangs: the day is told as if it did. */
function takenToHang(plan: Plan, date: CivilDate, high: number): string[] {
  const taken = clothOn(plan, date).flatMap(({ id, saidBy }) => (saidBy === null ? [id] : []));
  return taken.length === 0 || high < HOT_WORK
    ? []
    : [`The cloth of ${namesInside(plan, taken)} is taken to hang: if it is down, hang it the evening before.`];
}

function minuteOf(at: string): number {
  return at === 'the evening before' ? EVENING_BEFORE : minutesOf(at);
}

function notesOf(plan: Plan, { date, high, low: typed }: Forecast, low: number, units: Units): string[] {
  const { months } = plan.climate;
  const offset = offsetOf(plan.climate);
  return [
    capital(
      `for ${dateWords(date)}, taken as a clear day: cloud makes it milder. A leaf’s figure may be ` +
        `some degrees off.`,
    ),
    ...(typed === undefined
      ? [
          `No low was given: ${formatTemperature(low, units)} is taken, as far below the high as on a usual day ` +
            `of the month.`,
        ]
      : []),
    ...takenToHang(plan, date, high),
    ...(offset === 0
      ? []
      : [
          `Your own thermometer’s offset is added: the air in this yard reaches ` +
            `${formatTemperature(high + offset, units)}.`,
        ]),
    ...(months.some(({ month }) => month === monthOfDate(date))
      ? []
      : ['The plan has no figures for that month: usual humidity and wind are taken.']),
  ];
}
