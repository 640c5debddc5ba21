/** What a search tells, made of its answers. */

import { leastLight } from '../../load/light/light-class.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { worthOf } from '../../plan/defaults.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Plan } from '../../plan/types.ts';
import { sharedBy } from '../words/served.ts';
import { type Answer, isWorth } from './answers.ts';
import type { Candidate } from './choose.ts';
import { clothSteps } from './cloth-steps.ts';
import type { InFull } from './in-full.ts';
import type { LaidOut } from './lay-out.ts';
import type { Proposal } from './option.ts';
import { mayTake } from './rules/light-left.ts';
import { densestFor } from './rules/suits.ts';
import type { Standings } from './search/contest.ts';
import type { Added, PlantState, SiteOption, SiteResult, SiteTried } from './types.ts';
import { besidesOf, notesOf, rulePrices, sentenceOf, unhiddenWords, waterDecides } from './words.ts';

/** Worked out exactly, with its cost as the search ranks it where no price is known. */
export interface Weighed extends InFull {
  readonly spared: number;
  readonly cost: number;
  readonly keepsLight: boolean;
}

export function weighed({ plan, request }: LaidOut, candidate: Candidate, full: InFull): Weighed {
  const { option } = full;
  return {
    ...full,
    spared: option.spared,
    cost: option.cost ?? candidate.cost,
    keepsLight: !request.keepLight || keepsLight(plan, request.densities === undefined, option),
  };
}

/** Whether cloth as it hangs keeps the rules of light. @param suits whether it must suit the plants too */
function keepsLight(plan: Plan, suits: boolean, { plants, density }: Proposal): boolean {
  return plantFeatures(plan).every((feature) => {
    const row = rowOf(plan, feature);
    const plant = plants.find(({ id }) => id === feature.id);
    if (row === undefined || plant === undefined) return true;
    const light = plant.before.topLight;
    const may = mayTake({ light, least: leastLight(row), densest: suits ? densestFor(row) : Infinity }, density);
    const taken = light - plant.after.topLight;
    return taken <= may.light + ROUNDING && taken <= may.density + ROUNDING;
  });
}

export type Answered = Answer<Candidate, Weighed>;

/** @param between places tried between the steps */
export function resultOf(
  laidOut: LaidOut,
  standings: Standings,
  answers: readonly Answered[],
  between: number,
): SiteResult {
  const { count } = laidOut.request;
  const harm = laidOut.before.reduce((sum, { worth, state }) => sum + worth * (state.harm ?? 0), 0);
  const errors = [Math.abs(harm - laidOut.pairs.harm), ...answers.map(({ full: { error } }) => error)];
  const served = servedBy(answers);
  const options = optionsOf(laidOut, burningFirst(laidOut.plan, answers), served);
  const best = Math.max(0, ...answers.map(({ full: { spared } }) => spared));
  const uncounted = wholeHarm(laidOut) - harm;
  const bound = Math.max(best, Math.min(count === 1 ? Infinity : harm, count * standings.best));
  const result = {
    options,
    bound: bound + uncounted,
    proven: count === 1,
    tried: { ...triedOf(laidOut), candidates: standings.candidates, between, bedSampleError: Math.max(...errors) },
    harm,
    served,
    uncounted: laidOut.counting.uncounted,
    countedAllTheSame: laidOut.counting.allTheSame,
    pricedFor: laidOut.pricedFor,
    rules: rulePrices(laidOut, standings),
    ladder: clothSteps(
      laidOut.plan,
      answers.map(({ full: { option } }) => option),
    ),
    unhidden: unhiddenWords(laidOut),
    notes: notesOf(laidOut),
  };
  const besides = besidesOf(laidOut, result);
  return { ...result, besides, sentence: sentenceOf(laidOut, result, besides) };
}

/** Plants for whose sake one of the answers hangs where it hangs. */
function servedBy(answers: readonly Answered[]): string[] {
  const ids = answers.flatMap(({ full: { option } }) => option.served);
  return [...new Set(ids)];
}

