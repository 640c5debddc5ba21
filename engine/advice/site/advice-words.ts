/** What is told first of a search: in the order in which a person decides. */

import { groundPlace } from '../../frame/strength/grounds.ts';
import { areCoolCrops, sowCool } from '../../load/verdict/cool-season.ts';
import type { Plan } from '../../plan/types.ts';
import { formatSpeed, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { type LadderStep, WORTH_NAMING, type WorthMoving, worthMoving } from '../cheaper-first/step.ts';
import { cheaperHeadline, isOnlyRoots } from '../words/cure-headlines.ts';
import { sharedBy } from '../words/served.ts';
import { CLOSE_CALL } from '../year/tomorrow/heat.ts';
import type { AnswerRole, SiteOption, SiteResult } from './types.ts';
import { isNotWorthBuilding, waterDecides } from './words.ts';

const ROLES: Readonly<Record<AnswerRole, string>> = {
  'most for money': 'most for the money',
  most: 'the most there is',
  least: 'the least that helps',
};

export function roleWords(roles: readonly AnswerRole[]): string {
  return roles.map((role) => ROLES[role]).join(', ');
}

export function moneyWords(cost: number | null, currency: string): string {
  return cost === null ? 'no price' : `${cost.toFixed(0)} ${currency}`;
}

/** What an answer adds to a cheaper one for how much more, and whether that is worth it. */
export function addedWords(option: SiteOption, options: readonly SiteOption[]): string {
  const { added, currency } = option;
  if (added.to === null) return added.isWorth ? '' : 'not worth it';
  const cheaper = options[added.to];
  const inAll = isForTheSame(option, cheaper) ? '' : ' in all';
  const more = toldPercent(option) - toldPercent(cheaper);
  const money = added.cost === null ? '' : ` for ${added.cost.toFixed(0)} ${currency}`;
  return `${more} % more${inAll} than ${added.to + 1}${money}${added.isWorth ? '' : ': not worth it'}`;
}

/** As the table tells it, so that what it adds adds up. */
function toldPercent({ together }: SiteOption): number {
  return Math.round(100 * together);
}

/** Whether two answers are for the same plants. */
export function isForTheSame({ served }: SiteOption, { served: theirs }: SiteOption): boolean {
  return served.length === theirs.length && served.every((id) => theirs.includes(id));
}

/** A thing to do before any cloth. */
export function freeWords({ name, effect, sentence }: LadderStep): string {
  return `${name}: ${effect}. ${sentence}`;
}

/** The advice in a sentence or two: what costs nothing first, then cloth for those it leaves, or in its stead. */
export function adviceSentence(plan: Plan, result: SiteResult, free: readonly LadderStep[]): string {
  const { sentence, uncounted } = result;
  const [first] = result.options;
  const toBuild = isNotWorthBuilding(result) ? undefined : first;
  const move = worthMoving(free);
  if (move === null)
    return first === undefined && isOnlyRoots(free)
      ? rootsSentence(plan, uncounted, sentence, free)
      : `${freeFirst(plan, toBuild, 'Mulch and water first', [])}${sentence}`;
  const names = move.serves.map((id) => namedInside(plan, id));
  const who = listWords(names);
  const does = `${formatShare(move.sparedShare)} less heat damage to ${agreeingWith(...names).them}`;
  const water = freeFirst(plan, toBuild, 'Then mulch and water', move.serves);
  const instead = toBuild === undefined ? '' : insteadWords(toBuild, move);
  return `Move ${who} first: free, and ${does}. ${water === '' ? instead : water}${sentence}`;
}

/**
 * Where water, or sowing at another time, is enough for all that cloth is for, that is told before any; else ''.
 * @param first the option to build, if one is worth it
 * @param watering "Mulch and water first", as it follows what is told before
 * @param moved ids of the pots that are told to be carried away: cloth is for where they stand now
 */
function freeFirst(plan: Plan, first: SiteOption | undefined, watering: string, moved: readonly string[]): string {
  if (first === undefined || first.served.length === 0) return '';
  const names = first.served.map((id) => namedInside(plan, id));
  const served = first.plants.filter(({ id }) => first.served.includes(id));
  const decides = served.every(({ id, before }) => waterDecides(plan, id, before));
  if (!decides && areCoolCrops(plan, first.served))
    return `${capital(sowCool(listWords(names)))}: free. To have ${agreeingWith(...names).them} in summer: `;
  if (!decides) return '';
  const { they, does, are } = agreeingWith(...names);
  const stays = first.served.some((id) => moved.includes(id)) ? `${does('stay')} where ${they} ${are} and ` : '';
  const isClose = served.some(({ before }) => (before.wateredOver ?? 0) > -CLOSE_CALL);
  return (
    `${watering}: free, and ${isClose ? 'on most days ' : ''}enough for ${listWords(names)} as long as ${they} never ` +
    `${does('thirst')}. ` +
    `If ${they} ${stays}${are} dry by noon all the same: `
  );
}

/** Where no leaf wants cloth, roots may want white round their pots: then nobody is told that no plant is harmed. */
function rootsSentence(
  plan: Plan,
  uncounted: SiteResult['uncounted'],
  sentence: string,
  free: readonly LadderStep[],
): string {
  return uncounted.length === 0 ? cheaperHeadline(plan, free) : `${sentence} ${cheaperHeadline(plan, free)}`;
}

/** How cloth stands to moving the pots: for what they leave, in their stead, or better for the same plants. */
function insteadWords({ served, effect }: SiteOption, { serves, sparedShare, moved }: WorthMoving): string {
  if (!served.some((id) => serves.includes(id))) return 'For what stays: ';
  if (!served.every((id) => serves.includes(id))) return 'Cloth is for what stays too: ';
  const byMoving = moved === undefined ? sparedShare : sharedBy(moved.filter(({ id }) => served.includes(id)));
  return effect > byMoving + WORTH_NAMING ? 'Cloth does more: ' : 'If you cannot: ';
}

/** What every price stands for. */
export function pricedWords(
  { pricedFor: { ground, isSaid, gust }, options }: SiteResult,
  units: Units,
): { readonly cost: string; readonly ground: string; readonly gust: string } {
  const where = groundPlace(ground);
  return {
    cost: options.some(({ cost }) => cost !== null)
      ? 'Every price is for all of it: frame, braces, anchors, cloth.'
      : '',
    ground: isSaid
      ? `Anchored ${where}.`
      : ground === 'paving'
        ? `Anchored as ${where}, for so the ground is drawn; else say --ground soft, firm or rock.`
        : `Anchored as ${where}: push a steel rod in by hand and say --ground soft, firm, rock or paving.`,
    gust: `For gusts of ${formatSpeed(gust, units)}, else say --gust.`,
  };
}
