import { expect, it } from 'vitest';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { deleteCorner, insertCorner, moveCorner } from '../../../../engine/plan/edit/corners.ts';
import { changeFeature, featureOf } from '../../../../engine/plan/edit/edit-feature.ts';
import type { Bed, Eye, Wall } from '../../../../engine/plan/types.ts';

const plan = demoPlan('lane');
const fence = { feature: 'west-fence' };

it('a corner goes in, moves, and goes out again', () => {
  const bent = insertCorner(plan, fence, 1, [0.4, 11]);
  expect((featureOf(bent, 'west-fence') as Wall).path).toEqual([
    [0, 0],
    [0.4, 11],
    [0, 22],
  ]);
  const moved = moveCorner(bent, fence, 1, [0.6, 12]);
  expect((featureOf(moved, 'west-fence') as Wall).path[1]).toEqual([0.6, 12]);
  expect(featureOf(deleteCorner(moved, fence, 1), 'west-fence')).toEqual(featureOf(plan, 'west-fence'));
});

it('a closed outline stays closed', () => {
  const closed = changeFeature(plan, 'tomatoes-1', {
    outline: [
      [6, 8],
      [9, 8],
      [9, 9.2],
      [6, 9.2],
      [6, 8],
    ],
  });
  const whose = { feature: 'tomatoes-1' };
  expect((featureOf(moveCorner(closed, whose, 4, [5.5, 7.5]), 'tomatoes-1') as Bed).outline).toEqual([
    [5.5, 7.5],
    [9, 8],
    [9, 9.2],
    [6, 9.2],
    [5.5, 7.5],
  ]);
  expect((featureOf(deleteCorner(closed, whose, 0), 'tomatoes-1') as Bed).outline).toEqual([
    [9, 8],
    [9, 9.2],
    [6, 9.2],
    [9, 8],
  ]);
});

it('what would leave too little, or is not there, changes nothing', () => {
  expect(deleteCorner(plan, fence, 0)).toBe(plan);
  expect(deleteCorner(plan, { feature: 'upstairs' }, 0)).toBe(plan);
  expect(moveCorner(plan, fence, 7, [1, 1])).toBe(plan);
  expect(moveCorner(plan, { feature: 'gum' }, 0, [1, 1])).toBe(plan);
  expect((featureOf(insertCorner(plan, { feature: 'upstairs' }, 1, [9, 34]), 'upstairs') as Eye).path).toHaveLength(2);
});

it('the boundary has corners too', () => {
  const next = moveCorner(plan, 'boundary', 2, [17, 23]);
  expect(next.site.boundary[2]).toEqual([17, 23]);
  expect(next.features).toBe(plan.features);
  expect(deleteCorner(deleteCorner(next, 'boundary', 0), 'boundary', 0).site.boundary).toHaveLength(3);
});
