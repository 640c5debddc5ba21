/** Days as people write them: in figures or in words. */

import type { CivilDate, MonthDay } from '../types.ts';
import { isCivilDate, isDay, MONTHS, dayOfMonth } from './dates.ts';

/** "21 July", "July 21", "21st of Jul"; the year, where one may stand, behind it. */
const DAY_FIRST = /^(\d{1,2})(?:st|nd|rd|th)?\.?(?: of)? ([a-z]{3,9})\.?(?:,? (\d{4}))?$/;
const MONTH_FIRST = /^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?$/;

/** A typed day of the year, `07-21`, `21 July` or `July 21`, as "MM-DD"; `null` when there is no such day. */
export function readMonthDay(text: string): MonthDay | null {
  const typed = text.trim().toLowerCase();
  const figures = /^(\d\d)-(\d\d)$/.exec(typed);
  const said = figures ? { month: Number(figures[1]), day: Number(figures[2]), year: null } : wordsOf(typed);
  // A leap year has every day that a year may have.
  return said === null || said.year !== null || !isDay(2024, said.month, said.day)
    ? null
    : dayOfMonth(said.month, said.day);
}

/** A typed day of one year, `2026-07-21` or `21 July 2026`, as "YYYY-MM-DD"; `null` when there is no such day. */
export function readCivilDate(text: string): CivilDate | null {
  const typed = text.trim().toLowerCase();
  if (isCivilDate(typed)) return typed as CivilDate;
  const said = wordsOf(typed);
  return said === null || said.year === null || !isDay(said.year, said.month, said.day)
    ? null
    : `${said.year}-${dayOfMonth(said.month, said.day)}`;
}

function wordsOf(typed: string): { month: number; day: number; year: number | null } | null {
  const dayFirst = DAY_FIRST.exec(typed);
  const monthFirst = MONTH_FIRST.exec(typed);
  const [day, word, year] = dayFirst
    ? dayFirst.slice(1)
    : monthFirst
      ? [monthFirst[2], monthFirst[1], monthFirst[3]]
      : [];
  const month = word === undefined ? 0 : MONTHS.findIndex((name) => name.toLowerCase().startsWith(word)) + 1;
  return month === 0 ? null : { month, day: Number(day), year: year === undefined ? null : Number(year) };
}
