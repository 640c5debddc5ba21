import { expect, test } from 'vitest';
import { compareOptions } from '../../../engine/advice/compare/compare.ts';
import { createTrial } from '../../../engine/advice/site/scoring/trial.ts';
import { gridOf } from '../../../engine/load/light/grid-of.ts';
import { loadOf } from '../../../engine/load/load-of.ts';
import { harmOf } from '../../../engine/load/verdict/harm-of.ts';
import type { Canopy, Feature, Plan } from '../../../engine/plan/types.ts';
import { valueOf } from '../../parts/outcome.ts';
import { yardPlan } from '../load/yard-plan.ts';
import { LEMON, TOMATO } from './planted.ts';

const ROOF: Canopy = {
  id: 'roof',
  kind: 'canopy',
  center: [6.2, 4.1],
  length: 2.6,
  width: 2.6,
  height: 2.6,
  density: 0.5,
};
const WALL: Feature = {
  id: 'white',
  kind: 'wall',
  path: [
    [5, 6],
    [9, 6],
  ],
  height: 2.4,
  thickness: 0.2,
  colour: 'white',
};
const [JUNE] = yardPlan().climate.months;
/** Two heat days, a white wall near the plants, and an option. */
const YARD: Plan = {
  ...yardPlan([WALL, LEMON, TOMATO]),
  season: { year: 2026, from: '06-20', to: '07-04', stepMinutes: 20 },
  climate: { ...yardPlan().climate, months: [JUNE, { ...JUNE, month: 7, high: JUNE.high + 2 }] },
  options: [{ id: 'A', adds: [{ ...ROOF, id: 'of A', height: 2.3 }] }],
};
const DAY = { kind: 'day', date: '07-02' } as const;
const COARSE = { cell: 2, height: 0.5 };

/** What one yard is asked, each in numbers. */
const QUESTIONS: Readonly<Record<string, (plan: Plan) => unknown>> = {
  heatwave: (plan) => valueOf(loadOf(plan, { period: { kind: 'heatwave' }, ...COARSE })).plants,
  'a day': (plan) => valueOf(loadOf(plan, { period: DAY, ...COARSE })).plants,
  harm: (plan) => valueOf(harmOf(plan)).map(({ id, harm }) => ({ id, harm })),
  trial: (plan) => valueOf(createTrial(plan, DAY, gridOf(plan, COARSE))).score([ROOF]).plants,
  compare: (plan) => valueOf(compareOptions(plan)).choices.map(({ name, spared }) => ({ name, spared })),
};

/** Every number to nine digits: sums may be taken in another order. */
const shown = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) => (typeof part === 'number' ? Number(part.toPrecision(9)) : part));

/** The answers of a yard that nobody has asked before. */
function answersIn(order: readonly string[]): Readonly<Record<string, string>> {
  const plan = { ...structuredClone(YARD), name: order.join(', ') };
  return Object.fromEntries(order.map((question) => [question, shown(QUESTIONS[question](plan))]));
}

test('whatever a yard was asked before, each question has the same answer', () => {
  const order = Object.keys(QUESTIONS);
  const answers = answersIn(order);
  expect(answersIn(order.toReversed())).toEqual(answers);
  expect(answersIn([...order.slice(3), ...order.slice(0, 3)])).toEqual(answers);
});
