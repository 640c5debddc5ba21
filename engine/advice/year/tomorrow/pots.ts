/** Pots whose roots would die on a hot day: what cools them, done before the sun is on them. */
import { HELP_WORDS, WORTH_DOING } from '../../../load/pot/pot-words.ts';
import { COOKING_ROOTS } from '../../../load/pot/root-zone.ts';
import type { RootHelpId, Roots } from '../../../load/types.ts';
import { capital } from '../../../plan/list-words.ts';
import type { Plan } from '../../../plan/types.ts';
import { formatTemperature, formatTemperatureDifference, type Units } from '../../../plan/units.ts';
import { namesInside } from '../words.ts';
import type { TomorrowPlant, TomorrowTask } from './types.ts';

interface Cooking {
  readonly plant: string;
  readonly roots: Roots;
  readonly help: RootHelpId;
}

/** One line a help, for all the pots that want it. @param plants Worst first */
export function potTasks(plan: Plan, plants: readonly TomorrowPlant[], units: Units): TomorrowTask[] {
  const cooking = plants.flatMap(({ plant, roots }): Cooking[] =>
    roots?.verdict === 'cooking' && roots.help !== null && roots.help.cooler >= WORTH_DOING
      ? [{ plant, roots, help: roots.help.id }]
      : [],
  );
  return [...new Set(cooking.map(({ help }) => help))].map((help) => {
    const pots = cooking.filter((pot) => pot.help === help).toSorted((a, b) => b.roots.warmest - a.roots.warmest);
    return {
      at: 'the evening before',
      plants: pots.map(({ plant }) => plant),
      advice: { basis: 'our estimate', text: coolingWords(plan, help, pots, units) },
    };
  });
}

function coolingWords(plan: Plan, help: RootHelpId, pots: readonly Cooking[], units: Units): string {
  const [{ roots }] = pots;
  const names = namesInside(
    plan,
    pots.map(({ plant }) => plant),
  );
  const pm = formatTemperatureDifference(roots.spread, units).split(' ')[0];
  return (
    `${capital(HELP_WORDS[help])}, where it stays in the sun: ${names}. Roots there reach ` +
    `${pots.length > 1 ? 'up to' : 'about'} ${formatTemperature(roots.warmest, units)} (± ${pm}) and die from about ` +
    `${formatTemperature(COOKING_ROOTS, units)}; it takes off about ` +
    `${formatTemperatureDifference(roots.help?.cooler ?? 0, units)}.`
  );
}
