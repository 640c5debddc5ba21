/** How far clocks stand from the sun's own time. */

import { MS_PER_DAY } from '../units/per-unit.ts';

/**
 * Clocks this far from the sun's own time stand nowhere on land: western China, by Beijing's time, is 3.1 h off. [h]
 */
const MOST_OFF_SUN = 3.5;
const DEGREES_AN_HOUR = 15;

/** Whether clocks so far ahead of UTC can be those of a place. @param utcOffset in standard time [h] */
export function canBeAt(longitude: number, utcOffset: number): boolean {
  const off = utcOffset - sunOffset(longitude);
  return Math.abs(off - 24 * Math.round(off / 24)) <= MOST_OFF_SUN;
}

/** How far the sun's own time at a longitude is ahead of UTC. [h] */
export function sunOffset(longitude: number): number {
  return longitude / DEGREES_AN_HOUR;
}

const YEAR_DAYS = 365.2425;
/** Days of mid-January and mid-July since New Year's. */
const MIDS = [14, 195];

/**
 * How far the clocks of a zone are ahead of UTC in standard time, the smaller of winter's and summer's; past 12 h a day
 * less. [h]
 */
export function standardOffset(timeZone: string, year: number): number {
  const newYear = Math.round((year - 1970) * YEAR_DAYS);
  return Math.min(...MIDS.map((day) => hourAtNoon(newYear + day, timeZone) - 12));
}

/** What clocks show when it is noon in Greenwich. @param day since 1970-01-01 @returns [h] */
function hourAtNoon(day: number, timeZone: string): number {
  const clock = new Intl.DateTimeFormat('en', { timeZone, hourCycle: 'h23', hour: 'numeric', minute: 'numeric' });
  const shown = clock.formatToParts((day + 0.5) * MS_PER_DAY);
  const part = (wanted: string): number => Number(shown.find(({ type }) => type === wanted)?.value);
  return part('hour') + part('minute') / 60;
}
