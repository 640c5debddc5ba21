/** How long the cloth of a summer really hung, as the diary has it. */

import { dayWords } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import { namedInside } from '../../plan/words/names.ts';
import { seasonYearOf } from '../year/span.ts';

/**
 * A sentence for each roof or screen of which the diary says when it went up or came down in a summer, and whether the
 * damage was there before.
 * @param year in which the summer begins
 */
export function clothNoted(plan: Plan, year: number): string[] {
  const notes = (plan.journal ?? [])
    .filter(({ date }) => seasonYearOf(plan, date) === year)
    .toSorted((a, b) => a.date.localeCompare(b.date));
  const cloths = new Set(
    notes.flatMap(({ what, feature }) =>
      feature !== undefined && (what === 'cloth-up' || what === 'cloth-down') ? [feature] : [],
    ),
  );
  const harmed = notes.find(({ what, amount = 0 }) => what === 'damage' && amount > 0)?.date;
  return [...cloths].map((id) => {
    const first = (what: string, from = ''): string | undefined =>
      notes.find((note) => note.what === what && note.feature === id && note.date >= from)?.date;
    const up = first('cloth-up');
    const down = first('cloth-down', up);
    const days = [
      ...(up === undefined ? [] : [`from ${dayWords(up)}`]),
      ...(down === undefined ? [] : [`${up === undefined ? 'until' : 'to'} ${dayWords(down)}`]),
    ].join(' ');
    const before = up !== undefined && harmed !== undefined && harmed < up ? '; damage was noted before that' : '';
    return `By the diary ${namedInside(plan, id)} had its cloth ${days}${before}.`;
  });
}
