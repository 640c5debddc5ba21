/** Clock times, shares and counts as people say them, for the one sentence a page opens with. */

import { minutesOf } from '../units/clock.ts';

const NUMBERS = [
  'twelve',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
] as const;

/** "half past one", "noon": to the half hour, as near as a sun on a leaf is known. @param clock "HH:MM" */
export function spokenClock(clock: string): string {
  const halfHours = Math.round(minutesOf(clock) / 30) % 48;
  if (halfHours === 0) return 'midnight';
  if (halfHours === 24) return 'noon';
  if (halfHours === 1) return 'half past midnight';
  const hour = NUMBERS[Math.floor(halfHours / 2) % 12];
  return halfHours % 2 === 1 ? `half past ${hour}` : hour;
}

const PARTS = [
  [1, 'next to no heat damage'],
  [3 / 4, 'three quarters less heat damage'],
  [2 / 3, 'two thirds less heat damage'],
  [1 / 2, 'half the heat damage'],
  [1 / 3, 'a third less heat damage'],
  [1 / 4, 'a quarter less heat damage'],
] as const;
/** A share this near to a part is told as it. */
const NEAR = 0.05;

/** "two thirds less heat damage": what is spared, as one would say it, else to the tenth. @param spared 0 to 1 */
export function lessDamage(spared: number): string {
  const [part, words] = PARTS.toSorted(([a], [b]) => Math.abs(spared - a) - Math.abs(spared - b))[0];
  return Math.abs(spared - part) <= NEAR
    ? words
    : `about ${Math.max(5, Math.round(spared * 10) * 10)} % less heat damage`;
}

/** "four": small numbers as words, others as figures. */
export function spokenCount(count: number): string {
  return count > 0 && count < NUMBERS.length ? NUMBERS[count] : count === 12 ? 'twelve' : String(count);
}
