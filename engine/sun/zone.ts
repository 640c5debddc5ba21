import { Temporal } from 'temporal-polyfill';
import type { CivilDate, ClockTime } from '../plan/types.ts';

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
    Temporal.PlainDate.from('2000-01-01').toZonedDateTime(timeZone);
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
    const day = Temporal.PlainDate.from(date);
    const startMs = end?.date === date ? end.ms : firstInstant(day, timeZone);
    const next = day.add({ days: 1 });
    end = { date: next.toString(), ms: firstInstant(next, timeZone) };
    days.push({ date, startMs, endMs: end.ms });
  }
  return days;
}

/** Local time with seconds and offset, "2026-07-20T15:10:00+02:00"; parts of a second are dropped. @throws RangeError when the zone does not exist */
export function localIso(ms: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(Math.floor(ms))
    .toZonedDateTimeISO(timeZone)
    .toString({ timeZoneName: 'never', smallestUnit: 'second' });
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
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/.test(clockTime)) return null;
  let plain: Temporal.PlainDateTime;
  try {
    plain = Temporal.PlainDateTime.from(clockTime, { overflow: 'reject' });
  } catch {
    return null;
  }
  return plain.toZonedDateTime(timeZone, { disambiguation: 'compatible' }).epochMilliseconds;
}

function firstInstant(day: Temporal.PlainDate, timeZone: string): number {
  return day.toZonedDateTime(timeZone).epochMilliseconds;
}
