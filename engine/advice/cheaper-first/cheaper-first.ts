/** What to try before cloth, the cheapest first, each with what it does in this yard. */

import type { Outcome } from '../../load/types.ts';
import { isCoolCrop, sowCool } from '../../load/verdict/cool-season.ts';
import { NO_HARM, weighedHarm } from '../../load/verdict/harm-of.ts';
import { isMovable } from '../../plan/kinds.ts';
import type { Plan } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { nameOf, namesInside } from '../../plan/words/names.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { createRayYard, type RayYard } from '../doubt/rays.ts';
import { rayVerdicts } from '../doubt/verdicts.ts';
import { noNeedOf } from '../words/no-need.ts';
import { sharedBy } from '../words/served.ts';
import { CLAY_ABSORPTANCE } from '../year/clay/clay.ts';
import { clayRefusals } from '../year/clay/who-may-be-sprayed.ts';
import { refusalWords } from '../year/clay/words.ts';
import { moveStep } from './pots.ts';
import { harmStep, type LadderStep } from './step.ts';
import { wrapStep } from './wrap.ts';

export interface CheaperFirst {
  /** Σ worth × harm as the yard is, of the plants that may gain by shade. [K·h/day] */
  readonly harm: number;
  /** Empty where nothing is harmed, neither leaves nor roots. */
  readonly steps: readonly LadderStep[];
}

/** A thin and a thick film, either side of `CLAY_ABSORPTANCE`. */
const THIN_FILM = 0.45;
const THICK_FILM = 0.35;

/**
 * Moving the pots, wrapping them, water and clay: what each spares alone. Beds count by nine of their cells.
 * @returns the steps, or why a heat day cannot be made
 */
export function cheaperFirst(
  plan: Plan,
  request: { readonly weather?: Weather; readonly units?: Units } = {},
): Outcome<CheaperFirst> {
  const units = request.units ?? unitsOf(plan);
  const yard = createRayYard(plan, request.weather);
  if (!yard.ok) return yard;
  const verdicts = rayVerdicts(plan, request.weather);
  if (!verdicts.ok) return verdicts;
  const inNeed = new Set(
    yard.value.base.filter((plant) => noNeedOf(verdicts.value(plant, plant)) !== 'no shade needed').map(({ id }) => id),
  );
  const harm = weighedHarm(yard.value.base.filter(({ id }) => inNeed.has(id)));
  const wrapped = wrapStep(plan, units, request.weather);
  if (!wrapped.ok) return wrapped;
  const roots = wrapped.value === null ? [] : [wrapped.value];
  if (harm <= NO_HARM) return { ok: true, value: { harm, steps: roots } };
  const steps: LadderStep[] = [];
  const harmTo = new Map(yard.value.base.map(({ id, worth, harm: its }) => [id, worth * its]));
  const pots = plan.features
    .filter(isMovable)
    .filter(({ id }) => inNeed.has(id))
    .sort((a, b) => (harmTo.get(b.id) ?? 0) - (harmTo.get(a.id) ?? 0));
  if (pots.length > 0) {
    const moved = moveStep(plan, pots, units, request.weather);
    if (!moved.ok) return moved;
    steps.push(moved.value);
  }
  steps.push(...roots);
  const clay = clayStep(plan, yard.value, inNeed, request.weather);
  if (!clay.ok) return clay;
  steps.push(waterStep(plan, yard.value, inNeed), clay.value);
  // What was looked for in vain is said last.
  return {
    ok: true,
    value: { harm, steps: steps.toSorted((a, b) => Number(a.spared === 0) - Number(b.spared === 0)) },
  };
}

