import { MONTHS } from '../../engine/index.ts';
import type { CivilDate, MonthDay } from '../../engine/index.ts';

/** The day as a strip has room for it: "15 Jan". */
export function shortDayWords(day: MonthDay | CivilDate): string {
  const [month, date] = day.slice(-5).split('-').map(Number);
  return `${date} ${MONTHS[month - 1].slice(0, 3)}`;
}

/** "17:05", or "5:05 pm". @param minutes after midnight */
export function clockWords(minutes: number, clock: '24' | '12'): string {
  const whole = Math.round(minutes) % 1440;
  const hour = Math.floor(whole / 60);
  const rest = String(whole % 60).padStart(2, '0');
  if (clock === '24') return `${String(hour).padStart(2, '0')}:${rest}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${rest} ${hour < 12 ? 'am' : 'pm'}`;
}

const HOURS = { morning: 12, day: 24 } as const;

/**
 * A time as people type it: "17:05", "17.05", "1705", "5 pm", "5:05pm", "noon".
 * @returns minutes after midnight; `null` where it is none
 */
export function readClock(text: string): number | null {
  const typed = text.trim().toLowerCase().replace(/\./g, ':');
  if (typed === 'noon') return 12 * 60;
  if (typed === 'midnight') return 0;
  const found = /^(\d{1,2})(?:[:h]?(\d{2}))?\s*(?:([ap]):?\s?m:?|h)?$/.exec(typed);
  if (!found) return null;
  const [hour, minutes, half] = [Number(found[1]), Number(found[2] ?? 0), found[3]];
  const inHalf = half === undefined || (hour >= 1 && hour <= HOURS.morning);
  if (!inHalf || hour >= HOURS.day || minutes >= 60) return null;
  const hours = half === undefined ? hour : (hour % HOURS.morning) + (half === 'p' ? HOURS.morning : 0);
  return hours * 60 + minutes;
}

/** A full hour as it stands on a dial: "17", or "5". */
export function hourNumber(hour: number, clock: '24' | '12'): number {
  return clock === '24' ? hour : ((hour + 11) % 12) + 1;
}

/** "just now", "3 hours ago", "2 weeks ago". */
export function agoWords(thenMs: number, nowMs: number): string {
  const minutes = Math.max(0, (nowMs - thenMs) / 60_000);
  if (minutes < 2) return 'just now';
  const [amount, unit] =
    minutes < 120
      ? [minutes, 'minute']
      : minutes < 2880
        ? [minutes / 60, 'hour']
        : minutes < 20_160
          ? [minutes / 1440, 'day']
          : [minutes / 10_080, 'week'];
  return `${Math.floor(amount)} ${unit}s ago`;
}
