import { describe, expect, test } from 'vitest';
import type { Passes } from '../../../../engine/cast/passes.ts';
import { createPointCaster } from '../../../../engine/cast/points/point-caster.ts';
import { castRay } from '../../../../engine/cast/points/ray.ts';
import type { Canopy, Feature } from '../../../../engine/plan/types.ts';
import { buildScene, clothSheets, stateOf } from '../../../../engine/scene/build.ts';
import type { OwnCrown } from '../../../../engine/scene/solids.ts';
import { randomFrom } from '../../../parts/random.ts';
import { emptyPlan, randomPlan } from '../random-plans.ts';

const DAYS = ['01-10', '05-01', '07-01', '08-20', '12-01'];

describe('sharesAt', () => {
  test('gives each pass what castRay gives it (random plans 301 to 420, 120,000 rays)', () => {
    const wrong: string[] = [];
    let shaded = 0;
    for (let seed = 301; seed <= 420; seed++) {
      const random = randomFrom(seed);
      const scene = buildScene(randomPlan(seed));
      const monthDays = Array.from({ length: 100 }, (_, k) => DAYS[k % DAYS.length]);
      const passes: Passes = {
        count: 100,
        azimuth: Float64Array.from(monthDays, () => 360 * random()),
        altitude: Float64Array.from(monthDays, () => 90 * random() ** 2 + 0.01),
        state: Uint16Array.from(monthDays, (monthDay) => stateOf(scene, monthDay)),
      };
      const caster = createPointCaster(scene, passes);
      for (let n = 0; n < 10; n++) {
        const point = [18 * random() - 9, 14 * random() - 7, 3 * random()] as const;
        const shares = caster.sharesAt(point);
        shares.forEach((share, k) => {
          const ray = castRay(scene, point, passes.azimuth[k], passes.altitude[k], monthDays[k]).share;
          if (ray < 1) shaded++;
          if (Math.abs(ray - share) > 1e-9)
            wrong.push(
              `plan ${seed}, ${point}, azimuth ${passes.azimuth[k]}, altitude ${passes.altitude[k]}: ray ${ray}, ` +
                `point ${share}`,
            );
        });
      }
    }
    expect(wrong).toEqual([]);
    expect(shaded).toBeGreaterThan(20_000);
  });

  test('a plant’s own crown is in the way of its own points alone', () => {
    const scene = buildScene(
      emptyPlan([
        {
          id: 's',
          kind: 'screen',
          path: [
            [-3, -2],
            [3, -2],
          ],
          height: 4,
          density: 0.3,
        },
      ]),
    );
    const passes: Passes = {
      count: 2,
      azimuth: Float64Array.of(180, 0),
      altitude: Float64Array.of(25, 25),
      state: new Uint16Array(2),
    };
    const own: OwnCrown = { of: 'p', kind: 'round', x: 0, y: 0, radius: 0.5, base: 0.3, top: 1.4, openness: 0 };
    const caster = createPointCaster(scene, passes);
    const slanted = expect.closeTo(0.7 ** (1 / Math.cos((25 * Math.PI) / 180)), 10);
    expect([...caster.sharesAt([0, 0.51, 0.85], own)]).toEqual([0, 1]);
    expect([...caster.sharesAt([0, -0.51, 0.85], own)]).toEqual([slanted, 0]);
    expect([...caster.sharesAt([0, 0.51, 0.85])]).toEqual([slanted, 1]);
  });

  test('cloth that is tried dims a point’s shares like cloth that is drawn', () => {
    const wall: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [-5, -3],
        [5, -3],
      ],
      height: 2.4,
      thickness: 0.3,
      openness: 0.2,
    };
    const canopy: Canopy = {
      id: 'c',
      kind: 'canopy',
      center: [0.3, -0.8],
      length: 2.5,
      width: 3,
      turn: 17,
      height: 2.3,
      density: 0.55,
      drops: [{ side: 'back', depth: 1, density: 0.4 }],
    };
    const count = 300;
    const passes: Passes = {
      count,
      azimuth: Float64Array.from({ length: count }, (_, k) => 100 + 0.5 * k),
      altitude: Float64Array.from({ length: count }, (_, k) => 5 + ((k * 7) % 80)),
      state: new Uint16Array(count),
    };
    const hangs = Uint8Array.from({ length: count }, (_, k) => (k % 3 === 0 ? 0 : 1));
    const point = [0.2, 0.1, 0.6] as const;
    const caster = createPointCaster(buildScene(emptyPlan([wall])), passes);
    const tried = caster.sharesAt(point);
    caster.dim(point, clothSheets(canopy), tried, hangs);
    const bare = caster.sharesAt(point);
    const drawn = createPointCaster(buildScene(emptyPlan([wall, canopy])), passes).sharesAt(point);
    expect([...tried].map((share) => share.toFixed(12))).toEqual(
      [...drawn].map((share, k) => (hangs[k] === 1 ? share : bare[k]).toFixed(12)),
    );
    expect(new Set([...drawn].map((share) => share.toFixed(3))).size).toBeGreaterThanOrEqual(5);
  });

  test('writes into the array it is given', () => {
    const caster = createPointCaster(buildScene(emptyPlan()), {
      count: 3,
      azimuth: Float64Array.of(10, 20, 30),
      altitude: Float64Array.of(5, -1, 50),
      state: new Uint16Array(3),
    });
    const into = new Float64Array(3).fill(9);
    expect(caster.sharesAt([0, 0, 0], undefined, into)).toBe(into);
    expect([...into]).toEqual([1, 0, 1]);
  });
});
