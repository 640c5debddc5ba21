/** What is told first of a search: in the order in which a person decides. */
import { groundPlace } from '../../frame/strength/grounds.ts';
import { listWords } from '../../plan/list-words.ts';
import { namedInside } from '../../plan/names.ts';
import type { Plan } from '../../plan/types.ts';
import { formatSpeed, type Units } from '../../plan/units.ts';
import type { LadderStep } from '../cheaper-first/step.ts';
import { percent } from '../cheaper-first/step.ts';
import type { AnswerRole, SiteOption, SiteResult } from './types.ts';

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
export function addedWords({ added, currency }: SiteOption, options: readonly SiteOption[]): string {
  if (added.to === null) return added.isWorth ? '' : 'not worth it';
  const money = added.cost === null || options.length < 2 ? '' : ` for ${added.cost.toFixed(0)} ${currency}`;
  return `${percent(added.effect)} more than ${added.to + 1}${money}${added.isWorth ? '' : ': not worth it'}`;
}

/** A thing to do before any cloth. */
export function freeWords({ name, effect, sentence }: LadderStep): string {
  return `${name}: ${effect}. ${sentence}`;
}

/** Moving that spares at least this share of what cloth would is told before it. Our choice. */
const AS_GOOD_AS = 0.8;

/** The advice in a sentence or two: what costs nothing first, where it does as much. */
export function adviceSentence(plan: Plan, { sentence, options }: SiteResult, free: readonly LadderStep[]): string {
  const move = free.find(({ id }) => id === 'move');
  const most = Math.max(0, ...options.map(({ spared }) => spared));
  const spared = move?.spared ?? 0;
  if (!move?.moves?.length || spared < AS_GOOD_AS * most) return sentence;
  const who = listWords(move.moves.map(({ plant }) => namedInside(plan, plant)));
  if (most === 0) return `Move ${who} first: it costs nothing. ${sentence}`;
  const than = spared >= most ? 'more than' : 'nearly as much as';
  return `Move ${who} first: it costs nothing and spares ${than} any cloth here. If you cannot: ${sentence}`;
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
      : `Anchored as ${where}: push a steel rod in by hand and say --ground soft, firm, rock or paving.`,
    gust: `For gusts of ${formatSpeed(gust, units)}, else say --gust.`,
  };
}
