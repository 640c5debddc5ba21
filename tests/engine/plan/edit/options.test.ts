import { expect, it } from 'vitest';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import {
  acceptOption,
  addOption,
  addToOption,
  moveInOption,
  removeOption,
} from '../../../../engine/plan/edit/options.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';

const plan = demoPlan('courtyard');
const hedge: Feature = {
  id: 'hedge',
  kind: 'hedge',
  path: [
    [2, 2],
    [2, 5],
  ],
  height: 1.3,
  thickness: 0.5,
};

const takingAway = (from: Plan, optionId: string, id: string): Plan => ({
  ...from,
  options: from.options?.map((option) => (option.id === optionId ? { ...option, removes: [id] } : option)),
});

it('an accepted option is the yard as it was tried, and the plan stays right', () => {
  const moving = moveInOption(addToOption(plan, 'A', hedge), 'A', 'lemon', [9.4, 6.2]);
  const taking = takingAway(moving, 'A', 'hydrangea');
  const tried = withOptions(taking, ['A']);
  const accepted = acceptOption(taking, 'A');
  expect(tried.ok && tried.plan.features).toEqual(accepted.features);
  expect(accepted.options?.map(({ id }) => id)).toEqual(['B', 'C']);
  expect(checkPlan(accepted)).toEqual([]);
});

it('other options forget what the accepted one took away', () => {
  const accepted = acceptOption(takingAway(plan, 'A', 'lemon'), 'A');
  expect(accepted.options?.find(({ id }) => id === 'C')?.moves).toEqual({});
});

it('an option that cannot be applied leaves the plan as it is', () => {
  const stuck = addToOption(plan, 'A', { ...hedge, id: 'lemon' });
  expect(acceptOption(stuck, 'A')).toBe(stuck);
  expect(acceptOption(plan, 'Z')).toBe(plan);
});

it('options come, move things and go', () => {
  const more = addOption(plan, { id: 'D', name: 'A hedge', adds: [hedge] });
  expect(more.options).toHaveLength(4);
  expect(removeOption(more, 'D')).toEqual(plan);
  expect(removeOption(plan, 'Z')).toBe(plan);
  const moved = moveInOption(more, 'D', 'lemon', [3, 3]);
  expect(moved.options?.[3].moves).toEqual({ lemon: [3, 3] });
  expect(moveInOption(moved, 'D', 'lemon', undefined).options?.[3].moves).toEqual({});
});
