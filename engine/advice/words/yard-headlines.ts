/** What the first two stages open with: at most twenty words that a person would say. */

import type { PlantLoad, Stretch } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { edgeWord, minutesOf } from '../../plan/units/clock.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { spokenClock, spokenCount } from '../../plan/words/spoken.ts';
import { shortEnough } from './headline-length.ts';

/** After so long the hand of a clock stands where it stood. [min] */
const HALF_A_DAY = 720;

/** How the drawing stands. @param guesses how many of its numbers are */
export function drawHeadline(plan: Plan, guesses: number): string {
  if (plan.features.length === 0) return 'Draw the walls that stand round the yard, then the plants.';
  if (guesses === 0) return 'Your yard is drawn, and every number in it is measured.';
  const many = guesses === 1 ? 'one number is' : `${spokenCount(guesses)} numbers are`;
  return `Your yard is drawn; ${many} still guessed.`;
}

/**
 * What the sun does in the yard.
 * @param plants worst first
 * @param sunUp of the heatwave day, where it is known
 */
export function heatHeadline(plan: Plan, plants: readonly PlantLoad[], sunUp: Stretch | null): string {
  const judged = plants.filter(({ verdict }) => verdict !== null);
  if (plants.length === 0) return 'No plant is drawn yet: put one on the plan, or ask about a spot.';
  if (judged.length === 0) return 'Say which plants these are, and each gets a verdict.';
  for (const [verdict, will] of [
    ['will burn', 'will'],
    ['at risk', 'may'],
  ] as const) {
    const [worst, ...rest] = judged.filter((plant) => plant.verdict === verdict);
    if (worst !== undefined) return harmedHeadline(plan, worst, rest, will, sunUp);
  }
  const dark = judged.filter(({ verdict }) => verdict === 'too dark');
  if (dark.length > 0) return fitting((names) => `Nothing burns; too little light for ${names}.`, plan, dark);
  const cooking = judged.filter(({ pot }) => pot?.roots.verdict === 'cooking');
  if (cooking.length > 0)
    return fitting(
      (names) => `No leaf burns here, but roots in pots get so hot that they die: ${names}.`,
      plan,
      cooking,
    );
  return 'The sun harms no plant here, not even on a heatwave day.';
}

function harmedHeadline(
  plan: Plan,
  worst: PlantLoad,
  rest: readonly PlantLoad[],
  will: 'will' | 'may',
  sunUp: Stretch | null,
): string {
  const time = worst.when === null ? '' : stretchWords(worst.when, sunUp);
  const first = capital(`${namedInside(plan, worst.id)} ${will} burn${time}`);
  return rest.length === 0 ? `${first}.` : fitting((names) => `${first}; so ${will} ${names}.`, plan, rest);
}

/** The names where they leave the sentence short enough, else how many. */
function fitting(sentence: (names: string) => string, plan: Plan, plants: readonly PlantLoad[]): string {
  return shortEnough(
    sentence(listWords(plants.map(({ id }) => namedInside(plan, id)))),
    sentence(`${spokenCount(plants.length)} more`),
  );
}

/** " from noon to eight"; of over half a day, which would be taken for an hour or two, " … to eight in the evening". */
function stretchWords({ from, to }: Stretch, sunUp: Stretch | null): string {
  const isHalfADay = minutesOf(to) - minutesOf(from) > HALF_A_DAY && edgeWord(to, sunUp) === null;
  return ` from ${edgeWords(from, sunUp)} to ${edgeWords(to, sunUp)}${isHalfADay ? ' in the evening' : ''}`;
}

function edgeWords(clock: string, sunUp: Stretch | null): string {
  return edgeWord(clock, sunUp) ?? spokenClock(clock);
}
