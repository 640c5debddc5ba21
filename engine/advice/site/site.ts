import { leastLight } from '../../load/light/light-class.ts';
import type { Outcome } from '../../load/types.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { worthOf } from '../../plan/defaults.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Plan } from '../../plan/types.ts';
import { sharedBy } from '../words/served.ts';
import { type Answer, answersOf, isWorth } from './answers.ts';
import { type Candidate, candidatesOf } from './choose.ts';
import { clothSteps } from './cloth-steps.ts';
import { type InFull, inFull } from './in-full.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import type { Proposal } from './option.ts';
import { type Progress, stretch } from './progress.ts';
import { betweenSteps } from './refine/between-steps.ts';
import { mayTake } from './rules/light-left.ts';
import { densestFor } from './rules/suits.ts';
import { searchYard } from './search-yard.ts';
import type { Contest } from './search/contest.ts';
import type { Added, SiteOption, SiteRequest, SiteResult, SiteTried } from './types.ts';
import { besidesOf, notesOf, rulePrices, sentenceOf, unhiddenWords } from './words.ts';

/**
 * Where cloth would spare the plants most. Whoever wants to stop it ends the thread that it runs on.
 * @returns the options, or what is wrong with the request or the plan
 */
export function siteOf(
  plan: Plan,
  request: SiteRequest = {},
  progress: Progress = () => undefined,
): Outcome<SiteResult> {
  const laidOut = layOut(plan, request, stretch(progress, 0, 0.15));
  if (!laidOut.ok) return laidOut;
  const contest = searchYard(laidOut.value, stretch(progress, 0.15, 0.8));
  progress(0.8, 'what to choose between');
  const near = betweenSteps(laidOut.value, candidatesOf(laidOut.value, contest));
  const full = inFull(laidOut.value, stretch(progress, 0.85, 1));
  const answers = answersOf(near.candidates, (candidate) => weighed(laidOut.value, full, candidate));
  return { ok: true, value: resultOf(laidOut.value, contest, full, answers, near.tried) };
}

/** A candidate in full, with its cost as the search ranks it where no price is known. */
function weighed(
  { plan, request }: LaidOut,
  full: InFull,
  candidate: Candidate,
): { option: Proposal; spared: number; cost: number; keepsLight: boolean } {
  const option = full.of(candidate);
  return {
    option,
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

type Answered = Answer<Candidate, ReturnType<typeof weighed>>;

function resultOf(
  laidOut: LaidOut,
  contest: Contest,
  full: InFull,
  answers: readonly Answered[],
  between: number,
): SiteResult {
  const { count } = laidOut.request;
  const served = servedBy(answers);
  const options = optionsOf(laidOut, answers, served);
  const best = Math.max(0, ...answers.map(({ full: { spared } }) => spared));
  const uncounted = wholeHarm(laidOut) - full.harm;
  const single = Math.max(contest.best, contest.unseen);
  const bound = Math.max(best, count === 1 ? single : Math.min(full.harm, count * single));
  const result = {
    options,
    bound: bound + uncounted,
    gap: bound > 0 ? (bound - best) / bound : 0,
    proven: contest.isOpen && count === 1,
    tried: { ...triedOf(laidOut, contest, full), between },
    harm: full.harm,
    served,
    uncounted: laidOut.counting.uncounted,
    countedAllTheSame: laidOut.counting.allTheSame,
    pricedFor: laidOut.pricedFor,
    rules: rulePrices(laidOut, contest),
    ladder: clothSteps(
      laidOut.plan,
      answers.map(({ full: { option } }) => option),
    ),
    unhidden: unhiddenWords(laidOut),
    notes: notesOf(laidOut),
  };
  const besides = besidesOf(laidOut, result, contest.isOpen);
  return { ...result, besides, sentence: sentenceOf(laidOut, result.options, besides) };
}

/** Plants for whose sake one of the answers hangs where it hangs. */
function servedBy(answers: readonly Answered[]): string[] {
  const ids = answers.flatMap(({ full: { option } }) => option.served);
  return [...new Set(ids)];
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

function triedOf(
  { lattice, sizes, densities, targets, pairs }: LaidOut,
  { candidates, forbidden, scored }: Contest,
  { bedSampleError }: InFull,
): Omit<SiteTried, 'between'> {
  return {
    kinds: lattice.kinds,
    sizes,
    heights: lattice.roof.heights,
    densities,
    turns: lattice.turns.length,
    step: lattice.step,
    candidates,
    outbid: candidates - forbidden - scored,
    forbidden,
    scored,
    points: targets.points.length,
    heatDays: targets.heats.length,
    harmfulPairs: pairs.count,
    bedSampleError: bedSampleError(),
  };
}
