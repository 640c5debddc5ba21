import { overBudgetNote } from '../../frame/work/note-words.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Plan } from '../../plan/types.ts';
import { formatArea, formatTemperatureDifference, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside, nameOf, namesInside } from '../../plan/words/names.ts';
import { seenWords } from '../sight/words.ts';
import { lessWords } from '../words/effect-words.ts';
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

/** Less than this share is hardly anything. Our choice. */
const HARDLY = 0.05;

/** "B (A lower roof) helps most: 74 % less heat damage to the lemon pot, for about 570 EUR. C is free: 29 % less." */
export function bestSentence(plan: Plan, choices: readonly ComparedChoice[], served: readonly string[]): string {
  const ranked = choices.toSorted((a, b) => shareOf(b) - shareOf(a));
  const [best] = ranked;
  if (best === undefined || best.sparedShare === null)
    return 'No plant is harmed today, so no option has anything to spare.';
  if (best.together === null) return 'None of them helps: no plant gets less heat damage.';
  if (shareOf(best) < HARDLY) return `None of them helps: the best, ${calledIn(plan, best)}, spares hardly anything.`;
  const free = ranked.find(({ cost }) => isFree(cost));
  const freely =
    free === undefined || free === best || shareOf(free) < HARDLY
      ? ''
      : ` ${calledIn(plan, free)} is free: ` +
        `${served.length > 1 ? lessWords(plan, free.effect.plants) : `${formatShare(free.effect.share)} less`}.`;
  const money = isFree(best.cost) ? 'free' : `for ${priceWords(best.cost)}`;
  const does = `helps most${served.length > 1 ? ' in all' : ''}: ${lessWords(plan, best.effect.plants)}, ${money}`;
  return [`${calledIn(plan, best)} ${does}.${freely}`, ...best.inTheWay].join(' ');
}

function shareOf({ together }: ComparedChoice): number {
  return together?.share ?? 0;
}

/** Whose damage a comparison is told of; of several plants the sum by which options are ranked has its own words. */
export function servedWords(plan: Plan, served: readonly string[]): string {
  const whom = namesInside(plan, served);
  if (served.length === 0) return '';
  return served.length === 1
    ? `Less heat damage: of today’s to ${whom}.`
    : `In all: of today’s heat damage to ${whom} together.`;
}

/** What a choice does to whom in a cell of a table: "37 % blueberry pot, 23 % raspberries"; of one plant its share. */
export function effectCell({ effect, together, plants }: ComparedChoice, served: readonly string[]): string {
  if (together === null) return '–';
  if (served.length === 1) return formatShare(together.share);
  const named = (id: string): string => plants.find((plant) => plant.id === id)?.name ?? id;
  return effect.plants.map(({ id, share }) => `${named(id)} ${formatShare(share)}`).join(', ') || 'nobody';
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

/** What is to be said of one choice beside its numbers, the most important first. */
export function choiceSentences(plan: Plan, choice: ComparedChoice, units: Units): string[] {
  return [
    ...choice.inTheWay,
    ...worseSentences(plan, choice),
    ...darkSentences(choice),
    ...closeSentences(plan, choice, units),
    ...seenSentences(plan, choice, units),
    ...costSentences(plan, choice, units),
    ...rankSentences(choice),
  ];
}

/** Whom it harms. */
function worseSentences(plan: Plan, { plants }: ComparedChoice): string[] {
  const worse = plants.flatMap(({ id, before, after }) => {
    const share = before?.harm && after ? 1 - (after.harm ?? 0) / before.harm : 0;
    return share <= -HARDLY ? [{ id, share }] : [];
  });
  return worse.length === 0 ? [] : [`But ${lessWords(plan, worse)}.`];
}

/** Only whom it makes too dark: what is too dark today is no fault of the choice. */
function darkSentences({ plants, newlyTooDark }: ComparedChoice): string[] {
  return plants.flatMap(({ id, name, after }) => {
    if (after === null || !newlyTooDark.includes(id) || after.light.least === null) return [];
    const who = agreeingWith(name);
    return [
      `Too dark for ${name}: ${formatShare(after.light.dailyLight / after.light.least)} of the light ` +
        `${who.they} ${who.does('need')} is left.`,
    ];
  });
}

/** Of whom the choice changes anything. */
function closeSentences(plan: Plan, { plants }: ComparedChoice, units: Units): string[] {
  const close = plants.filter(
    ({ before, after }) => after?.close === true && (before?.verdict !== after.verdict || before.harm !== after.harm),
  );
  if (close.length === 0) return [];
  const whose = listWords(close.map(({ id }) => namedInside(plan, id)));
  return [`A close call: ${formatTemperatureDifference(2, units)} more or less would change what is said of ${whose}.`];
}

/** "Too dark today already, whichever you choose: the herbs along the south wall."; "": none is. */
export function darkAnyway(plan: Plan, choices: readonly ComparedChoice[]): string {
  const ids = choices.map(({ tooDark, newlyTooDark }) => tooDark.filter((id) => !newlyTooDark.includes(id)));
  const always = (ids[0] ?? []).filter((id) => ids.every((each) => each.includes(id)));
  return always.length === 0 ? '' : `Too dark today already, whichever you choose: ${namesInside(plan, always)}.`;
}

function seenSentences(plan: Plan, { seenFrom }: ComparedChoice, units: Units): string[] {
  const [hidden, seen] = [true, false].map((is) => seenFrom.filter((sight) => sight.hidden === is));
  return [
    ...(hidden.length === 0 ? [] : [`Hidden from: ${hidden.map(({ eye }) => nameOf(plan, eye)).join('; ')}.`]),
    ...(seen.length === 0 ? [] : [`Seen from: ${seen.map((sight) => seenWords(plan, sight, units)).join('; ')}.`]),
  ];
}

function costSentences(plan: Plan, { cost, clothArea }: ComparedChoice, units: Units): string[] {
  const missing = cost.missing.length === 0 ? '' : ` Without a price: ${cost.missing.join(', ')}.`;
  if (clothArea === 0)
    return [`Nothing is built of cloth${isFree(cost) ? ', so it costs nothing but the carrying' : ''}.${missing}`];
  const over = overBudgetNote(plan, cost.total);
  return [`${formatArea(clothArea, units)} of cloth, ${priceWords(cost)}.${missing}`, ...(over === null ? [] : [over])];
}

function priceWords({ total, currency }: ChoiceCost): string {
  return total === null ? 'a price that is not known' : `about ${total.toFixed(0)} ${currency}`;
}

function rankSentences({ asGoodAs, beatenBy }: ComparedChoice): string[] {
  const alike = asGoodAs.length === 0 ? [] : [`As good as ${asGoodAs.join(', ')}: the difference is within its doubt.`];
  return beatenBy === null ? alike : [...alike, `In all, ${beatenBy} does as well or better for no more money.`];
}
