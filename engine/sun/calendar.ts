// The library's functions rather than its classes: only what is used comes along to the page (13 kB less after gzip).
import * as PlainDate from 'temporal-polyfill/fns/PlainDate';
import type { CivilDate, MonthDay } from '../plan/types.ts';

/** The date of a month and day in a year, or null when that year has no such day (02-29, or nonsense). */
export function dateIn(year: number, monthDay: MonthDay): CivilDate | null {
  const match = /^(\d{2})-(\d{2})$/.exec(monthDay);
  if (!match) return null;
  try {
    return PlainDate.toString(PlainDate.create(year, Number(match[1]), Number(match[2])));
  } catch {
    return null;
  }
}

/** Every date from one to another, both included; none when `to` is before `from`. */
export function datesBetween(from: CivilDate, to: CivilDate): CivilDate[] {
  const dates: CivilDate[] = [];
  const last = plainDate(to);
  for (let day = plainDate(from); PlainDate.compare(day, last) <= 0; day = PlainDate.addDays(day, 1)) dates.push(PlainDate.toString(day));
  return dates;
}

export const monthDayOf = (date: CivilDate): MonthDay => date.slice(5);
export const monthOfDate = (date: CivilDate): number => Number(date.slice(5, 7));
export const yearOf = (date: CivilDate): number => Number(date.slice(0, 4));

/** 1 on the first of January. */
export function dayOfYear(date: CivilDate): number {
  return PlainDate.dayOfYear(plainDate(date));
}

/** A day's place in a year of 365 days, 0 to 364; 29 February takes the 28th's. */
export function dayOfCommonYear(date: CivilDate): number {
  const day = plainDate(date);
  const ofYear = PlainDate.dayOfYear(day);
  return ofYear - 1 - (PlainDate.inLeapYear(day) && ofYear >= 60 ? 1 : 0);
}

/** The date some days later. */
export function daysAfter(date: CivilDate, days: number): CivilDate {
  return PlainDate.toString(PlainDate.addDays(plainDate(date), days));
}

/** Midnight of a date by a clock that is always `utcOffset` hours ahead of UTC. [ms since 1970-01-01 UTC] */
export function midnightAt(date: CivilDate, utcOffset: number): number {
  return PlainDate.toZonedDateTime(plainDate(date), 'UTC').epochMilliseconds - utcOffset * 3_600_000;
}

/** A date as the library knows it. @throws RangeError when there is no such date */
export function plainDate(date: CivilDate): PlainDate.Record {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!match) throw new RangeError(`"${date}" is no date.`);
  return PlainDate.create(Number(match[1]), Number(match[2]), Number(match[3]));
}
