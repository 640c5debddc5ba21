import { nameOf } from '../../plan/names.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Plan } from '../../plan/types.ts';
import { formatArea, formatPerArea, type Units } from '../../plan/units.ts';
import { overBudgetNote } from '../../frame/work/note-words.ts';
import { seenWords } from '../sight/words.ts';
import type { ChoiceCost, ComparedChoice, ComparedPlant } from './types.ts';

/** What the yard without any choice is called. */
export const TODAY = 'today';

/** Whose harm counts how much: said first, because it decides what wins. */
export function weightsSentence(plants: readonly ComparedPlant[]): string {
  const weighted = plants.filter(({ worth }) => worth !== DEFAULTS.worth);
  if (weighted.length === 0) return 'Every plant counts alike.';
  const list = weighted.map(({ name, worth }) => `${name} ${worth} times`).join(', ');
  return `What a plant counts: ${list}${weighted.length < plants.length ? ', every other once' : ''}.`;
}

/** What is to be said of one choice, the most important first. */
export function choiceSentences(plan: Plan, choice: ComparedChoice, units: Units): string[] {
  return [
    sparedSentence(choice),
    ...darkSentences(choice),
    ...seenSentences(plan, choice, units),
    ...costSentences(plan, choice, units),
    ...rankSentences(choice),
  ];
}

function sparedSentence({ name, spared, sparedShare, sparedPm, plants }: ComparedChoice): string {
  if (sparedShare === null) return `${name}: nothing is harmed today, so there is nothing to spare.`;
  const changed = plants.filter(
    ({ before, after }) => before !== null && after !== null && before.verdict !== after.verdict,
  );
  const verdicts = changed
    .map(({ name: plant, before, after }) => `${plant} from ${before?.verdict} to ${after?.verdict}`)
    .join(', ');
  const does = spared >= 0 ? `spares ${percent(sparedShare)} of the harm` : `adds ${percent(-sparedShare)} to the harm`;
  return (
    `${name} ${does} (${Math.abs(spared).toFixed(1)} ± ${sparedPm.toFixed(1)} K·h a ` +
    `day)${verdicts === '' ? '; no verdict changes' : `; ${verdicts}`}.`
  );
}

function darkSentences({ plants, tooDark, newlyTooDark }: ComparedChoice): string[] {
  return plants.flatMap(({ id, name, after }) => {
    if (after === null || !tooDark.includes(id) || after.light.least === null) return [];
    return [
      `Too dark for ${name}${newlyTooDark.includes(id) ? '' : ', as it is today'}: ` +
        `${after.light.dailyLight.toFixed(1)} mol/m² of light a day is left, and it needs ${after.light.least}.`,
    ];
  });
}

function seenSentences(plan: Plan, { seenFrom, name }: ComparedChoice, units: Units): string[] {
  return seenFrom.map((seen) =>
    seen.hidden
      ? `${name} is hidden from: ${nameOf(plan, seen.eye)}.`
      : `${name} is seen from: ${seenWords(plan, seen, units)}.`,
  );
}

function costSentences(plan: Plan, { cost, clothArea, payoff }: ComparedChoice, units: Units): string[] {
  const missing = cost.missing.length === 0 ? '' : ` Without a price: ${cost.missing.join(', ')}.`;
  if (clothArea === 0)
    return [
      `Nothing is built of cloth${
        cost.missing.length === 0 ? ', so it costs nothing but the ' + 'carrying' : ''
      }.${missing}`,
    ];
  const money = cost.total === null ? 'its price is not known' : `about ${cost.total.toFixed(0)} ${cost.currency}`;
  const each =
    payoff.perSquareMetre === null
      ? ''
      : `; a day it spares ${formatPerArea(payoff.perSquareMetre, 'K·h', units)} of cloth`;
  const over = overBudgetNote(plan, cost.total);
  return [
    `${formatArea(clothArea, units)} of cloth, ${money} and ${hoursWords(cost)} of one person’s work${each}.${missing}`,
    ...(over === null ? [] : [over]),
  ];
}

/** "8 to 19 h" of work. */
export function hoursWords({ hours: { low, high } }: ChoiceCost): string {
  return low === high ? `${low} h` : `${low} to ${high} h`;
}

function rankSentences({ asGoodAs, beatenBy, name }: ComparedChoice): string[] {
  const alike = asGoodAs.length === 0 ? [] : [`As good as ${asGoodAs.join(', ')}: the difference is within its doubt.`];
  return beatenBy === null ? alike : [...alike, `${beatenBy} does as well or better in everything than ${name}.`];
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
