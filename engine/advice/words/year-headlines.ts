/** The one sentence with which the year opens, and the one with which a look back does. */

import { dayWords } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { namedInside } from '../../plan/words/names.ts';
import type { ReviewResult } from '../review/types.ts';
import type { SeasonResult } from '../year/season/types.ts';
import { shortEnough } from './headline-length.ts';

/** When heat, cloth and frost come, by their first days. */
export function seasonHeadline({ events, cloth: cloths, frost, water }: SeasonResult): string {
  const first = (kind: string) => events.find((event) => event.kind === kind);
  const [heat, up] = [first('heat'), first('cloth-up')];
  const cool = water.length === 0 ? 'no plant to look after yet' : 'no heat that harms';
  const hot = heat === undefined ? cool : `heat from ${dayWords(heat.from)} to ${dayWords(heat.to)}`;
  const { earlierUnknown } = cloths.find(({ canopy }) => up?.features[0] === canopy) ?? {};
  const cloth = up === undefined ? '' : `, cloth up ${earlierUnknown ? 'by' : 'about'} ${dayWords(up.from)}`;
  const cold = frost.window === null ? '' : `, frost from ${dayWords(frost.window.first)}`;
  return shortEnough(capital(`${hot}${cloth}${cold}.`), capital(`${hot}${cold}.`));
}

/** Whether it worked, by what has been noted so far. */
export function reviewHeadline(plan: Plan, { years, damage }: Pick<ReviewResult, 'years' | 'damage'>): string {
  const [first] = years;
  if (first !== undefined) return first.headline;
  const [noted] = damage;
  return noted === undefined
    ? 'Nothing to hold against each other yet: note the damage of each summer, also where there is none.'
    : shortEnough(
        `One summer’s damage is noted: score ${namedInside(plan, noted.plant)} in another too, and it can be told.`,
        'One summer’s damage is noted: score the same plants in another too.',
      );
}
