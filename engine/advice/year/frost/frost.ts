/** Frosty nights, who is hurt by them, and the summer frame's winter cover. */

import { isTooDark } from '../../../load/light/light-class.ts';
import { normalShare } from '../../../load/light/normal.ts';
import type { Nine, Outcome } from '../../../load/types.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { monthOfDate, yearOf, monthDayOf } from '../../../plan/dates/parts.ts';
import { inYearlySpan } from '../../../plan/dates/year-span.ts';
import type { CivilDate, Plan, PlantRow } from '../../../plan/types.ts';
import { withoutCloth } from '../../../plan/yards/without-cloth.ts';
import { monthClimate } from '../../../sun/climate.ts';
import { dateIn, datesBetween, daysAfter } from '../../../sun/days/calendar.ts';
import { seasonDates } from '../../../sun/days/season.ts';
import { clockNear } from '../../../sun/days/zone.ts';
import { sunTimes } from '../../../sun/sun-times.ts';
import { dayLight } from '../../words/plant-light.ts';
import { CLEAR_NIGHT } from './clear-night.ts';
import { frostHelp } from './help.ts';
import type { FrostAdvice, FrostPlant } from './types.ts';
import { frostWords } from './words.ts';

/** Light through frost cloth of 17 to 42 g/m². */
const COVER_LIGHT = [0.7, 0.85] as const;
/** A sunset over weeks is told to so much. [ms] */
/** Sky views that grade a place's exposure: our own. */
const EXPOSED = 0.8;
const SHELTERED = 0.4;
/** Vegetables damaged from here on are gone with the first frost. Our choice. [°C] */
const ANNUAL_DAMAGE = -1;

/** @returns the frost advice, or why it cannot be made */
export function frostAdvice(plan: Plan): Outcome<FrostAdvice> {
  const dates = seasonDates(plan);
  if (!dates.ok) return dates;
  const window = windowOf(plan, dates.value[dates.value.length - 1]);
  const middle = window && datesBetween(window.first, window.last);
  const coldest = middle === null ? null : middle[Math.floor(middle.length / 2)];
  const winter = coldest === null ? null : winterLight(plan, coldest);
  if (winter !== null && !winter.ok) return winter;
  const begins = window === null ? 1 : monthOfDate(window.first);
  const plants = plantFeatures(plan).flatMap((feature) => {
    const row = rowOf(plan, feature);
    return row === undefined ? [] : frostPlant(plan, feature, row, winter?.value.of(feature) ?? null, begins);
  });
  const setMs = coldest === null ? null : sunTimes(plan, coldest).setMs;
  const sunset = setMs === null ? null : clockNear(setMs, plan.site.timeZone, 10);
  const found = {
    window: window && { ...window, sunset },
    lowest: plan.climate.frost?.lowest ?? null,
    plants,
  };
  return { ok: true, value: { ...found, advice: frostWords(plan, found) } };
}

/** Whether the first frost ends a plant, until it is sown again. */
export function endsWithFrost({ group, frostDamage = -Infinity }: PlantRow): boolean {
  return group === 'vegetable' && frostDamage >= ANNUAL_DAMAGE;
}

/** Nights of frost that an annual may be brought through by a cover, before it is over. Our choice. [days] */
const COVERED_ON = 14;

/** Whether frost has ended a plant by then, and it is not sown anew yet. */
export function isOver(plan: Plan, row: PlantRow, date: CivilDate): boolean {
  const { first, last } = plan.climate.frost ?? {};
  if (!endsWithFrost(row) || first === undefined || last === undefined) return false;
  return inYearlySpan({ from: monthDayOf(daysAfter(nextDay(first, date), COVERED_ON)), to: last }, monthDayOf(date));
}

/** None of a plant whose limit nobody knows. @param begins the month in which the frost time does */
function frostPlant(
  plan: Plan,
  feature: PlantFeature,
  row: PlantRow,
  nine: Nine | null,
  begins: number,
): readonly FrostPlant[] {
  const { frostDamage: damage } = row;
  if (damage === undefined) return [];
  const lowest = plan.climate.frost?.lowest;
  const under = nine && COVER_LIGHT.map((share) => share * nine.dailyLight);
  const skyView = nine?.skyView ?? 1;
  return [
    {
      plant: feature.id,
      damage,
      help: frostHelp(feature),
      coverBelow: damage + CLEAR_NIGHT,
      reached: lowest === undefined ? null : lowest <= damage + CLEAR_NIGHT,
      exposure: skyView >= EXPOSED ? 'exposed' : skyView >= SHELTERED ? 'half sheltered' : 'sheltered',
      annual: endsWithFrost(row),
      // What the worst nights told do not reach is not counted on.
      nights: lowest !== undefined && lowest > damage ? [] : nightsBelow(plan, damage, begins),
      light: nine &&
        under && { low: under[0], high: under[1], enough: !isTooDark(row, { ...nine, dailyLight: under[0] }) },
    },
  ];
}

/** The frost time that follows a season. */
function windowOf(plan: Plan, seasonEnd: CivilDate): { first: CivilDate; last: CivilDate } | null {
  const { first, last } = plan.climate.frost ?? {};
  if (first === undefined || last === undefined) return null;
  const begins = nextDay(first, seasonEnd);
  return { first: begins, last: nextDay(last, begins) };
}

/** The next time a day of the year comes, from a date on; 29 February waits for its leap year no longer than a day. */
function nextDay(monthDay: string, from: CivilDate): CivilDate {
  const year = yearOf(from);
  const days = [year, year + 1].map((candidate) => dateIn(candidate, monthDay) ?? `${candidate}-02-28`);
  return days[0] >= from ? days[0] : days[1];
}

/** A clear day in a month the climate may not have: the light depends on no temperature. The summer cloth is down. */
function winterLight(plan: Plan, date: CivilDate) {
  const month = monthOfDate(date);
  const months = plan.climate.months.some((row) => row.month === month)
    ? plan.climate.months
    : [...plan.climate.months, { month, high: 15, low: 5 }];
  const year = yearOf(date);
  const clear = months.map((row) => (row.month === month ? { ...row, sunshine: 1, sunshineAfternoon: 1 } : row));
  return dayLight(
    {
      ...withoutCloth(plan),
      season: { ...plan.season, year, from: monthDayOf(date), to: monthDayOf(date) },
      climate: { ...plan.climate, months: clear },
    },
    { kind: 'day', date: monthDayOf(date) },
  );
}

/**
 * Of the months that have figures, in the order of the winter; nights scatter about a month's mean low as days do about
 * its mean high.
 */
function nightsBelow(plan: Plan, damage: number, begins: number): { month: number; nights: number }[] {
  const place = (month: number): number => (month - begins + 12) % 12;
  return plan.climate.months
    .toSorted((a, b) => place(a.month) - place(b.month))
    .flatMap(({ month }) => {
      const climate = monthClimate(plan, month);
      if (climate === null) return [];
      const share =
        climate.spread > 0 ? normalShare((damage - climate.low) / climate.spread) : Number(climate.low <= damage);
      const nights = share * 30;
      return nights < 0.1 ? [] : [{ month, nights }];
    });
}
