import { expect, test } from 'vitest';
import { bedPlaces } from '../../../../engine/load/verdict/bed-load.ts';
import type { Bed } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../yard-plan.ts';

const bedOf = (length: number, width: number): Bed => ({
  id: 'bed',
  kind: 'bed',
  outline: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  plantHeight: 0.5,
});

test('a bed is judged at its cells of 0.1 m, one of more than 200 m² at as many as such a bed has', () => {
  const cellsOf = (length: number, width: number) => {
    const site = {
      ...yardPlan().site,
      boundary: [
        [0, 0],
        [199, 0],
        [199, 20],
        [0, 20],
      ] as const,
    };
    const places = bedPlaces(yardPlan([], { site }), bedOf(length, width));
    if ('point' in places) throw new Error('no cells');
    return { cell: places.grid.cell, count: places.indices.length };
  };
  expect(cellsOf(6, 1.2)).toEqual({ cell: 0.1, count: 720 });
  expect(cellsOf(19.9, 10)).toEqual({ cell: 0.1, count: 19_900 });
  const huge = cellsOf(199, 9);
  expect(huge.cell).toBeCloseTo(0.3, 12);
  expect(huge.count).toBeGreaterThan(19_000);
  expect(huge.count).toBeLessThan(20_500);
});
