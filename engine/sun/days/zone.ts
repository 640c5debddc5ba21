import { dateOfMoment, clockOfMoment } from '../../plan/dates/parts.ts';
import type { CivilDate, ClockTime } from '../../plan/types.ts';
import { MS_PER_DAY, MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { daysAfter, utcIso, utcMidnight } from './calendar.ts';

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
    offsetOf(0, timeZone);
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
    const startMs = end?.date === date ? end.ms : firstInstant(date, timeZone);
    const next = daysAfter(date, 1);
    end = { date: next, ms: firstInstant(next, timeZone) };
    days.push({ date, startMs, endMs: end.ms });
  }
  return days;
}

/**
 * Local time with seconds and offset, "2026-07-20T15:10:00+02:00"; parts of a second are dropped.
 * @throws RangeError when the zone does not exist
 */
export function localIso(ms: number, timeZone: string): string {
  const offset = offsetOf(ms, timeZone);
  const ahead = utcIso(Math.abs(offset)).slice(11, 16);
  return `${utcIso(Math.floor(ms) + offset).slice(0, 19)}${offset < 0 ? '-' : '+'}${ahead}`;
}

/** The civil date of an instant. @throws RangeError when the zone does not exist */
export function localDate(ms: number, timeZone: string): CivilDate {
  return dateOfMoment(localIso(ms, timeZone));
}

/**
 * The instant at which a zone's clocks read a time: the first if they read it twice; where they skip it, the time as it
 * would have been without the change.
 * @returns [ms since 1970-01-01 UTC], or null when it is no clock time "YYYY-MM-DDTHH:MM", seconds allowed
 * @throws RangeError when the zone does not exist
 */
export function instantOf(clockTime: ClockTime, timeZone: string): number | null {
  const match = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d))?$/.exec(clockTime);
  if (!match) return null;
  const [, date, hour, minute, second = 0] = match;
  let midnight: number;
  try {
    midnight = utcMidnight(date);
  } catch {
    return null;
  }
  const reading = midnight + (Number(hour) * 3600 + Number(minute) * 60 + Number(second)) * 1000;
  return instantsOf(reading, timeZone).first;
}

/** Clock time of an instant in a zone, "HH:MM": the minute that is running. */
export function clockOf(ms: number, timeZone: string): string {
  return clockOfMoment(localIso(ms, timeZone));
}

/** The same to the nearest so many minutes. */
export function clockNear(ms: number, timeZone: string, minutes = 1): string {
  const step = minutes * MS_PER_MINUTE;
  return clockOf(Math.round(ms / step) * step, timeZone);
}

function firstInstant(date: CivilDate, timeZone: string): number {
  const { first, skipped } = instantsOf(utcMidnight(date), timeZone);
  if (!skipped) return first;
  // Between a day before and this moment the clocks jumped over midnight: the day begins with the jump.
  let before = first - MS_PER_DAY;
  let after = first;
  const offset = offsetOf(after, timeZone);
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (offsetOf(middle, timeZone) === offset) after = middle;
    else before = middle;
  }
  return after;
}

/** @param reading What the clocks read, as if it were UTC. [ms] */
function instantsOf(reading: number, timeZone: string): { first: number; skipped: boolean } {
  const before = offsetOf(reading - MS_PER_DAY, timeZone);
  const after = offsetOf(reading + MS_PER_DAY, timeZone);
  for (const offset of [Math.max(before, after), Math.min(before, after)]) {
    if (before === after || offsetOf(reading - offset, timeZone) === offset)
      return { first: reading - offset, skipped: false };
  }
  return { first: reading - before, skipped: true };
}

const zones = new Map<string, Intl.DateTimeFormat>();

/** How far a zone's clocks are ahead of UTC at an instant. [ms] @throws RangeError when the zone does not exist */
function offsetOf(ms: number, timeZone: string): number {
  let zone = zones.get(timeZone);
  if (!zone) zones.set(timeZone, (zone = new Intl.DateTimeFormat('en', { timeZone, timeZoneName: 'longOffset' })));
  const [, sign = '+', hours = 0, minutes = 0, seconds = 0] =
    /GMT(?:([+-])(\d+):(\d+)(?::(\d+))?)?$/.exec(zone.format(ms)) ?? [];
  return (sign === '-' ? -1000 : 1000) * (Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds));
}
