import type { CivilDate } from '../../plan/types.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { civilDay, clockNear } from '../../sun/days/zone.ts';
import { type Place, type SunAt, sunAtMs } from '../place/sun-at.ts';

/** Sun heights between which a shadow tells north. [°] Lower the shadow is too long and dim, higher too short. */
export const LOWEST_SUN = 5;
export const HIGHEST_SUN = 60;
/** From here on a warning; the best times stay below. [°] */
export const HIGH_SUN = 45;
/** The best times begin here, where a shadow of a pole is under four of its lengths. [°] */
const GOOD_SUN = 15;
/** A clock five minutes out then costs two degrees. [°/min] */
export const FASTEST_SWING = 0.4;

/** A stretch of a day, clock times "HH:MM" of the place's zone. */
export interface ClockWindow {
  readonly from: string;
  readonly to: string;
}

/** Whether a shadow at this moment tells north at all. */
export function tellsNorth(sun: SunAt): boolean {
  return sun.altitude >= LOWEST_SUN && sun.altitude <= HIGHEST_SUN && Math.abs(sun.swing) <= FASTEST_SWING;
}

/**
 * When in a day a pole's shadow tells north best (sun 15 to 45° high, its bearing not running fast), to the minute.
 * Where the sun never stands so, every time at which it tells north at all; none in a polar night.
 */
export function northTimes(place: Place, date: CivilDate): ClockWindow[] {
  const best = windowsOf(
    place,
    date,
    (sun) => sun.altitude >= GOOD_SUN && sun.altitude <= HIGH_SUN && Math.abs(sun.swing) <= FASTEST_SWING,
  );
  return best.length > 0 ? best : windowsOf(place, date, tellsNorth);
}

/** "07:03 to 09:12 or 15:55 to 18:05"; 'another day' where there is none. */
export function windowWords(windows: readonly ClockWindow[]): string {
  return windows.length === 0 ? 'another day' : windows.map(({ from, to }) => `${from} to ${to}`).join(' or ');
}

function windowsOf(place: Place, date: CivilDate, fits: (sun: SunAt) => boolean): ClockWindow[] {
  const { startMs, endMs } = civilDay(date, place.timeZone);
  const windows: ClockWindow[] = [];
  let openedMs: number | null = null;
  for (let ms = startMs; ms <= endMs; ms += MS_PER_MINUTE) {
    const inside = ms < endMs && fits(sunAtMs(ms, place));
    if (inside && openedMs === null) openedMs = ms;
    if (!inside && openedMs !== null) {
      windows.push({ from: clockNear(openedMs, place.timeZone), to: clockNear(ms - MS_PER_MINUTE, place.timeZone) });
      openedMs = null;
    }
  }
  return windows;
}
