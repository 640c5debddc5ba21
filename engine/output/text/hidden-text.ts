import { hiddenHeightWords } from '../../advice/sight/hidden-height.ts';
import type { HiddenHeights } from '../../advice/sight/hidden-heights.ts';
import type { Plan } from '../../plan/types.ts';
import { formatLength, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { table } from './plain-text.ts';

/** From which eyes the yard is seen, how much of it can hide nothing, and whether its cloth shows. */
export function hiddenText(plan: Plan, { reaches, tops }: HiddenHeights, units: Units, columns: number): string {
  if (reaches.length === 0) return 'No onlooker is drawn on this plan: a thing of any height is seen by nobody.\n';
  const eyes = table(
    columns,
    ['seen from', 'ground that hides nothing', 'hidden from unless said'],
    reaches.map(({ id, bare, canBeHiddenFrom }) => [
      nameOf(plan, id),
      formatShare(bare),
      canBeHiddenFrom ? 'yes' : 'no',
    ]),
    [1],
  );
  const cloth = table(
    columns,
    ['cloth', 'stands', 'hidden there up to'],
    tops.map(({ id, height, hidden }) => [
      nameOf(plan, id),
      formatLength(height, units),
      hiddenHeightWords(hidden, units),
    ]),
  );
  return `${eyes}\n${tops.length === 0 ? '' : `\n${cloth}\n`}\nThe height for every cell stands in --json.\n`;
}
