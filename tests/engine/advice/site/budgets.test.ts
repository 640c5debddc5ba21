import { expect, test } from 'vitest';
import { pricesOf } from '../../../../engine/advice/site/rules/price-of.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { everyCloth, scorerOf } from './every-cloth.ts';
import { mostOf, smallPlan } from './small-plans.ts';

const REQUEST: SiteRequest = {
  kinds: ['roof', 'screen'],
  sizes: [
    { length: 1.5, width: 1.5 },
    { length: 2, width: 1 },
  ],
  heights: [1.8, 2.2],
  densities: [0.5],
  step: 0.5,
  turnStep: 90,
  keepLight: false,
};

test('for every budget the best is the best of all places that cost no more, anchors and all', () => {
  let bound = 0;
  for (const seed of [1, 4, 9, 12]) {
    const plan = smallPlan(seed);
    const prices = pricesOf(plan, { soil: 'garden' });
    const score = scorerOf(plan);
    const all = everyCloth(plan, REQUEST).map((cloth) => ({
      cost: prices.fit(cloth)?.cost ?? Infinity,
      spared: score(cloth),
    }));
    const costs = [...new Set(all.map(({ cost }) => cost))].sort((a, b) => a - b);
    for (const budget of costs.flatMap((cost) => [cost - 0.01, cost])) {
      const best = Math.max(0, ...all.filter(({ cost }) => cost <= budget).map(({ spared }) => spared));
      const { options } = valueOf(siteOf(plan, { ...REQUEST, budget, betweenSteps: false }));
      const between = valueOf(siteOf(plan, { ...REQUEST, budget })).options;
      const told = `seed ${seed}, ${budget}`;
      for (const { cost } of [...options, ...between]) expect(cost, told).toBeLessThanOrEqual(budget);
      const spared = mostOf({ options })?.spared ?? 0;
      // The exact answer is a little off what the search's tables tell.
      expect(Math.abs(spared - best), told).toBeLessThan(5e-3 * (1 + best));
      // Between the steps of the lattice it may only be better.
      expect(mostOf({ options: between })?.spared ?? 0, told).toBeGreaterThan(best - 5e-3 * (1 + best));
      if (best > 0) bound++;
    }
  }
  expect(bound).toBeGreaterThan(10);
});

test('a budget in money that no price is known in is said to bind nothing', () => {
  const plan = smallPlan(1);
  const abroad = { ...plan, stock: { ...plan.stock, currency: 'INR' } };
  const words = /The budget could not be kept: no prices are known in INR\./;
  expect(valueOf(siteOf(abroad, { ...REQUEST, budget: 1 })).sentence).toMatch(words);
  expect(valueOf(siteOf(abroad, REQUEST)).sentence).not.toMatch(words);
});
