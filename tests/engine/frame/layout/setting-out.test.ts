import { expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import type { Canopy, Feature } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const HOUSE: Feature = {
  id: 'house',
  kind: 'building',
  outline: [
    [3, 0],
    [7, 0],
    [7, 1],
    [3, 1],
  ],
  height: 3,
};
const ROOF: Canopy = { id: 'roof', kind: 'canopy', center: [5, 4], length: 2, width: 2.4, height: 2.2, density: 0.5 };
/** Between the house and the roof. */
const WALL: Feature = {
  id: 'wall',
  kind: 'wall',
  path: [
    [1, 2],
    [9, 2],
  ],
  height: 1,
  thickness: 0.1,
};

function measuredFrom(...features: Feature[]): (readonly number[])[] {
  const result = sheetOf(yardPlan([...features, ROOF]), 'roof');
  mustBeOk(result);
  return result.sheet.settingOut.fixed.map(({ at }) => at).toSorted((a, b) => a[0] - b[0]);
}

test('posts are measured from the house’s near corners, and where a wall would stop the tapes, from the wall’s ends', () => {
  expect(measuredFrom(HOUSE)).toEqual([
    [3, 1],
    [7, 1],
  ]);
  expect(measuredFrom(HOUSE, WALL)).toEqual([
    [1, 2],
    [9, 2],
  ]);
});
