import { expect, test } from 'vitest';
import { hidingOf } from '../../../../../engine/advice/site/rules/hiding.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Canopy, Cloth, Feature, Screen, PlanPoint } from '../../../../../engine/plan/types.ts';
import { wall } from '../../../../parts/drawn.ts';
import { yardPlan } from '../../../load/yard-plan.ts';

test('the window behind the lane yard, over most of its ground, binds nothing until somebody says so; the lane does', () => {
  const plan = demoPlan('lane');
  const hiding = hidingOf(plan);
  expect(hiding.from).toEqual(['lane']);
  expect(hiding.unbound.map(({ id }) => id)).toEqual(['upstairs']);
  expect(hidingOf(plan, ['upstairs'])).toMatchObject({ from: ['upstairs'], unbound: [] });
  expect(hidingOf(plan, [])).toMatchObject({ from: [], unbound: [] });
});

test(
  'the edge of the east house hides from the terrace above it what stands near enough, by the line of sight ' +
    'over that edge',
  () => {
    const hiding = hidingOf(demoPlan('courtyard'));
    expect(hiding.from).toEqual(['terrace']);
    // From 7.2 m, 2 m behind an edge of 5.8 m: the line falls 0.7 m a metre.
    for (const away of [1, 2, 4]) expect(hiding.heightAt([11 - away, 4])).toBeCloseTo(5.8 - 0.7 * away, 3);
    expect(hiding.heightAt([1.2, 3])).toBeLessThan(0.1);
  },
);

test('cloth is hidden only if all of its edge is: not with three corners behind the wall, nor with a gap before its middle', () => {
  const westWall = (id: string, from: number, to: number): Feature => {
    const path: PlanPoint[] = [
      [1, from],
      [1, to],
    ];
    return wall(id, path, { height: 3 });
  };
  const lane: Feature = { id: 'lane', kind: 'eye', path: [[-1, 4]], height: 1.6 };
  const plant: Feature = { id: 'pot', kind: 'plant', at: [6, 4], height: 1, spread: 0.6, plant: 'lemon' };
  const isHidden = (cloth: Cloth, ...walls: Feature[]) => hidingOf(yardPlan([plant, lane, ...walls])).isHidden(cloth);
  const roof: Canopy = { id: 'roof', kind: 'canopy', center: [3, 4], length: 3, width: 2, height: 2, density: 0.5 };
  const screen: Screen = {
    id: 'screen',
    kind: 'screen',
    path: [
      [2, 2],
      [2, 6],
    ],
    height: 1.8,
    density: 0.5,
  };
  for (const cloth of [roof, screen]) {
    expect(isHidden(cloth, westWall('whole', -20, 28))).toBe(true);
    // Past the wall's end the line runs 0.45 m sideways a metre: of what is 2 m behind it, it shows from y = 5.35 on.
    expect(isHidden(cloth, westWall('short', -20, 4.9))).toBe(false);
    expect(isHidden(cloth, westWall('one', -20, 3.9), westWall('other', 4.1, 28))).toBe(false);
  }
});
