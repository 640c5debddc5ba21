import { Temporal } from 'temporal-polyfill';
import type { CivilDate, MonthDay } from '../plan/types.ts';

/** The date of a month and day in a year, or null when that year has no such day (02-29, or nonsense). */
export function dateIn(year: number, monthDay: MonthDay): CivilDate | null {
  const match = /^(\d{2})-(\d{2})$/.exec(monthDay);
  if (!match) return null;
  try {
    return Temporal.PlainDate.from({ year, month: Number(match[1]), day: Number(match[2]) }, { overflow: 'reject' }).toString();
  } catch {
    return null;
  }
}

/** Every date from one to another, both included; none when `to` is before `from`. */
export function datesBetween(from: CivilDate, to: CivilDate): CivilDate[] {
  const dates: CivilDate[] = [];
  const last = Temporal.PlainDate.from(to);
  for (let day = Temporal.PlainDate.from(from); Temporal.PlainDate.compare(day, last) <= 0; day = day.add({ days: 1 })) dates.push(day.toString());
  return dates;
}

export const monthDayOf = (date: CivilDate): MonthDay => date.slice(5);
export const monthOfDate = (date: CivilDate): number => Number(date.slice(5, 7));
export const yearOf = (date: CivilDate): number => Number(date.slice(0, 4));

/** 1 on the first of January. */
export function dayOfYear(date: CivilDate): number {
  return Temporal.PlainDate.from(date).dayOfYear;
}

/** A day's place in a year of 365 days, 0 to 364; 29 February takes the 28th's. */
export function dayOfCommonYear(date: CivilDate): number {
  const day = Temporal.PlainDate.from(date);
  return day.dayOfYear - 1 - (day.inLeapYear && day.dayOfYear >= 60 ? 1 : 0);
}

/** The date some days later. */
export function daysAfter(date: CivilDate, days: number): CivilDate {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** Midnight of a date by a clock that is always `utcOffset` hours ahead of UTC. [ms since 1970-01-01 UTC] */
export function midnightAt(date: CivilDate, utcOffset: number): number {
  return Temporal.PlainDate.from(date).toZonedDateTime('UTC').epochMilliseconds - utcOffset * 3_600_000;
}
