import { expect, test } from 'vitest';
import { pricesOf } from '../../../../../engine/advice/site/rules/price-of.ts';
import { frameFitter } from '../../../../../engine/frame/fit-frame.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Canopy } from '../../../../../engine/plan/types.ts';

/** Small ones, over the whole yard; every other one has a drop. */
const ROOFS = Array.from({ length: 40 }, (_, k): Canopy => ({
  id: 'tried',
  kind: 'canopy',
  center: [1 + 1.5 * (k % 8), 1 + 2 * Math.floor(k / 8)],
  length: 2,
  width: 1.5,
  turn: 15 * (k % 6),
  height: 2.2,
  density: 0.5,
  ...(k % 2 === 0 ? {} : { drops: [{ side: 'front', depth: 0.8, density: 0.5 }] }),
}));

test.each(['courtyard', 'lane'] as const)('the price of a form is that of its frame where it stands: %s', (name) => {
  const plan = demoPlan(name);
  // A gust at which it tells whether a wall near by catches the wind.
  const footing = { soil: 'garden', gust: 35 } as const;
  const here = frameFitter(plan, footing);
  const prices = pricesOf(plan, footing);
  const told = ROOFS.map((roof) => prices.fit(roof)?.cost);
  expect(told).toEqual(ROOFS.map((roof) => here(roof)?.cost));
  // In the open, over a wall, and with a drop.
  expect(new Set(told).size).toBe(3);
  for (const roof of ROOFS)
    expect(prices.fitInTheOpen(roof)?.cost).toBeLessThanOrEqual(prices.fit(roof)?.cost ?? Infinity);
});
