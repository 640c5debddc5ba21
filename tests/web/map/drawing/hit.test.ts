import { expect, test } from 'vitest';
import type { Feature } from '../../../../engine/index.ts';
import { featureAt } from '../../../../web/map/drawing/hit.ts';

const bed: Feature = {
  id: 'bed',
  kind: 'bed',
  outline: [
    [2, 2],
    [8, 2],
    [8, 7],
    [2, 7],
  ],
  plantHeight: 0.5,
};
const tree: Feature = { id: 'tree', kind: 'tree', at: [5, 4], height: 5, crownWidth: 4, crownBase: 1.5, openness: 0.2 };
const pot: Feature = { id: 'pot', kind: 'plant', at: [5.5, 4.2], height: 1, spread: 0.6, container: true };
const wall: Feature = {
  id: 'wall',
  kind: 'wall',
  path: [
    [0, 0],
    [0, 9],
  ],
  height: 1.8,
  thickness: 0.2,
};
const screen: Feature = {
  id: 'screen',
  kind: 'screen',
  path: [
    [9, 1],
    [9, 4],
  ],
  height: 1.7,
  density: 0.6,
};
const all = [pot, tree, bed, wall, screen];

test('of things that lie over each other the smallest is meant', () => {
  expect(featureAt(all, [5.5, 4.2], 0.1)?.id).toBe('pot');
  expect(featureAt(all, [4, 4], 0.1)?.id).toBe('tree');
  expect(featureAt(all, [2.2, 6.8], 0.1)?.id).toBe('bed');
});

test('a thin thing is met within the pointer’s reach, and not beyond it', () => {
  expect(featureAt(all, [9.25, 2], 0.3)?.id).toBe('screen');
  expect(featureAt(all, [9.35, 2], 0.3)).toBeUndefined();
  expect(featureAt(all, [-0.35, 3], 0.3)).toBeUndefined();
  expect(featureAt(all, [-0.25, 3], 0.3)?.id).toBe('wall');
});
