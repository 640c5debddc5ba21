import { expect, test } from 'vitest';
import { nearWall } from '../../../../engine/load/verdict/near-wall.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { valueOf, yardPlan } from '../yard-plan.ts';

/** Runs north to south at x = 3, so that it has an east and a west face. */
const WALL: Feature = {
  id: 'wall',
  kind: 'wall',
  path: [
    [3, 0],
    [3, 8],
  ],
  height: 2.4,
  thickness: 0.2,
};
const at = (x: number, features: readonly Feature[] = [WALL], radius = 0) =>
  valueOf(nearWall(yardPlan(features), [x, 4], radius, { kind: 'heatwave' }));

test('the east face has the morning and the west face the afternoon, whose air is hotter', () => {
  const east = at(3.6);
  const west = at(2.4);
  expect(east?.distance).toBeCloseTo(0.5, 9);
  // A day of sun is shared out between two faces back to back, all but the minutes in which it stands in line with
  // them.
  expect((east?.sunHours ?? 0) + (west?.sunHours ?? 0)).toBeGreaterThan(10);
  expect(Math.abs((east?.sunHours ?? 0) - (west?.sunHours ?? 0))).toBeLessThan(1.5);
  expect(west?.hotHours).toBeGreaterThan(1.5 * (east?.hotHours ?? 0));
});

test('a low wall lets the sun over it, but its face is not lit from behind', () => {
  const low = (x: number): number => at(x, [{ ...WALL, height: 0.4 }])?.sunHours ?? 0;
  const day = low(3.6) + low(2.4);
  expect(day).toBeGreaterThan(12);
  // 33.4° north: the longest day has 14.3 hours.
  expect(day).toBeLessThan(14.4);
});

test('a face farther off than a metre is not told of, unless the plant reaches nearer; nor is one in the shade', () => {
  expect(at(4.3)).toBeNull();
  expect(at(4.3, [WALL], 0.4)?.distance).toBeCloseTo(0.8, 9);
  const roof: Feature = { id: 'roof', kind: 'canopy', center: [3, 4], length: 60, width: 60, height: 3, density: 1 };
  expect(at(3.6, [WALL, roof])).toBeNull();
});
