import { monthWord } from '../../plan/dates/dates.ts';
import { monthOfDate, yearOf } from '../../plan/dates/parts.ts';
import { offsetOf } from '../../plan/defaults.ts';
import { errorAt, refusal } from '../../plan/problems.ts';
import type { CivilDate, MonthDay, Problem } from '../../plan/types.ts';
import { monthClimate } from '../climate.ts';
import type { Setting } from '../setting.ts';
import type { Weather } from '../weather/weather.ts';
import { dateIn, datesBetween } from './calendar.ts';

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: Problem[] };

/** Every civil day of the season, both ends included. */
export function seasonDates(plan: Setting): Result<CivilDate[]> {
  const { year, from, to } = plan.season;
  const first = dateIn(year, from);
  if (first === null) return refusal('/season/from', noSuchDay(from, year));
  const lastYear = to < from ? year + 1 : year;
  const last = dateIn(lastYear, to);
  if (last === null) return refusal('/season/to', noSuchDay(to, lastYear));
  return { ok: true, value: datesBetween(first, last) };
}

/**
 * The date of a single day: in the season's first year, or in its second when the season crosses New Year and the day
 * comes before its beginning. It may lie outside the season.
 */
export function dateOfDay(plan: Setting, monthDay: MonthDay): Result<CivilDate> {
  const { year, from, to } = plan.season;
  const dayYear = to < from && monthDay < from ? year + 1 : year;
  const date = dateIn(dayYear, monthDay);
  return date === null ? refusal('', noSuchDay(monthDay, dayYear)) : { ok: true, value: date };
}

/** A month of the season and the year in which the season first meets it. */
export interface SeasonMonth {
  readonly month: number;
  readonly year: number;
}

/** The season's months in the order in which it meets them. */
export function seasonMonths(plan: Setting): Result<SeasonMonth[]> {
  const dates = seasonDates(plan);
  if (!dates.ok) return dates;
  const months: SeasonMonth[] = [];
  for (const date of dates.value) {
    const month = monthOfDate(date);
    if (!months.some((met) => met.month === month)) months.push({ month, year: yearOf(date) });
  }
  return { ok: true, value: months };
}

/** The month whose 21st is the heatwave day, and by how much that day is hotter than the month's mean day. */
export interface Heat extends SeasonMonth {
  /** Added to the high and the low of every heat day. [K] */
  readonly raise: number;
}

/**
 * The season's month with the highest high, of equal ones the earliest in the season. With a weather file the months'
 * highs are the file's. `climate.offset` is in the month's high as in the heatwave's, and so not in `raise`.
 */
export function hottestMonth(plan: Setting, weather?: Weather): Result<Heat> {
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const missing = months.value.filter(({ month }) => monthClimate(plan, month) === null);
  if (missing.length > 0) return { ok: false, problems: missing.map(({ month }) => missingMonth(month)) };
  let hottest: SeasonMonth | null = null;
  let high = -Infinity;
  for (const month of months.value) {
    const climate = monthClimate(plan, month.month, weather);
    if (climate === null || climate.high <= high) continue;
    hottest = month;
    high = climate.high;
  }
  if (hottest === null) return refusal('/climate/months', 'No month of the season has a high that can be compared.');
  return {
    ok: true,
    value: { ...hottest, raise: plan.climate.heatwaveHigh + offsetOf(plan.climate) - high },
  };
}

/** "No figures" for a month that is needed. */
export function missingMonth(month: number): Problem {
  return errorAt(
    '/climate/months',
    `The climate has no figures for ${monthWord(month)} (month ${month}), and they are needed.`,
  );
}

function noSuchDay(monthDay: MonthDay, year: number): string {
  return monthDay === '02-29'
    ? `There is no 02-29 in ${year}, which is not a leap year.`
    : `There is no day "${monthDay}": a day is written MM-DD, as 07-21.`;
}
