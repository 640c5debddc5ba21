/**
 * The months around a season that the climate has figures for: cloth may be wanted before the season begins, and after.
 */

import { dayOfMonth } from '../../plan/dates/dates.ts';
import { monthOfDate, yearOf, monthDayOf } from '../../plan/dates/parts.ts';
import { Kept } from '../../plan/kept.ts';
import type { CivilDate, Plan } from '../../plan/types.ts';
import { dateIn, datesBetween, daysAfter } from '../../sun/days/calendar.ts';
import { type Result, seasonDates, type SeasonMonth } from '../../sun/days/season.ts';

/** Months looked at beyond the ends of the season, the hottest next to it first: hot air may come before a monsoon. */
const BEYOND = 6;

/**
 * The plan with a season of whole months, widened on both sides as far as the climate's months go, at most to eleven
 * months.
 */
export function withWidenedSeason(plan: Plan): Result<Plan> {
  const dates = seasonDates(plan);
  if (!dates.ok) return dates;
  const highOf = ({ month }: SeasonMonth) => plan.climate.months.find((row) => row.month === month)?.high ?? -Infinity;
  let first = monthOf(dates.value[0]);
  let last = monthOf(dates.value[dates.value.length - 1]);
  for (let k = 0; k < BEYOND && spanned(first, last) < 11; k++) {
    const [earlier, later] = [before(first), after(last)];
    if (Math.max(highOf(earlier), highOf(later)) === -Infinity) break;
    if (highOf(later) > highOf(earlier)) last = later;
    else first = earlier;
  }
  const to = daysAfter(firstOf(after(last)), -1);
  const season = known.of([plan.season, plan.climate], '', () => ({
    ...plan.season,
    year: first.year,
    from: monthDayOf(firstOf(first)),
    to: monthDayOf(to),
  }));
  return { ok: true, value: { ...plan, season } };
}

/** The same season each time: by it the sun's samples are kept. */
const known = new Kept<Plan['season']>();

/**
 * The season that a date belongs to, named by the year of its `from`: 18 January 2027 belongs to a season that began in
 * December 2026.
 */
export function seasonYearOf(plan: Plan, date: CivilDate): number {
  const { from, to } = plan.season;
  return to < from && monthDayOf(date) < from ? yearOf(date) - 1 : yearOf(date);
}

/** A value known on some dates, linear between them, the first before them and the last after them. */
export interface DatedValue {
  readonly date: CivilDate;
  readonly value: number;
}

/** First and last day between two dates on which a dated value reaches a limit; `null` where it never does. */
export function stretchAbove(
  values: readonly DatedValue[],
  limit: number,
  from: CivilDate,
  to: CivilDate,
): { first: CivilDate; last: CivilDate } | null {
  const days = datesBetween(from, to);
  const at = days.map(() => 0);
  const place = (date: CivilDate) => days.indexOf(date);
  days.forEach((_, day) => {
    const next = values.findIndex(({ date }) => place(date) >= day);
    if (next === 0) at[day] = values[0].value;
    else if (next < 0) at[day] = values[values.length - 1]?.value ?? 0;
    else {
      const [a, b] = [values[next - 1], values[next]];
      at[day] = a.value + ((b.value - a.value) * (day - place(a.date))) / (place(b.date) - place(a.date));
    }
  });
  const first = at.findIndex((value) => value >= limit);
  return first < 0 ? null : { first: days[first], last: days[at.findLastIndex((value) => value >= limit)] };
}

function monthOf(date: CivilDate): SeasonMonth {
  return { month: monthOfDate(date), year: yearOf(date) };
}

function before({ month, year }: SeasonMonth): SeasonMonth {
  return month === 1 ? { month: 12, year: year - 1 } : { month: month - 1, year };
}

function after({ month, year }: SeasonMonth): SeasonMonth {
  return month === 12 ? { month: 1, year: year + 1 } : { month: month + 1, year };
}

function spanned(first: SeasonMonth, last: SeasonMonth): number {
  return (last.year - first.year) * 12 + last.month - first.month + 1;
}

function firstOf({ month, year }: SeasonMonth): CivilDate {
  return dateIn(year, dayOfMonth(month, 1)) ?? `${year}-01-01`;
}
