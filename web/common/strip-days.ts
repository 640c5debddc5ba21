import { MS_PER_DAY, yearOf, monthOfDate } from '../../engine/index.ts';
import type { CivilDate, JournalEntry, MonthDay, Plan, Season } from '../../engine/index.ts';

/**
 * Twelve months as a strip: from January, or from July where the season crosses New Year, so that a season is never cut
 * in two.
 */
export interface Strip {
  readonly year: number;
  readonly first: CivilDate;
  /** 365, or 366 where 29 February is among them. */
  readonly days: number;
}

/** @param year the season's, as its beginning names it */
export function stripOf({ from, to }: Season, year: number): Strip {
  const start = from <= to ? '01-01' : '07-01';
  const first = `${year}-${start}`;
  return { year, first, days: daysBetween(first, `${year + 1}-${start}`) };
}

/**
 * Where a date begins on the strip, 0 to 1; a date of another year has the place of its month and day, 29 February of a
 * common year that of 1 March.
 */
export function placeOn({ first, days, year }: Strip, date: CivilDate): number {
  const own = [year, year + 1]
    .map((each) => daysBetween(first, `${each}${date.slice(4)}`))
    .find((at) => at >= 0 && at < days);
  return (own ?? 0) / days;
}

/** The month and day at a place of the strip, counted from 0. */
export function dateAt({ first }: Strip, place: number): MonthDay {
  return new Date(utcMidnight(first) + place * MS_PER_DAY).toISOString().slice(5, 10);
}

/** Whether a date lies on the strip itself. */
export function isOn({ first, days }: Strip, date: CivilDate): boolean {
  const at = daysBetween(first, date);
  return at >= 0 && at < days;
}

/** A stretch, both ends included, as places and widths; in two where it runs over the strip's end. */
export function piecesOn(
  strip: Strip,
  from: CivilDate,
  to: CivilDate,
): readonly (readonly [at: number, width: number])[] {
  const [start, end] = [placeOn(strip, from), placeOn(strip, to) + 1 / strip.days];
  return end > start
    ? [[start, end - start]]
    : [
        [start, 1 - start],
        [0, end],
      ];
}

/** What was noted on the days of a strip. */
export function notedOn(strip: Strip, { journal = [] }: Plan, what: JournalEntry['what']): readonly JournalEntry[] {
  return journal
    .filter((entry) => entry.what === what && isOn(strip, entry.date))
    .toSorted((a, b) => a.date.localeCompare(b.date));
}

function daysBetween(from: CivilDate, to: CivilDate): number {
  return Math.round((utcMidnight(to) - utcMidnight(from)) / MS_PER_DAY);
}

/** By numbers: as text, a day that is not is read by each browser in its own way. */
function utcMidnight(date: CivilDate): number {
  return Date.UTC(yearOf(date), monthOfDate(date) - 1, Number(date.slice(8)));
}
