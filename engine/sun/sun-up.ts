import type { CivilDate, Plan } from '../plan/types.ts';
import type { ClockStretch } from '../plan/units/clock.ts';
import { periodDays } from './days/period-days.ts';
import { clockOf } from './days/zone.ts';
import { sunTimes } from './sun-times.ts';
import type { Weather } from './weather/weather.ts';

/** From sunrise to sunset of a civil day, as an almanac gives them; `null` where the sun does not rise or not set. */
export function sunUp(plan: Plan, date: CivilDate): ClockStretch | null {
  const { riseMs, setMs } = sunTimes(plan, date);
  if (riseMs === null || setMs === null) return null;
  const { timeZone } = plan.site;
  return { from: clockOf(riseMs, timeZone), to: clockOf(setMs, timeZone) };
}

/** The same of the heatwave day; `null` too where the climate names none. */
export function heatwaveUp(plan: Plan, weather?: Weather): ClockStretch | null {
  const days = periodDays(plan, { kind: 'heatwave' }, weather);
  return days.ok ? sunUp(plan, days.value[0].date) : null;
}