/** Water cools leaves, not fruit: where fruit burns, what costs nothing is the shade of its own leaves. */
function waterStep(plan: Plan, yard: RayYard, inNeed: ReadonlySet<string>): LadderStep {
  const harmed = yard.base.filter(({ id, harm }) => inNeed.has(id) && harm > NO_HARM);
  const [fruit, serves] = [true, false].map((is) =>
    harmed.filter(({ judge }) => (judge.row.limitOf === 'fruit') === is).map(({ id }) => id),
  );
  const leaves = fruit.length === 0 ? '' : leavesOverFruit(plan, fruit);
  if (serves.length === 0) {
    const gain = 'free';
    const nothing = { serves: fruit, spared: null, sparedShare: null, gain, effect: gain };
    return { id: 'water', name: 'Leave the leaves over the fruit', cost: null, ...nothing, sentence: leaves };
  }
  const does = sparedBy(yard, yard.withLeaves('watered'), serves);
  const cool = harmed.filter(({ judge }) => isCoolCrop(judge.row)).map(({ id }) => id);
  const sentence = [
    'So much if no leaf ever thirsts; soil and roots decide.',
    leaves,
    cool.length === 0
      ? ''
      : `Before you buy cloth for ${namesInside(plan, cool)}: ` +
        `${sowCool(agreeingWith(...cool.map((id) => nameOf(plan, id))).them)}.`,
  ]
    .filter(Boolean)
    .join(' ');
  const step = harmStep(plan, { id: 'water', name: 'Mulch, and water in the morning', cost: null, sentence }, does);
  return {
    ...step,
    gain: `up to ${step.gain}`,
    effect: `up to ${step.effect}${serves.length > 1 ? ' together' : ''}`,
  };
}

/** UC IPM on sunburn of fruit, from memory: keep the canopy; do not strip leaves or prune in summer. */
function leavesOverFruit(plan: Plan, ids: readonly string[]): string {
  return `Water does not cool the fruit of ${namesInside(plan, ids)}: leave every leaf that hangs over it.`;
}

function clayStep(plan: Plan, yard: RayYard, inNeed: ReadonlySet<string>, weather?: Weather): Outcome<LadderStep> {
  const named = { id: 'clay', name: 'Spray reflective clay', cost: null } as const;
  const refusals = clayRefusals(plan, weather);
  if (!refusals.ok) return refusals;
  const harmed = yard.base.filter((plant) => plant.harm > 0 && inNeed.has(plant.id));
  const refused = harmed.map(({ id }) => id).filter((id) => refusals.value.has(id));
  const fruit = harmed
    .filter(({ judge, id }) => judge.row.limitOf === 'fruit' && !refused.includes(id))
    .map(({ id }) => id);
  const sprayed = harmed.map(({ id }) => id).filter((id) => !refused.includes(id) && !fruit.includes(id));
  const rest = [
    ...(fruit.length === 0
      ? []
      : [`Fruit of ${namesInside(plan, fruit)}: trials found less of it burnt, but ` + `not in every season.`]),
    ...refusalWords(
      plan,
      refused.map((plant) => ({ plant, why: refusals.value.get(plant) ?? '' })),
    ),
  ];
  if (sprayed.length === 0) {
    const gain = fruit.length > 0 ? 'no number for fruit' : 'not for these plants';
    const nothing = { serves: fruit, spared: null, sparedShare: null, gain, effect: gain };
    return { ok: true, value: { ...named, ...nothing, sentence: rest.join(' ') } };
  }
  const at = (absorptance: number) => sparedBy(yard, yard.withLeaves('thirsty', absorptance), sprayed);
  const [thin, usual, thick] = [THIN_FILM, CLAY_ABSORPTANCE, THICK_FILM].map(at);
  const [least, most] = [thin, thick].map(({ sparedShare }) => formatShare(sparedShare));
  const sentence = `${least} by a thin film, ${most} by a thick one, while it lasts.`;
  return { ok: true, value: harmStep(plan, { ...named, sentence: [sentence, ...rest].join(' ') }, usual) };
}

/** What other leaves spare some plants, and as a share of their harm. */
function sparedBy(
  { base }: RayYard,
  harms: readonly number[],
  serves: readonly string[],
): { readonly serves: readonly string[]; readonly spared: number; readonly sparedShare: number } {
  const plants = base.flatMap(({ id, worth, harm }, k) =>
    serves.includes(id) ? [{ id, worth, before: harm, after: harms[k] }] : [],
  );
  const spared = plants.reduce((sum, { worth, before, after }) => sum + worth * (before - after), 0);
  return { serves, spared, sparedShare: sharedBy(plants) };
}
