import { dayOfMonth } from '../../plan/dates/dates.ts';
import { monthOfDate } from '../../plan/dates/parts.ts';
import { refusal } from '../../plan/problems.ts';
import type { CivilDate, MonthDay, Problem } from '../../plan/types.ts';
import { monthClimate, type MonthClimate } from '../climate.ts';
import type { Setting } from '../setting.ts';
import type { Weather } from '../weather/weather.ts';
import { dateIn } from './calendar.ts';
import { dateOfDay, hottestMonth, missingMonth, seasonDates, seasonMonths, type Result } from './season.ts';

/** Which days are meant: the whole season, one day, the heatwave day, or the heat day of one of the season's months. */
export type Period =
  | { readonly kind: 'season' }
  | { readonly kind: 'day'; readonly date: MonthDay }
  | { readonly kind: 'heatwave' }
  | { readonly kind: 'heatDay'; readonly month: number };

/** A day to be sampled. */
export interface PeriodDay {
  readonly date: CivilDate;
  /** The month's, as it is. */
  readonly climate: MonthClimate;
  /** Added to the month's high and low. [K] Not null on heat days: clear, no spread, weather file or not. */
  readonly raise: number | null;
}

const HEAT_DAY_OF_MONTH = 21;

/** The days of a period, in order. */
export function periodDays(plan: Setting, period: Period, weather?: Weather): Result<PeriodDay[]> {
  switch (period.kind) {
    case 'season': {
      const dates = seasonDates(plan);
      return dates.ok ? plainDays(plan, dates.value, weather) : dates;
    }
    case 'day': {
      const date = dateOfDay(plan, period.date);
      return date.ok ? plainDays(plan, [date.value], weather) : date;
    }
    case 'heatwave': {
      const heat = hottestMonth(plan, weather);
      return heat.ok ? heatDay(plan, heat.value.month, weather) : heat;
    }
    case 'heatDay':
      return heatDay(plan, period.month, weather);
  }
}

/**
 * The heat days of a season: the 21st of each of its months, in order, as hot beside its month as the heatwave day is
 * beside the hottest.
 */
export function heatDays(plan: Setting): Result<Period[]> {
  const months = seasonMonths(plan);
  return months.ok ? { ok: true, value: months.value.map(({ month }) => ({ kind: 'heatDay', month })) } : months;
}

function plainDays(plan: Setting, dates: readonly CivilDate[], weather?: Weather): Result<PeriodDay[]> {
  const climates = new Map<number, MonthClimate>();
  const problems: Problem[] = [];
  for (const month of new Set(dates.map(monthOfDate))) {
    const climate = monthClimate(plan, month, weather);
    if (climate === null) problems.push(missingMonth(month));
    else climates.set(month, climate);
  }
  if (problems.length > 0) return { ok: false, problems };
  const days: PeriodDay[] = [];
  for (const date of dates) {
    const climate = climates.get(monthOfDate(date));
    if (climate !== undefined) days.push({ date, climate, raise: null });
  }
  return { ok: true, value: days };
}

function heatDay(plan: Setting, month: number, weather?: Weather): Result<PeriodDay[]> {
  const heat = hottestMonth(plan, weather);
  if (!heat.ok) return heat;
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const met = months.value.find((candidate) => candidate.month === month);
  const climate = monthClimate(plan, month, weather);
  const date = met === undefined ? null : dateIn(met.year, dayOfMonth(month, HEAT_DAY_OF_MONTH));
  if (date === null || climate === null) {
    return refusal('/season', `Month ${month} is not in the season, so it has no heat day.`);
  }
  return { ok: true, value: [{ date, climate, raise: heat.value.raise }] };
}
