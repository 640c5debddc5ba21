import type { ClockTime } from '../../engine/index.ts';

/**
 * The minute it is at the site, as a reading notes it: now, or at some moment. The browser's own clock and zones: no
 * library for this alone.
 */
export function siteClock(timeZone: string, at = new Date()): ClockTime {
  // Swedish writes a date and time as ISO 8601 does, with a space between.
  return new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'short' })
    .format(at)
    .replace(' ', 'T');
}
