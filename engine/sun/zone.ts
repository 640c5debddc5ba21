import * as Instant from 'temporal-polyfill/fns/Instant';
import * as PlainDate from 'temporal-polyfill/fns/PlainDate';
import * as PlainDateTime from 'temporal-polyfill/fns/PlainDateTime';
import * as ZonedDateTime from 'temporal-polyfill/fns/ZonedDateTime';
import type { CivilDate, ClockTime } from '../plan/types.ts';
import { plainDate } from './calendar.ts';

/** A civil day in elapsed time: 23, 24.5 or 25 hours long where the clocks change. */
export interface CivilDay {
  readonly date: CivilDate;
  /** The day's first instant. [ms since 1970-01-01 UTC] */
  readonly startMs: number;
  /** The next day's first instant. [ms since 1970-01-01 UTC] */
  readonly endMs: number;
}

/** Whether a name is a time zone that can be computed with ("Europe/Madrid"). */
export function isTimeZone(timeZone: string): boolean {
  try {
    firstInstant(plainDate('2000-01-01'), timeZone);
    return true;
  } catch {
    return false;
  }
}

/**
 * A civil day of a zone. Where clocks skip midnight it begins at the first instant there is.
 * @throws RangeError when the zone or the date does not exist; see {@link isTimeZone}
 */
export function civilDay(date: CivilDate, timeZone: string): CivilDay {
  return civilDays([date], timeZone)[0];
}

/** The civil days of several dates; of dates in a row each boundary is looked up once. @throws as {@link civilDay} */
export function civilDays(dates: readonly CivilDate[], timeZone: string): CivilDay[] {
  const days: CivilDay[] = [];
  let end: { date: string; ms: number } | null = null;
  for (const date of dates) {
    const day = plainDate(date);
    const startMs = end?.date === date ? end.ms : firstInstant(day, timeZone);
    const next = PlainDate.addDays(day, 1);
    end = { date: PlainDate.toString(next), ms: firstInstant(next, timeZone) };
    days.push({ date, startMs, endMs: end.ms });
  }
  return days;
}

/** Local time with seconds and offset, "2026-07-20T15:10:00+02:00"; parts of a second are dropped. @throws RangeError when the zone does not exist */
export function localIso(ms: number, timeZone: string): string {
  const zoned = Instant.toZonedDateTimeISO(Instant.fromEpochMilliseconds(Math.floor(ms)), timeZone);
  return ZonedDateTime.toString(zoned, { timeZoneName: 'never', smallestUnit: 'second' });
}

/** The civil date of an instant. @throws RangeError when the zone does not exist */
export function localDate(ms: number, timeZone: string): CivilDate {
  return localIso(ms, timeZone).slice(0, 10);
}

/**
 * The instant at which a zone's clocks read a time: the first if they read it twice; where they skip it, the time as it would have been without the change.
 * @returns [ms since 1970-01-01 UTC], or null when it is no clock time "YYYY-MM-DDTHH:MM", seconds allowed
 * @throws RangeError when the zone does not exist
 */
export function instantOf(clockTime: ClockTime, timeZone: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2}))?$/.exec(clockTime);
  if (!match) return null;
  const [year, month, day, hour, minute, second] = match.slice(1).map((part) => Number(part ?? 0));
  let plain: PlainDateTime.Record;
  try {
    plain = PlainDateTime.create(year, month, day, hour, minute, second);
  } catch {
    return null;
  }
  return PlainDateTime.toZonedDateTime(plain, timeZone, { disambiguation: 'compatible' }).epochMilliseconds;
}

function firstInstant(day: PlainDate.Record, timeZone: string): number {
  return PlainDate.toZonedDateTime(day, timeZone).epochMilliseconds;
}
