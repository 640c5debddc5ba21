/** Parts of a date "2026-07-20", or of a local moment "2026-07-20T13:10", as they are written. */

import type { CivilDate, ClockTime, MonthDay } from '../types.ts';

export function yearOf(date: CivilDate): number {
  return Number(date.slice(0, 4));
}

/** 1 to 12. */
export function monthOfDate(date: CivilDate): number {
  return Number(date.slice(5, 7));
}

export function monthDayOf(date: CivilDate): MonthDay {
  return date.slice(5, 10);
}

export function dateOfMoment(when: string): CivilDate {
  return when.slice(0, 10);
}

export function clockOfMoment(when: string): ClockTime {
  return when.slice(11, 16);
}
