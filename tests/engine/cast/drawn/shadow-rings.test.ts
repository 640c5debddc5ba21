import { describe, expect, test } from 'vitest';
import { shadowRingsOf } from '../../../../engine/cast/drawn/shadow-rings.ts';
import { castRay } from '../../../../engine/cast/points/ray.ts';
import { distanceToPath, pointInRing } from '../../../../engine/plan/geometry/shapes.ts';
import { buildScene, stateOf } from '../../../../engine/scene/build.ts';
import { randomFrom } from '../../../parts/random.ts';
import { randomPlan } from '../random-plans.ts';

/**
 * A round shadow has so many corners here that its outline is within a millimetre; nearer to one than this nothing is
 * asked. [m]
 */
const ASIDE = 0.002;
const MONTH_DAY = '07-01';

describe('outlines of shadows', () => {
  test('hold exactly the points that lie in the shade (random plans 501 to 540, 6,000 rays)', () => {
    const wrong: string[] = [];
    let shaded = 0;
    let asked = 0;
    for (let seed = 501; seed <= 540; seed++) {
      const random = randomFrom(seed);
      const scene = buildScene(randomPlan(seed));
      const occluders = scene.states[stateOf(scene, MONTH_DAY)];
      for (let sun = 0; sun < 6; sun++) {
        const [azimuth, altitude] = [360 * random(), 8 + 80 * random()];
        const height = sun % 2 === 0 ? 0 : 1.5 * random();
        const rings = shadowRingsOf(occluders, azimuth, altitude, scene.upBearing, height, 256);
        for (let n = 0; n < 25; n++) {
          const at = [18 * random() - 9, 14 * random() - 7] as const;
          if (rings.some((ring) => distanceToPath(at, [...ring, ring[0]]) < ASIDE)) continue;
          const inShade = castRay(scene, [...at, height], azimuth, altitude, MONTH_DAY).share < 1;
          asked += 1;
          if (inShade) shaded += 1;
          if (inShade !== rings.some((ring) => pointInRing(at, ring)))
            wrong.push(`plan ${seed}, ${at} at ${height}, azimuth ${azimuth}, altitude ${altitude}`);
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(asked).toBeGreaterThan(5_000);
    expect(shaded).toBeGreaterThan(1_000);
  });

  test('are none while the sun is down', () => {
    const scene = buildScene(randomPlan(501));
    expect(shadowRingsOf(scene.states[0], 300, -2, scene.upBearing, 0)).toEqual([]);
  });
});
