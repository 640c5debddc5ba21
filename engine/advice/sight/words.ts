import type { Plan } from '../../plan/types.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import type { SeenFrom } from './seen.ts';

/** "People on the lane, along 2.0 m of 26.0 m, at most the uppermost 0.30 m of it" */
export function seenWords(plan: Plan, { eye, shows, from, line }: SeenFrom, units: Units): string {
  const length = (metres: number) => formatLength(metres, units);
  const along = line > 0 && from < line - 0.05 ? `, along ${length(from)} of ${length(line)}` : '';
  return `${nameOf(plan, eye)}${along}, at most the uppermost ${length(shows)} of it`;
}
