/** Pots whose roots would die in the heat: which help each wants, and how to say so. */

import { HELP_WORDS, WORTH_DOING } from '../../load/pot/pot-words.ts';
import { COOKING_ROOTS } from '../../load/pot/root-zone.ts';
import type { RootHelpId, Roots } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { formatTemperature, formatTemperatureDifference, formatPlusMinus } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { nameOf, namesInside } from '../../plan/words/names.ts';

export interface PlantRoots {
  readonly plant: string;
  /** `null`: it stands in the ground. */
  readonly roots: Roots | null;
}

/** Pots that want the same help. */
export interface PotsToCool {
  readonly help: RootHelpId;
  /** Hottest first. */
  readonly plants: readonly string[];
  /** Of the hottest. */
  readonly roots: Roots;
  /** What the help takes off those. [K] */
  readonly cooler: number;
}

/** One entry a help that is worth it, for all the pots whose roots would die without. */
export function potsToCool(pots: readonly PlantRoots[]): PotsToCool[] {
  const cooking = pots.flatMap(({ plant, roots }) =>
    roots?.verdict === 'cooking' && roots.help !== null && roots.help.cooler >= WORTH_DOING
      ? [{ plant, roots, help: roots.help }]
      : [],
  );
  return [...new Set(cooking.map(({ help }) => help.id))].map((id) => {
    const alike = cooking.filter(({ help }) => help.id === id).toSorted((a, b) => b.roots.warmest - a.roots.warmest);
    const [{ roots, help }] = alike;
    return { help: id, plants: alike.map(({ plant }) => plant), roots, cooler: help.cooler };
  });
}

/** "Wrap the pot in white: the lemon pot" */
export function coolWords(plan: Plan, { help, plants }: PotsToCool): string {
  return `${capital(plants.length > 1 ? HELP_WORDS[help].many : HELP_WORDS[help].one)}: ${namesInside(plan, plants)}`;
}

/** "Its roots reach about 55 °C (± 4) and die from about 46 °C; it takes off about 9 °C." */
export function rootsReachWords(plan: Plan, { plants, roots, cooler }: PotsToCool, units: Units): string {
  const { their } = agreeingWith(...plants.map((id) => nameOf(plan, id)));
  const whose = plants.length > 1 ? 'Roots reach up to' : `${capital(their)} roots reach about`;
  const warmest = formatTemperature(roots.warmest, units);
  const dying = formatTemperature(COOKING_ROOTS, units);
  return (
    `${whose} ${warmest} (${formatPlusMinus(roots.spread, units)}) and die from about ${dying}; it takes off about ` +
    `${formatTemperatureDifference(cooler, units)}.`
  );
}
