import { dayOfMonth, daysInMonth } from '../plan/dates/dates.ts';
import type { MonthDay } from '../plan/types.ts';

/** Any leap year: it has every day that a year may have. */
const LEAP = 2024;

/** The 366 days of a leap year in order, "01-01" first. */
export const LEAP_YEAR: readonly MonthDay[] = Array.from({ length: 12 }, (_, m) => m + 1).flatMap((month) =>
  Array.from({ length: daysInMonth(LEAP, month) }, (_, day) => dayOfMonth(month, day + 1)),
);

const INDEX = new Map(LEAP_YEAR.map((monthDay, index) => [monthDay, index]));

/** Place of a day in `LEAP_YEAR`. @throws RangeError for what is not a day of the year. */
export function dayIndex(monthDay: MonthDay): number {
  const index = INDEX.get(monthDay);
  if (index === undefined) throw new RangeError(`Expected a day of the year as MM-DD, got "${monthDay}".`);
  return index;
}
