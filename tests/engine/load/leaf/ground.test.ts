import { expect, test } from 'vitest';
import { groundRise } from '../../../../engine/load/leaf/ground.ts';
import type { Feature, Plan, Surface } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { yardPlan } from '../yard-plan.ts';

const patch = (id: string, surface: Surface, from: number, to: number): Feature => ({
  id,
  kind: 'ground',
  surface,
  outline: [
    [from, 0],
    [to, 0],
    [to, 4],
    [from, 4],
  ],
});
const rise = (plan: Plan, x: number) => groundRise(buildScene(plan), [x, 2, 0.7]);

test('ground warms by what lies there: nobody said, the yard’s own, and of areas that overlap the last drawn', () => {
  const areas = [patch('path', 'paving', 1, 3), patch('bed', 'mulch', 2, 5)];
  const plan = yardPlan(areas);
  expect(rise(plan, 6)).toBe(18);
  expect(rise({ ...plan, site: { ...plan.site, surface: 'lawn' } }, 6)).toBe(6);
  expect(rise(plan, 1.5)).toBe(18);
  expect(rise(plan, 2.5)).toBe(36);
  expect(rise(yardPlan([...areas].reverse()), 2.5)).toBe(18);
  expect(rise(yardPlan([patch('a', 'soil', 0, 9)]), 4)).toBe(26);
  expect(rise(yardPlan([patch('a', 'gravel', 0, 9)]), 4)).toBe(22);
});
