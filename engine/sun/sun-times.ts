import type { CivilDate, Plan } from '../plan/types.ts';
import { civilDay } from './days/zone.ts';
import { sunEvents, sunPosition, type SunEvents, type SunPosition } from './position.ts';

export interface SunTimes extends SunEvents {
  /** Where the sun stands at true solar noon: its highest of the day. */
  readonly highest: SunPosition;
}

/**
 * Sunrise, true solar noon and sunset of a civil day at a plan's site, as an almanac gives them.
 * @throws RangeError when the date or the site's time zone does not exist
 */
export function sunTimes(plan: Plan, date: CivilDate): SunTimes {
  const { latitude, longitude, timeZone } = plan.site;
  const { startMs, endMs } = civilDay(date, timeZone);
  const events = sunEvents((startMs + endMs) / 2, latitude, longitude);
  return { ...events, highest: sunPosition(events.noonMs, latitude, longitude) };
}
