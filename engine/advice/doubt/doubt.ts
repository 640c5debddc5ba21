import { createSharedLeaves } from '../../load/leaf/heat-day.ts';
import type { Outcome, Verdict } from '../../load/types.ts';
import { harmOf, weighedHarm } from '../../load/verdict/harm-of.ts';
import { verdictsOf } from '../../load/verdict/verdicts-of.ts';
import type { Plan } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { nameOf } from '../../plan/words/names.ts';
import { TODAY } from '../compare/words.ts';
import { type AdviceChange, adviceChanges, byAdvice, type NamedYard } from './advice.ts';
import { asTold } from './as-told.ts';
import type { DoubtBar, DoubtInput, DoubtRequest, DoubtResult, PlantDoubt } from './types.ts';
import { adviceWords, firstToMeasure, inputName, notesOf, plantSentence, pmWords, sentenceOf } from './words.ts';
import { type JudgedHarm, optionPlans, type ShiftedYard, shiftedYard } from './yards.ts';

type Shifted = ShiftedYard['inputs'][number];

/**
 * Every number that is not taped, off by as much as it may be, one at a time: which verdicts and which order of the
 * options would be others, how far harm moves, and which one of them to measure next. Climate and limits are always in
 * doubt.
 * @returns the doubt, or why a heat day cannot be made or an option cannot be applied
 */
export function doubtOf(plan: Plan, request: DoubtRequest = {}): Outcome<DoubtResult> {
  const options = optionPlans(plan);
  if (!options.ok) return options;
  const all = [{ id: TODAY, plan }, ...options.value];
  const yards: NamedYard[] = [];
  const shareLeaves = createSharedLeaves();
  for (const { id, plan: inPlan } of all) {
    const yard = shiftedYard(inPlan, request.weather, shareLeaves, (done) =>
      request.progress?.((yards.length + done) / all.length, id),
    );
    if (!yard.ok) return yard;
    yards.push({ name: id, yard: yard.value });
  }
  // Shifts are judged at a few cells of each bed; what stands today is told from all of them, as everywhere.
  const told = harmOf(plan, request.weather);
  if (!told.ok) return told;
  const verdicts = verdictsOf(plan, request.weather);
  if (!verdicts.ok) return verdicts;
  const units = request.units ?? unitsOf(plan);
  const today = asTold(yards[0].yard, verdicts.value);
  yards[0] = { name: TODAY, yard: today };
  const { order, under } = adviceChanges(yards);
  const bars = inputsOf(yards)
    .map(({ input }) => barOf(plan, today, input, under(input), units))
    .toSorted(byAdvice);
  const plants = today.base.map((harm, k): PlantDoubt => {
    const plant = { ...plantDoubt(plan, harm, today, k), harm: told.value[k].harm };
    return { ...plant, sentence: plantSentence(plant, bars) };
  });
  const harm = weighedHarm(told.value);
  const next = firstToMeasure(bars);
  const value = {
    harm,
    pm: rootOfSquares(bars.map(({ moves }) => moves)),
    plants,
    inputs: bars,
    order,
    measureNext: next?.key ?? null,
  };
  return {
    ok: true,
    value: { ...value, sentence: sentenceOf(bars, next, harm, order.length > 0), notes: notesOf(plan, bars, order) },
  };
}

/** Today's inputs, then those that only an option's features have. */
function inputsOf(yards: readonly NamedYard[]): Shifted[] {
  const byKey = new Map<string, Shifted>();
  for (const { yard } of yards)
    for (const shifted of yard.inputs) if (!byKey.has(shifted.input.key)) byKey.set(shifted.input.key, shifted);
  return [...byKey.values()];
}

function barOf(plan: Plan, today: ShiftedYard, input: DoubtInput, change: AdviceChange, units: Units): DoubtBar {
  const { key, kind, feature, by, pm } = input;
  const under = today.inputs.find((each) => each.input.key === key)?.under ?? [];
  const bar = {
    key,
    kind,
    feature,
    name: inputName(plan, input),
    by,
    pm,
    pmText: pmWords(input, units),
    moves: Math.max(0, ...under.map((harms) => changeOf(today.base, harms))),
    measurable: kind === 'shelter' ? by === 'guess' : kind !== 'climate' && kind !== 'limits',
    ...change,
  };
  return { ...bar, advice: adviceWords(plan, bar) };
}

/** Σ worth × |change of harm|. [K·h/day] */
function changeOf(base: readonly JudgedHarm[], harms: readonly JudgedHarm[]): number {
  return base.reduce((sum, { worth, harm }, k) => sum + worth * Math.abs(harms[k].harm - harm), 0);
}

function plantDoubt(
  plan: Plan,
  { id, worth, verdict, harm }: JudgedHarm,
  today: ShiftedYard,
  k: number,
): Omit<PlantDoubt, 'sentence'> {
  const may = new Map<Verdict, string[]>();
  for (const { input, under } of today.inputs) {
    for (const other of new Set(under.map((harms) => harms[k].verdict))) {
      if (other !== verdict) may.set(other, [...(may.get(other) ?? []), input.key]);
    }
  }
  const pm = rootOfSquares(
    today.inputs.map(({ under }) => Math.max(0, ...under.map((harms) => Math.abs(harms[k].harm - harm)))),
  );
  return {
    id,
    name: nameOf(plan, id),
    worth,
    verdict,
    harm,
    pm,
    may: [...may].map(([other, inputs]) => ({ verdict: other, inputs })),
  };
}

function rootOfSquares(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0));
}
