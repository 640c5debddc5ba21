import type { MonthDay } from '../plan/types.ts';

const DAYS_IN_MONTH = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** The 366 days of a leap year in order, "01-01" first. */
export const LEAP_YEAR: readonly MonthDay[] = DAYS_IN_MONTH.flatMap((days, month) =>
  Array.from({ length: days }, (_, day) => `${twoDigits(month + 1)}-${twoDigits(day + 1)}`),
);

const INDEX = new Map(LEAP_YEAR.map((monthDay, index) => [monthDay, index]));

/** Place of a day in `LEAP_YEAR`. @throws RangeError for what is not a day of the year. */
export function dayIndex(monthDay: MonthDay): number {
  const index = INDEX.get(monthDay);
  if (index === undefined) throw new RangeError(`Expected a day of the year as MM-DD, got "${monthDay}".`);
  return index;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
