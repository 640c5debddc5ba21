/** The civil calendar by arithmetic alone: no clock, no zone. */
import type { Season } from './types.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Gregorian rule. */
export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** @param month 1 to 12 */
export function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : DAYS[month - 1];
}

/** @param month 1 to 12 */
export function monthName(month: number): string {
  return NAMES[month - 1];
}

/** The year in which a season ends: the next one when `to` is before `from`. */
export function endYearOf(season: Season): number {
  return season.to < season.from ? season.year + 1 : season.year;
}

/** The months, 1 to 12, that a season touches, in its order, each once. */
export function monthsOfSeason(season: Pick<Season, 'from' | 'to'>): number[] {
  const first = Number(season.from.slice(0, 2));
  const last = Number(season.to.slice(0, 2));
  const wraps = season.to < season.from;
  const count = Math.min(12, (wraps ? last + 12 : last) - first + 1);
  return Array.from({ length: count }, (_, step) => ((first - 1 + step) % 12) + 1);
}