/** Before cloth for plants that water would save, which is free, the first that is for one that burns all the same. */
export function burningFirst(plan: Plan, answers: readonly Answered[]): readonly Answered[] {
  const isFor = (is: (id: string, state: PlantState) => boolean) => (answer: Answered) => {
    const { served, plants } = answer.full.option;
    return plants.some(({ id, before }) => served.includes(id) && is(id, before));
  };
  const burning = isFor((id, state) => !waterDecides(plan, id, state));
  if (answers.length === 0 || burning(answers[0])) return answers;
  const lead = answers.find((answer) => burning(answer) && !answer.candidate.cautioned);
  return lead === undefined ? answers : [lead, ...answers.filter((answer) => answer !== lead)];
}

/** Where nothing burns that is watered, less heat damage than this is no reason to build. Our choice. [K·h/day] */
const WATER_DOES = 5;

/** The answers with what each adds to the next cheaper one. */
function optionsOf(laidOut: LaidOut, answers: readonly Answered[], served: readonly string[]): SiteOption[] {
  const { before } = laidOut;
  const harm = before.reduce(
    (sum, { id, worth, state }) => (served.includes(id) ? sum + worth * (state.harm ?? 0) : sum),
    0,
  );
  const burns = before.some(({ id, state }) => served.includes(id) && state.verdict === 'will burn');
  const waterDoes = !burns && harm < WATER_DOES;
  const effects = answers.map(({ full: { option } }) => ({
    effect: offTogether(laidOut, option, served),
    cost: option.cost,
  }));
  const rising = [...answers.keys()].sort((a, b) => answers[a].full.cost - answers[b].full.cost);
  const addedBy = (index: number): Added => {
    const rank = rising.indexOf(index);
    const [own, first] = [effects[index], effects[rising[0]]];
    if (rank === 0)
      return {
        to: null,
        effect: own.effect,
        cost: own.cost,
        isWorth: !waterDoes && isWorth(own, undefined, undefined),
      };
    const to = rising[rank - 1];
    const cheaper = effects[to];
    return {
      to,
      effect: own.effect - cheaper.effect,
      cost: own.cost === null || cheaper.cost === null ? null : own.cost - cheaper.cost,
      isWorth: !waterDoes && isWorth(own, cheaper, first),
    };
  };
  return answers.map(({ full: { option }, roles }, index) => ({
    ...option,
    ...wholeYard(laidOut, option),
    roles,
    together: effects[index].effect,
    added: addedBy(index),
  }));
}

/** What an option takes off the harm of some plants together, whomever it serves: what money is weighed against. */
function offTogether({ before, counting }: LaidOut, { plants }: Proposal, ids: readonly string[]): number {
  return sharedBy(
    before.flatMap(({ id, worth, state }) => {
      const after = plants.find((plant) => plant.id === id)?.after;
      return ids.includes(id) && counting.ids.has(id)
        ? [{ id, worth, before: state.harm ?? 0, after: after?.harm ?? 0 }]
        : [];
    }),
  );
}

/** What an option spares of all that is planted, those too for whose sake nothing was sought. */
function wholeYard(
  laidOut: LaidOut,
  { plants, area, cost }: Proposal,
): Pick<Proposal, 'spared' | 'sparedShare' | 'payoff'> {
  const worths = worthsOf(laidOut);
  const spared = plants.reduce(
    (sum, { id, before, after }) => sum + (worths.get(id) ?? 0) * ((before.harm ?? 0) - (after.harm ?? 0)),
    0,
  );
  const harm = wholeHarm(laidOut);
  return {
    spared,
    sparedShare: harm > 0 ? spared / harm : 0,
    payoff: { perArea: spared / area, perMoney: cost !== null && cost > 0 ? spared / cost : null },
  };
}

/** Σ worth × harm of all that is planted. [K·h/day] */
function wholeHarm(laidOut: LaidOut): number {
  const worths = worthsOf(laidOut);
  return laidOut.before.reduce((sum, { id, state }) => sum + (worths.get(id) ?? 0) * (state.harm ?? 0), 0);
}

function worthsOf({ plan }: LaidOut): ReadonlyMap<string, number> {
  return new Map(plan.features.map((feature) => [feature.id, worthOf(feature)]));
}

function triedOf({ lattice, sizes, densities }: LaidOut): Omit<SiteTried, 'candidates' | 'between' | 'bedSampleError'> {
  return {
    kinds: lattice.kinds,
    sizes,
    heights: lattice.roof.heights,
    densities,
    turns: lattice.turns.length,
    step: lattice.step,
  };
}
