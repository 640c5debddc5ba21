import { yearOf } from '../../plan/dates/parts.ts';
import type { CivilDate, MonthDay } from '../../plan/types.ts';
import { MS_PER_DAY, MS_PER_HOUR } from '../../plan/units/per-unit.ts';

/** The date of a month and day in a year, or null when that year has no such day (02-29, or nonsense). */
export function dateIn(year: number, monthDay: MonthDay): CivilDate | null {
  const date = `${String(year).padStart(4, '0')}-${monthDay}`;
  return isDate(date) ? date : null;
}

/** Every date from one to another, both included; none when `to` is before `from`. */
export function datesBetween(from: CivilDate, to: CivilDate): CivilDate[] {
  const first = utcMidnight(from);
  return Array.from({ length: Math.max(0, (utcMidnight(to) - first) / MS_PER_DAY + 1) }, (_, day) =>
    utcIso(first + day * MS_PER_DAY).slice(0, 10),
  );
}

/** 1 on the first of January. */
export function dayOfYear(date: CivilDate): number {
  return (utcMidnight(date) - utcMidnight(`${date.slice(0, 4)}-01-01`)) / MS_PER_DAY + 1;
}

/** A day's place in a year of 365 days, 0 to 364; 29 February takes the 28th's. */
export function dayOfCommonYear(date: CivilDate): number {
  const ofYear = dayOfYear(date);
  return ofYear - 1 - (ofYear >= 60 && dateIn(yearOf(date), '02-29') !== null ? 1 : 0);
}

/** The date some days later. */
export function daysAfter(date: CivilDate, days: number): CivilDate {
  return utcIso(utcMidnight(date) + days * MS_PER_DAY).slice(0, 10);
}

/** Midnight of a date by a clock that is always `utcOffset` hours ahead of UTC. [ms since 1970-01-01 UTC] */
export function midnightAt(date: CivilDate, utcOffset: number): number {
  return utcMidnight(date) - utcOffset * MS_PER_HOUR;
}

/** Midnight of a date by UTC. [ms since 1970-01-01 UTC] @throws RangeError when there is no such date */
export function utcMidnight(date: CivilDate): number {
  if (!isDate(date)) throw new RangeError(`"${date}" is no date.`);
  return Date.parse(date);
}

/** An instant by UTC: "2026-07-20T13:10:00.000Z". */
export function utcIso(ms: number): string {
  return new Date(ms).toISOString();
}

function isDate(date: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date)) return false;
  const ms = Date.parse(date);
  // Some browsers read 30 February as the second of March.
  return !Number.isNaN(ms) && utcIso(ms).startsWith(date);
}
