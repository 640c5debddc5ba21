import { METRES_PER_FOOT, parseLength } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { siteClock } from '../../common/site-clock.ts';
import { plan, units } from '../../state/yard.ts';

/** A point as typed: "3 2", "3,2" or "3.5; 2.1", right and up in the yard's unit. `null` when it is none. */
export function pointOf(text: string): PlanPoint | null {
  const spaced = text.trim().split(/\s*;\s*|,\s+|\s+/);
  const parts = spaced.length === 1 ? text.trim().split(',') : spaced;
  if (parts.length !== 2) return null;
  const [x, y] = parts.map((part) => parseLength(part, units.value));
  return x === null || y === null ? null : [x, y];
}

/** A point as one types it. */
export function pointText([x, y]: PlanPoint): string {
  const scale = units.value === 'metric' ? 1 : 1 / METRES_PER_FOOT;
  return `${(x * scale).toFixed(2)} ${(y * scale).toFixed(2)}`;
}

/** The date and time now, by the clocks of the yard: "2026-05-02" and "10:00". */
export function siteNow(at = new Date()): { readonly date: string; readonly time: string } {
  const [date, time] = siteClock(plan.value.site.timeZone, at).split('T');
  return { date, time };
}
