import { expect, test } from 'vitest';
import { payoffMap } from '../../../../engine/advice/site/payoff-map.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { smallPlan } from './small-plans.ts';

test('the payoff map adds up to what a roof over the whole yard spares, but for the sky it hides', () => {
  for (const seed of [702, 705, 711]) {
    const plan: Plan = {
      ...smallPlan(seed),
      features: smallPlan(seed).features.filter(({ kind }) => kind === 'plant'),
    };
    const { grid, perArea, most } = valueOf(payoffMap(plan, { height: 2.6, density: 0.4, cell: 0.5 }));
    const [width, length] = [grid.columns * grid.cell, grid.rows * grid.cell];
    const harm = (yard: Plan) => valueOf(harmOf(yard)).reduce((sum, each) => sum + each.worth * each.harm, 0);
    const roof = {
      id: 'r',
      kind: 'canopy',
      center: [grid.x0 + width / 2, grid.y0 + length / 2],
      length,
      width,
      height: 2.6,
      density: 0.4,
    } as const;
    const spared = harm(plan) - harm({ ...plan, features: [...plan.features, roof] });
    const mapped = perArea.reduce((sum, value) => sum + value, 0) * grid.cell ** 2;
    expect(Math.abs(mapped - spared)).toBeLessThan(0.12 * spared);
    expect(most).toBeGreaterThan(0);
  }
});
