import { expect, test } from 'vitest';
import { cellCenter } from '../../../engine/load/light/grid-of.ts';
import { spotOf } from '../../../engine/load/light/spot-of.ts';
import { loadOf } from '../../../engine/load/load-of.ts';
import type { Feature } from '../../../engine/plan/types.ts';
import { valueOf } from '../../parts/outcome.ts';
import { yardPlan } from './yard-plan.ts';

/** Hundreds of edges begin in one row of the grid: trellises on each other, and a wood. */
const MANY: readonly Feature[] = [
  ...Array.from({ length: 90 }, (_, k): Feature => ({
    id: `trellis-${k}`,
    kind: 'hedge',
    path: [
      [1 + (k % 7) / 10, 2],
      [6, 2 + (k % 5) / 100],
    ],
    height: 1.5 + (k % 3) / 4,
    thickness: 0.1,
    openness: 0.97,
  })),
  ...Array.from({ length: 60 }, (_, k): Feature => ({
    id: `tree-${k}`,
    kind: 'tree',
    at: [7 + (k % 10) / 2, 3.31 + Math.floor(k / 10) / 2],
    height: 3 + (k % 4) / 4,
    crownWidth: 0.9,
    crownBase: 1,
    openness: 0.8,
  })),
];

test('a yard crowded with things is graded cell by cell as its spots are', () => {
  const plan = yardPlan(MANY);
  const period = { kind: 'day', date: '06-21' } as const;
  const { grid, cells } = valueOf(loadOf(plan, { period, cell: 0.5 }));
  for (let index = 3; index < cells.hotLoad.length; index += 29) {
    const spot = valueOf(spotOf(plan, cellCenter(grid, index), { period }));
    if (spot.date === null) throw new Error('not a day');
    expect(cells.hotLoad[index], `cell ${index}`).toBeCloseTo(spot.day.hotLoad, 6);
  }
});
