import type { Units } from './units.ts';

/**
 * A clock time as it is said: `13:30`, or `1:30 pm` where units are imperial; near the sun's rise or set as that.
 * @param clock "HH:MM"
 * @param sunUp of its day, where it is to be told so
 */
export function formatClock(clock: string, units: Units, sunUp: ClockStretch | null = null): string {
  const edge = edgeWord(clock, sunUp);
  if (edge !== null) return edge;
  if (units === 'metric') return clock;
  const [hour, minute] = clock.split(':');
  if (minute === '00' && (hour === '12' || hour === '00')) return hour === '12' ? 'noon' : 'midnight';
  const twelve = `${Number(hour) % 12 || 12}${minute === '00' ? '' : `:${minute}`}`;
  return `${twelve} ${Number(hour) < 12 ? 'am' : 'pm'}`;
}

/** Minutes since midnight of a clock time. @param clock "HH:MM" */
export function minutesOf(clock: string): number {
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
}

/** The other way round; past midnight on into the next day. @param minutes whole, 0 or more */
export function clockAt(minutes: number): string {
  return [Math.floor(minutes / 60) % 24, minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
}

/** From one clock time to another, each "HH:MM". */
export interface ClockStretch {
  readonly from: string;
  readonly to: string;
}

/** So near to the sun's rise or set a time is told as that. [minutes] */
const AT_THE_EDGE = 20;

/** "sunrise" or "sunset" of a clock time near either; `null` of another. @param sunUp of its day, where it is known */
export function edgeWord(clock: string, sunUp: ClockStretch | null): 'sunrise' | 'sunset' | null {
  if (sunUp === null) return null;
  const isNear = (edge: string): boolean => Math.abs(minutesOf(clock) - minutesOf(edge)) <= AT_THE_EDGE;
  return isNear(sunUp.from) ? 'sunrise' : isNear(sunUp.to) ? 'sunset' : null;
}

/**
 * From one clock time to another: `13:30 to 20:40`, `1:30 to 8:40 pm`, `13:30 to sunset`.
 * @param sunUp of their day, where it is known
 */
export function formatStretch({ from, to }: ClockStretch, units: Units, sunUp: ClockStretch | null = null): string {
  const [first, last] = [from, to].map((clock) => formatClock(clock, units, sunUp));
  if (first === last) return first;
  const half = / [ap]m$/.exec(last)?.[0] ?? '';
  return `${half !== '' && first.endsWith(half) ? first.slice(0, -half.length) : first} to ${last}`;
}
