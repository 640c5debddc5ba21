import { expect, test } from 'vitest';
import { planDirection } from '../../../engine/scene/direction.ts';

const rounded = (vector: readonly number[]) => vector.map((value) => Number(value.toFixed(9)) + 0);

test('x right, y up, z above; north is up while upBearing is 0', () => {
  expect(rounded(planDirection(0, 0, 0))).toEqual([0, 1, 0]);
  expect(rounded(planDirection(90, 0, 0))).toEqual([1, 0, 0]);
  expect(rounded(planDirection(210, 90, 0))).toEqual([0, 0, 1]);
});

test('with east up the plan, a sun in the east stands up the plan', () => {
  expect(rounded(planDirection(90, 60, 90))).toEqual([0, 0.5, rounded([Math.sqrt(0.75)])[0]]);
});
