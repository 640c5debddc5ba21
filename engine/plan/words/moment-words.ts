import { dayWords } from '../dates/dates.ts';
import { yearOf, clockOfMoment } from '../dates/parts.ts';
import { formatClock } from '../units/clock.ts';
import type { Units } from '../units/units.ts';

/**
 * A local date and time as one says it: "20 July 2026, 15:10", "20 July 2026, 3:10 pm".
 *
 * @param when "2026-07-20T15:10"
 */
export function momentWords(when: string, units: Units): string {
  return `${dayWords(when)} ${yearOf(when)}, ${formatClock(clockOfMoment(when), units)}`;
}
