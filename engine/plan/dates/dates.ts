/** The civil calendar by arithmetic alone: no clock, no zone. */

import { listWords } from '../words/list-words.ts';

/** What of a season its dates are reckoned from. */
interface Span {
  readonly year: number;
  readonly from: string;
  readonly to: string;
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/** January first. */
export const MONTHS = [
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
export function monthWord(month: number): string {
  return MONTHS[month - 1];
}

/** A day of any year, "MM-DD". @param month 1 to 12 */
export function dayOfMonth(month: number, day: number): string {
  return `${twoDigits(month)}-${twoDigits(day)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}

/** "2 May" of a day of any year, of a date, or of a clock time of one. */
export function dayWords(day: string): string {
  const monthDay = day.replace(/T.*$/, '').slice(-5);
  return `${Number(monthDay.slice(3))} ${monthWord(Number(monthDay.slice(0, 2)))}`;
}

/** The months, 1 to 12, that a season touches, in its order, each once. */
export function monthsOfSeason(season: Omit<Span, 'year'>): number[] {
  const first = Number(season.from.slice(0, 2));
  const last = Number(season.to.slice(0, 2));
  const wraps = season.to < season.from;
  const count = Math.min(12, (wraps ? last + 12 : last) - first + 1);
  return Array.from({ length: count }, (_, step) => ((first - 1 + step) % 12) + 1);
}

/** Whether the calendar has such a day. */
export function isDay(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

/** Whether a text is a real day written YYYY-MM-DD. */
export function isCivilDate(text: string): boolean {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  return parts !== null && isDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

/** "14 May 2026" */
export function dateWords(date: string): string {
  return `${dayWords(date)} ${date.slice(0, 4)}`;
}

/** Days of one year with each month named once: "13 and 31 May, 18 June". */
export function daysFolded(dates: readonly string[]): string {
  const months = [...new Set(dates.map((date) => date.slice(0, 7)))];
  return months
    .map((month) => {
      const days = dates.filter((date) => date.startsWith(month)).map((date) => String(Number(date.slice(8, 10))));
      return `${listWords(days)} ${monthWord(Number(month.slice(5, 7)))}`;
    })
    .join(', ');
}
