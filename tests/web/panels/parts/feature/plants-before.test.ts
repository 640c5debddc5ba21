import { expect, test } from 'vitest';
import type { Feature, FeatureOf } from '../../../../../engine/index.ts';
import { hasPlantsBefore } from '../../../../../web/panels/parts/feature/plants-before.ts';

const wall: FeatureOf<'wall'> = {
  kind: 'wall',
  id: 'w',
  path: [
    [0, 0],
    [6, 0],
  ],
  height: 2,
  thickness: 0.4,
};
const house: FeatureOf<'building'> = {
  kind: 'building',
  id: 'h',
  outline: [
    [0, 0],
    [6, 0],
    [6, -3],
    [0, -3],
  ],
  height: 4,
};
const pot = (y: number): Feature => ({ kind: 'plant', id: 'p', at: [5, y], height: 1, spread: 0.5 });

test('a colour is asked where a plant stands within 2 m of the wall’s side', () => {
  expect([2.1, 2.3].map((y) => hasPlantsBefore(wall, [pot(y)]))).toEqual([true, false]);
  expect([1.9, 2.1].map((y) => hasPlantsBefore(house, [pot(y)]))).toEqual([true, false]);
  expect(hasPlantsBefore(house, [wall, house])).toBe(false);
});

test('a long bed before a short wall counts, though all its corners are far', () => {
  const bed = (y: number): Feature => ({
    kind: 'bed',
    id: 'b',
    plantHeight: 0.4,
    outline: [
      [-20, y],
      [20, y],
      [20, y + 1],
      [-20, y + 1],
    ],
  });
  expect([1.5, 2.5].map((y) => hasPlantsBefore(wall, [bed(y)]))).toEqual([true, false]);
});
