import { listWords } from '../../plan/list-words.ts';
import { namedInside, nameOf } from '../../plan/names.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Plan } from '../../plan/types.ts';
import { formatArea, type Units } from '../../plan/units.ts';
import { overBudgetNote } from '../../frame/work/note-words.ts';
import { percent } from '../cheaper-first/step.ts';
import { seenWords } from '../sight/words.ts';
import { standWords } from '../words/stands.ts';
import type { ChoiceCost, ComparedChoice, ComparedPlant, PlantStand } from './types.ts';

/** What the yard without any choice is called. */
export const TODAY = 'today';

/** Whose harm counts how much: said first, because it decides what wins. */
export function weightsSentence(plants: readonly ComparedPlant[]): string {
  const weighted = plants.filter(({ worth }) => worth !== DEFAULTS.worth);
  if (weighted.length === 0) return 'Every plant counts alike.';
  const list = weighted.map(({ name, worth }) => `${name} ${worth} times`).join(', ');
  return `What a plant counts: ${list}${weighted.length < plants.length ? ', every other once' : ''}.`;
}

/** Less than this share is hardly anything. Our choice. */
const HARDLY = 0.05;

/** "B (A lower roof) helps most: 74 % less heat damage to the lemon pot, for about 570 EUR. C is free: 29 % less." */
export function bestSentence(plan: Plan, choices: readonly ComparedChoice[], served: readonly string[]): string {
  const ranked = choices.toSorted((a, b) => shareOf(b) - shareOf(a));
  const [best] = ranked;
  if (best === undefined || best.effect === null)
    return 'No plant is harmed today, so no option has anything to spare.';
  if (shareOf(best) < HARDLY) return `None of them helps: the best, ${calledIn(plan, best)}, spares hardly anything.`;
  const free = ranked.find(({ cost }) => isFree(cost));
  const freely =
    free === undefined || free === best || shareOf(free) < HARDLY
      ? ''
      : ` ${calledIn(plan, free)} is free: ${percent(shareOf(free))} less.`;
  const who = listWords(served.map((id) => namedInside(plan, id)));
  const money = isFree(best.cost) ? 'free' : `for ${priceWords(best.cost)}`;
  const does = `helps most: ${percent(shareOf(best))} less heat damage to ${who}, ${money}`;
  return `${calledIn(plan, best)} ${does}.${freely}`;
}

function shareOf({ effect }: ComparedChoice): number {
  return effect?.share ?? 0;
}

function isFree({ total, missing }: ChoiceCost): boolean {
  return total === 0 && missing.length === 0;
}

/** "B (A lower roof and a screen to the west)" */
function calledIn(plan: Plan, { options }: ComparedChoice): string {
  return options.map((id) => optionName(plan, id)).join(' + ');
}

/** "B (A lower roof and a screen to the west)" */
export function optionName(plan: Plan, id: string): string {
  const name = plan.options?.find((option) => option.id === id)?.name?.trim();
  return name ? `${id} (${name})` : id;
}

/** What is to be said of one choice, the most important first. */
export function choiceSentences(plan: Plan, choice: ComparedChoice, served: readonly string[], units: Units): string[] {
  return [
    effectSentence(plan, choice, served),
    ...darkSentences(choice),
    ...seenSentences(plan, choice, units),
    ...costSentences(plan, choice, units),
    ...rankSentences(choice),
  ];
}

function effectSentence(plan: Plan, { name, effect, plants }: ComparedChoice, served: readonly string[]): string {
  if (effect === null) return `${name}: nothing is harmed today, so there is nothing to spare.`;
  const servesHere = (id: string, before: PlantStand, after: PlantStand): boolean =>
    served.includes(id) && Math.abs((before.harm ?? 0) - (after.harm ?? 0)) >= HARDLY * (before.harm ?? 0);
  const told = plants.flatMap(({ id, before, after }) =>
    before !== null && after !== null && (servesHere(id, before, after) || before.verdict !== after.verdict)
      ? [standWords(namedInside(plan, id), before, after)]
      : [],
  );
  const does = `${percent(Math.abs(effect.share))} ${effect.share < 0 ? 'more' : 'less'} heat damage`;
  const off = `± ${percent(effect.pm)}`;
  return `${name}: ${does} (${off})${told.length === 0 ? '' : `; ${told.join('; ')}`}.`;
}

/** Only whom it makes too dark: what is too dark today is no fault of the choice. */
function darkSentences({ plants, newlyTooDark }: ComparedChoice): string[] {
  return plants.flatMap(({ id, name, after }) => {
    if (after === null || !newlyTooDark.includes(id) || after.light.least === null) return [];
    return [
      `Too dark for ${name}: ${percent(after.light.dailyLight / after.light.least)} of the light it needs is left.`,
    ];
  });
}

/** "Too dark today already, whichever you choose: the herbs along the south wall."; "": none is. */
export function darkAnyway(plan: Plan, choices: readonly ComparedChoice[]): string {
  const ids = choices.map(({ tooDark, newlyTooDark }) => tooDark.filter((id) => !newlyTooDark.includes(id)));
  const always = (ids[0] ?? []).filter((id) => ids.every((each) => each.includes(id)));
  return always.length === 0
    ? ''
    : `Too dark today already, whichever you choose: ${listWords(always.map((id) => namedInside(plan, id)))}.`;
}

function seenSentences(plan: Plan, { seenFrom, name }: ComparedChoice, units: Units): string[] {
  return seenFrom.map((seen) =>
    seen.hidden
      ? `${name} is hidden from: ${nameOf(plan, seen.eye)}.`
      : `${name} is seen from: ${seenWords(plan, seen, units)}.`,
  );
}

function costSentences(plan: Plan, { cost, clothArea }: ComparedChoice, units: Units): string[] {
  const missing = cost.missing.length === 0 ? '' : ` Without a price: ${cost.missing.join(', ')}.`;
  if (clothArea === 0)
    return [`Nothing is built of cloth${isFree(cost) ? ', so it costs nothing but the carrying' : ''}.${missing}`];
  const over = overBudgetNote(plan, cost.total);
  return [
    `${formatArea(clothArea, units)} of cloth, ${priceWords(cost)} and ${hoursWords(cost)} of one person’s ` +
      `work.${missing}`,
    ...(over === null ? [] : [over]),
  ];
}

function priceWords({ total, currency }: ChoiceCost): string {
  return total === null ? 'a price that is not known' : `about ${total.toFixed(0)} ${currency}`;
}

/** "8 to 19 h" of work. */
export function hoursWords({ hours: { low, high } }: ChoiceCost): string {
  return low === high ? `${low} h` : `${low} to ${high} h`;
}

function rankSentences({ asGoodAs, beatenBy, name }: ComparedChoice): string[] {
  const alike = asGoodAs.length === 0 ? [] : [`As good as ${asGoodAs.join(', ')}: the difference is within its doubt.`];
  return beatenBy === null ? alike : [...alike, `${beatenBy} does as well or better in everything than ${name}.`];
}
