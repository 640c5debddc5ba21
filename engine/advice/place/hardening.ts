/**
 * Getting a plant used to more sun: over 10 to 14 days, morning sun first, at most an hour more a day, cloth taken off
 * by 20 points every four days [common practice and extension pages, from memory; seedlings "a week or so", UF/IFAS and
 * UA Maricopa, seen].
 */

import type { CivilDate } from '../../plan/types.ts';
import { daysAfter } from '../../sun/days/calendar.ts';

const FEWEST_DAYS = 10;
const MOST_DAYS = 14;
/** So much more sun a day, and no more, needs no hardening [h]. */
const NO_STEP = 1;
/** Nor does this share more of what it has: nobody hangs cloth for ten days for that. Our choice. */
const NO_STEP_SHARE = 0.25;
/** Cloth for a plant that comes from shade, percent of light blocked, and when each is taken off. */
const CLOTHS = [60, 40, 20, 0] as const;

interface HardeningDay {
  /** 1 on the day of the move. */
  readonly day: number;
  /** `null` where the day of the move is not known. */
  readonly date: CivilDate | null;
  /** Direct sun, the morning's first. [h] */
  readonly sunHours: number;
  /** Instead, where it cannot be carried back: cloth over it all day, share of light blocked. [%] */
  readonly cloth: number;
}

export interface Hardening {
  readonly days: readonly HardeningDay[];
  readonly notes: readonly string[];
}

/**
 * The days of a move into more sun; `null` where it gets hardly more.
 * @param from direct sun a day where it stands [h] @param to where it goes [h] @param start day of the move
 */
export function hardeningOf(from: number, to: number, start: CivilDate | null = null): Hardening | null {
  const more = to - from;
  if (more <= Math.max(NO_STEP, NO_STEP_SHARE * from)) return null;
  const length = Math.min(MOST_DAYS, Math.max(FEWEST_DAYS, Math.ceil(more)));
  const days = Array.from({ length }, (_, n): HardeningDay => ({
    day: n + 1,
    date: start === null ? null : daysAfter(start, n),
    sunHours: from + (more * (n + 1)) / length,
    cloth: CLOTHS[Math.min(CLOTHS.length - 1, Math.floor((n * CLOTHS.length) / length))],
  }));
  return {
    days,
    notes: [
      'Morning sun first; water the day before each step.',
      'No move in the three days before a heatwave, or during one. A move from shade into full sun in high ' +
        'summer is better left for autumn.',
      'If leaves bleach, go back one step. Old leaves do not get used to it fully; new ones do.',
    ],
  };
}
