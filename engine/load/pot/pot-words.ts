import { formatClock } from '../../plan/units/clock.ts';
import { formatTemperature, formatTemperatureDifference, formatPlusMinus } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import type { RootHelpId, Roots } from '../types.ts';
import { COOKING_ROOTS, HOT_ROOTS } from './root-zone.ts';

/** Each help as one would say it to do. */
export const HELP_WORDS: Readonly<Record<RootHelpId, { readonly one: string; readonly many: string }>> = {
  white: { one: 'wrap the pot in white', many: 'wrap the pots in white' },
  double: { one: 'stand it in a wider pot with air between', many: 'stand each in a wider pot with air between' },
  group: { one: 'set other pots close to it', many: 'set the pots close together' },
  shade: { one: 'shade the pot itself with a board or cloth', many: 'shade the pots themselves with boards or cloth' },
};

/** A help that cools by less than this is not worth the work. [K] */
export const WORTH_DOING = 1;

/** "about 49 °C (± 4) on the west side about 17:10" */
export function rootsAbout({ warmest, spread, side, when }: Roots, units: Units): string {
  const place = `on the ${compassWord(side)} side about ${formatClock(when, units)}`;
  return `about ${formatTemperature(warmest, units)} (${formatPlusMinus(spread, units)}) ${place}`;
}

/**
 * What is said of a pot's roots where they are not fine; '' where they are. Begins with a space.
 * @param name of what grows in it
 */
export function rootWords(roots: Roots, units: Units, name: string): string {
  const { verdict, help } = roots;
  if (verdict === 'fine') return '';
  const does =
    verdict === 'cooking'
      ? `and die from about ${formatTemperature(COOKING_ROOTS, units)}`
      : `and stop growing from about ${formatTemperature(HOT_ROOTS, units)}`;
  const cure =
    help === null || help.cooler < WORTH_DOING
      ? 'it is the air that does it; keep the soil moist'
      : `${HELP_WORDS[help.id].one}, about ${formatTemperatureDifference(help.cooler, units)} less`;
  return ` In the pot ${agreeingWith(name).their} roots reach ${rootsAbout(roots, units)}, ${does}: ${cure}.`;
}
