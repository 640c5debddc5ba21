import type { MonthDay, Season } from '../../../engine/index.ts';

/** Days of the strip: a common year; 29 February has no place of its own. */
export const DAYS = 365;

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** A strip begins in January, or in July where the season crosses New Year, so that a season is never cut in two. */
export function stripStart({ from, to }: Season): MonthDay {
  return from <= to ? '01-01' : '07-01';
}

/** Place of a day on a strip that begins on `start`, 0 to 364. */
export function placeOf(monthDay: MonthDay, start: MonthDay): number {
  return (ofYear(monthDay) - ofYear(start) + DAYS) % DAYS;
}

export function dayAt(place: number, start: MonthDay): MonthDay {
  let rest = (place + ofYear(start)) % DAYS;
  let month = 0;
  while (rest >= LENGTHS[month]) rest -= LENGTHS[month++];
  return `${String(month + 1).padStart(2, '0')}-${String(rest + 1).padStart(2, '0')}`;
}

function ofYear(monthDay: MonthDay): number {
  const month = Number(monthDay.slice(0, 2));
  const day = Math.min(Number(monthDay.slice(3)), LENGTHS[month - 1]);
  return LENGTHS.slice(0, month - 1).reduce((sum, length) => sum + length, 0) + day - 1;
}
