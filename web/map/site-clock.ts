import { localIso } from '../../engine/index.ts';
import type { ClockTime } from '../../engine/index.ts';

/** The minute it is at the site, as a reading notes it. */
export function siteClock(timeZone: string): ClockTime {
  return localIso(Date.now(), timeZone).slice(0, 16);
}
