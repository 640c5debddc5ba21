import { expect, test } from 'vitest';
import { buildScene, castRay, demoPlan, pointInRing, stateOf, withOptions } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { shadowRingsOf } from '../../../web/map/shadow-rings.ts';

const MONTH_DAY = '07-21';

/** Distance within which a point is too near an outline to tell. [m] */
const NEAR = 0.06;

for (const name of ['courtyard', 'lane'] as const) {
  test(`in the ${name} a spot lies in a drawn shadow where a beam cast at it is cut, and in no shadow where none is`, () => {
    const bare = demoPlan(name);
    const built = withOptions(bare, (bare.options ?? []).slice(0, 1).map(({ id }) => id));
    const plan = built.ok ? built.plan : bare;
    const scene = buildScene(plan);
    let shaded = 0;
    let lit = 0;
    for (const [azimuth, altitude] of [[97.3, 31], [188, 71], [263.5, 44], [281, 12.5], [351, 58]]) {
      for (const height of [0, 0.5, 1.7]) {
        const rings = shadowRingsOf(scene.states[stateOf(scene, MONTH_DAY)], azimuth, altitude, scene.upBearing, height);
        const within = (x: number, y: number): boolean => rings.some((ring) => ring.length > 2 && pointInRing([x, y], ring));
        for (let k = 0; k < 260; k++) {
          const at: PlanPoint = [((k * 0.618034) % 1) * 18 - 1, ((k * 0.754878) % 1) * 22 - 0.5];
          const drawn = within(...at);
          const around = [[NEAR, 0], [-NEAR, 0], [0, NEAR], [0, -NEAR]].every(([dx, dy]) => within(at[0] + dx, at[1] + dy) === drawn);
          if (!around) continue;
          const { blockers } = castRay(scene, [...at, height], azimuth, altitude, MONTH_DAY);
          expect(blockers.some(({ id }) => id !== 'skyline'), `${at} at ${height} m, sun ${azimuth}° ${altitude}°`).toBe(drawn);
          if (drawn) shaded++;
          else lit++;
        }
      }
    }
    expect(Math.min(shaded, lit)).toBeGreaterThan(300);
  });
}

test('while the sun is down nothing throws a shadow', () => {
  const scene = buildScene(demoPlan('courtyard'));
  expect(shadowRingsOf(scene.states[0], 300, -2, scene.upBearing, 0)).toEqual([]);
});
