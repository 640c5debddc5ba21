import { expect, test } from 'vitest';
import { directionsOf, isDark } from '../../../engine/cast/passes.ts';
import { buildScene } from '../../../engine/scene/build.ts';
import { emptyPlan } from './random-plans.ts';

const plan = emptyPlan([], 35);
const scene = buildScene({
  ...plan,
  site: {
    ...plan.site,
    skyline: [
      { azimuth: 100, altitude: 6 },
      { azimuth: 280, altitude: 2 },
    ],
  },
});

test('directions are unit vectors of the plan, with what the skyline hides marked', () => {
  const { x, y, z, level, dark } = directionsOf(scene, {
    count: 3,
    azimuth: Float64Array.of(125, 305, 35),
    altitude: Float64Array.of(30, 1.9, 60),
    state: new Uint16Array(3),
  });
  // Plan bearings 90, 270 and 0.
  expect([x[0], y[0], z[0]].map((value) => Number(value.toFixed(9)))).toEqual([
    Number(Math.cos(Math.PI / 6).toFixed(9)),
    0,
    0.5,
  ]);
  expect(x[1]).toBeCloseTo(-Math.cos((1.9 * Math.PI) / 180), 12);
  expect(y[2]).toBeCloseTo(0.5, 12);
  for (let k = 0; k < 3; k++) expect(Math.hypot(level[k], z[k])).toBeCloseTo(1, 12);
  expect([...dark]).toEqual([0, 1, 0]);
});

test('dark is at or below the skyline, and at or below the horizon', () => {
  expect([isDark(scene, 100, 6), isDark(scene, 100, 6.001), isDark(scene, 190, 4), isDark(scene, 190, 4.001)]).toEqual([
    true,
    false,
    true,
    false,
  ]);
  expect([isDark(buildScene(plan), 10, 0), isDark(buildScene(plan), 10, 1e-6)]).toEqual([true, false]);
});
