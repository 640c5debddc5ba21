/** What `site` says: the advice first, a table of the cloth, what is free, and with `--sources` how it was sought. */

import { type LadderStep, worthMoving } from '../../advice/cheaper-first/step.ts';
import {
  addedWords,
  adviceSentence,
  freeWords,
  isForTheSame,
  moneyWords,
  pricedWords,
  roleWords,
} from '../../advice/site/advice-words.ts';
import type { LivingScreen } from '../../advice/site/living-screen.ts';
import type { MoreForms } from '../../advice/site/more-forms.ts';
import type { SiteOption, SiteResult } from '../../advice/site/types.ts';
import { countingWords, standsUnder, titleOf } from '../../advice/site/words.ts';
import { heatwaveWords } from '../../advice/words/stands.ts';
import { isFloor } from '../../frame/strength/grounds.ts';
import { cautionsFor, SHORT_CAUTIONS } from '../../frame/work/cautions.ts';
import type { Plan } from '../../plan/types.ts';
import { formatArea, formatLength, formatPerArea, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { namesInside } from '../../plan/words/names.ts';
import { table, wrapped } from './plain-text.ts';

/** Of which yard it tells, in what units, and how wide a line may be. [characters] */
export interface SitePage {
  readonly plan: Plan;
  readonly units: Units;
  readonly columns: number;
}

/** Tables are no wider. [characters] */
const WIDEST = 100;

/** The advice in a sentence, what is free, then cloth and what else may be. @param free the cheaper cures */
export function siteText(result: SiteResult, free: readonly LadderStep[], more: MoreForms, on: SitePage): string {
  const { plan, units } = on;
  const columns = Math.min(on.columns, WIDEST);
  const line = (text: string) => wrapped(text, columns);
  const { cost, gust, ...footing } = pricedWords(result, units);
  const blocks = [
    line(adviceSentence(plan, result, free)),
    ...(free.length > 0
      ? [`First, without cloth\n${free.map((step) => line(`- ${freeWords(step)}`)).join('\n')}`]
      : []),
  ];
  if (result.options.length > 0) {
    blocks.push(
      `Then cloth\n${answersTable(result, columns, units)}\n${line(servedWords(plan, result))}`,
      result.options.map((option, k) => optionText(option, k, result.served.length > 1, plan, columns)).join('\n'),
      [...(cost === '' ? [] : [cost]), footing.ground, gust].map(line).join('\n'),
    );
  }
  blocks.push(...moreBlocks(more, columns));
  const told = [
    ...countingWords(plan, result, helpedBeside(free, more)),
    ...result.rules.filter(({ rule }) => rule !== 'density').map(({ sentence }) => sentence),
    ...(result.options.length > 0 ? result.unhidden : []),
  ];
  if (told.length > 0) blocks.push(told.map(line).join('\n'));
  const care = [
    ...(result.options.length > 0 ? [SHORT_CAUTIONS.wind(units)] : []),
    ...(result.options.length > 0 && isFloor(result.pricedFor.ground) ? [SHORT_CAUTIONS.floor] : []),
    ...(result.options.length + free.length > 0 ? [SHORT_CAUTIONS.heat] : []),
    ...(free.some(({ id }) => id === 'clay') ? [SHORT_CAUTIONS.spray] : []),
    ...(plan.cautions ?? []).map(({ text }) => text),
  ];
  if (care.length > 0) blocks.push(line(care.join(' ')));
  return `${blocks.join('\n\n')}\n`;
}

/** Answers that are no single cloth. */
function moreBlocks({ together, living }: MoreForms, columns: number): string[] {
  return [
    ...(together === null ? [] : [wrapped(together.sentence, columns)]),
    ...(living === null ? [] : [livingBlock(living, columns)]),
  ];
}

function livingBlock({ sentence, climbers, price, notes }: LivingScreen, columns: number): string {
  const rows = climbers.map(({ name, summers }) => [name, ...summers.map(({ effect }) => formatShare(effect))]);
  const money =
    price === null ? '' : ` Roughly ${price.from} to ${price.to} ${price.currency}, trellis, posts and plants.`;
  return [
    wrapped(`${sentence}${money}`, columns),
    table(columns, ['less damage, summer by summer', '1st', '2nd', '3rd', '4th'], rows, [1, 2, 3, 4]),
    ...notes.map((note) => wrapped(note, columns)),
  ].join('\n');
}

/** What each climber takes of the light and drinks, and where that is from. */
function livingSources({ climbers, sources }: LivingScreen): string[] {
  const each = climbers.map(
    ({ name, leaves, water, summers }) =>
      `${name}: ${leaves}; ${water} litres a week for each plant; it stops ` +
      `${summers.map(({ stops }) => formatShare(stops)).join(', ')} of the light, summer by summer.`,
  );
  return [...each, sources];
}

/** Whose damage the table tells of: of all that one answer or another is for, so that they can be held together. */
function servedWords(plan: Plan, { served, options: [first, ...others] }: SiteResult): string {
  const whose = namesInside(plan, served);
  const below = others.every((other) => isForTheSame(other, first)) ? '' : '; below, of those whom each is for';
  return `Less damage: of today’s heat damage to ${whose}${served.length > 1 ? ', together' : ''}${below}.`;
}

function answersTable(result: SiteResult, columns: number, units: Units): string {
  const { options } = result;
  return table(
    columns,
    ['', 'what', 'cloth', 'less damage', 'cost', 'adds'],
    options.map((option, k) => [
      String(k + 1),
      `${roleWords(option.roles)}: ${titleOf(option, units)}`,
      formatShare(option.density),
      formatShare(option.together),
      moneyWords(option.cost, option.currency),
      addedWords(option, options),
    ]),
    [2, 3, 4],
  );
}

/** Ids of the plants for which there is something beside the cloth found. */
function helpedBeside(free: readonly LadderStep[], { together, living }: MoreForms): string[] {
  return [...(worthMoving(free)?.serves ?? []), ...(together?.helped ?? []), ...(living?.served ?? [])];
}

/** For whom it is, how they stand then, and what sun still comes. */
function optionText(option: SiteOption, index: number, several: boolean, plan: Plan, columns: number): string {
  const { where, why, plants, notes } = option;
  const [low] = plants.flatMap(({ lowSun }) => (lowSun ? [lowSun.sentence] : []));
  const told = [
    `${index + 1}, ${where}.`,
    ...(several ? [why] : []),
    heatwaveWords(plan, standsUnder(option)),
    low ?? '',
    ...notes,
  ];
  return wrapped(told.filter(Boolean).join(' '), columns);
}

/** What only those who want to check it need. */
export function siteSources(result: SiteResult, { living }: MoreForms, on: SitePage): string {
  const { plan, units } = on;
  const columns = Math.min(on.columns, WIDEST);
  const rows = result.options.map((option, k) => [
    String(k + 1),
    option.center.map((each) => formatLength(each, units)).join(', '),
    `${option.turn.toFixed(0)}°`,
    formatArea(option.area, units),
    `${option.spared.toFixed(1)} K·h`,
    formatPerArea(option.payoff.perArea, 'K·h', units),
  ]);
  const cautions = cautionsFor(['wind', 'spray', 'heat'], { ...plan, units });
  return [
    table(columns, ['', 'middle: x, y', 'turned', 'cloth', 'spared a day', 'payoff'], rows, [2, 3, 4, 5]),
    ...[...result.notes, searchedWords(result, units), ...(living === null ? [] : livingSources(living))].map((text) =>
      wrapped(text, columns),
    ),
    `Take care\n${cautions.map(({ text }) => wrapped(`- ${text}`, columns)).join('\n')}`,
  ].join('\n\n');
}

function searchedWords({ tried, bound }: SiteResult, units: Units): string {
  const count = (value: number) => value.toLocaleString('en');
  const between =
    tried.between > 0
      ? `Between these steps ${count(tried.between)} more places were tried round the best: what is found ` +
        `there is not proven the best. `
      : '';
  return (
    `Searched ${count(tried.candidates)} places in steps of ${formatLength(tried.step, units)} and ` +
    `${tried.turns} turns: nothing there spares more than ${bound.toFixed(1)} K·h a day. ${between}` +
    `Harm is the leaf’s excess over its limit, summed over a hot day of ` +
    `each month; beds were searched on samples of their cells, off by ${tried.bedSampleError.toFixed(2)} K·h at most.`
  );
}
