import { describe, expect, test } from 'vitest';
import { skyPasses, skyRays, skyView, skyViewGrid } from '../../../engine/cast/sky.ts';
import { buildScene } from '../../../engine/scene/build.ts';
import type { OwnCrown } from '../../../engine/scene/solids.ts';
import { turnedPlan, turnedPoint } from './plans-moved.ts';
import { emptyPlan, randomPlan } from './random-plans.ts';

const DAY = '07-01';

describe('the rays of the sky', () => {
  const { count, azimuth, altitude, weight } = skyRays();

  test('577 rays, four to each patch but the cap, weights that add up to 1', () => {
    expect(count).toBe(4 * 144 + 1);
    expect(weight.reduce((sum, each) => sum + each)).toBeCloseTo(1, 12);
    expect(altitude[count - 1]).toBe(90);
    expect(weight[count - 1]).toBeCloseTo(1 - Math.sin((84 * Math.PI) / 180) ** 2, 15);
  });

  test('a quarter of a patch to either side of its centre, 3° and 9° above its band’s foot', () => {
    const third = [...azimuth.keys()].filter((k) => altitude[k] === 27);
    expect(third).toHaveLength(48);
    expect(third.map((k) => azimuth[k]).slice(0, 3)).toEqual([356.25, 3.75, 11.25]);
    expect([...new Set(altitude)]).toEqual([3, 9, 15, 21, 27, 33, 39, 45, 51, 57, 63, 69, 75, 81, 90]);
  });

  test('are passes of one yearly state', () => {
    expect([...new Set(skyPasses(3).state)]).toEqual([3]);
  });
});

describe('sky view', () => {
  test('an empty yard sees all of it; one under opaque cloth without end, none', () => {
    expect(skyView(buildScene(emptyPlan()), [1, 2, 0.5], DAY)).toBeCloseTo(1, 12);
    const roof = buildScene(
      emptyPlan([{ id: 'c', kind: 'canopy', center: [0, 0], length: 900, width: 900, height: 3, density: 1 }]),
    );
    expect(skyView(roof, [1, 2, 0.5], DAY)).toBe(0);
  });

  test('under a wide level cloth each ray is thinned by its slant; opaque cloth hides all of them', () => {
    const under = (density: number) =>
      skyView(
        buildScene(
          emptyPlan([{ id: 'c', kind: 'canopy', center: [0, 0], length: 900, width: 900, height: 2.6, density }]),
        ),
        [0.2, 0.3, 0.5],
        DAY,
      );
    const { altitude, weight } = skyRays();
    const thinned = weight.reduce(
      (sum, each, k) => sum + each * 0.65 ** (1 / Math.max(Math.sin((altitude[k] * Math.PI) / 180), 0.26)),
      0,
    );
    expect(under(1)).toBeCloseTo(0, 12);
    // What passes at a slant comes from a table of e^−x, right to 1e-11.
    expect(under(0.35)).toBeCloseTo(thinned, 10);
    expect(under(0)).toBeCloseTo(1, 12);
  });

  test('turning the scene by 60° changes nothing: 30, 24, 18, 12 and 6 patches all repeat', () => {
    for (const seed of [5, 6, 7, 8]) {
      const plan = { ...randomPlan(seed), site: emptyPlan().site };
      const turned = { ...turnedPlan(plan, 60), site: plan.site };
      const [x, y] = turnedPoint([0.31, -0.47], 60);
      expect(skyView(buildScene(turned), [x, y, 0.4], DAY)).toBeCloseTo(
        skyView(buildScene(plan), [0.31, -0.47, 0.4], DAY),
        9,
      );
    }
  });

  test('the skyline hides the rays at or below it', () => {
    const plan = emptyPlan();
    const ring = (height: number) =>
      buildScene({ ...plan, site: { ...plan.site, skyline: [{ azimuth: 77, altitude: height }] } });
    const { altitude, weight } = skyRays();
    const above = (height: number) => weight.reduce((sum, each, k) => sum + (altitude[k] > height ? each : 0), 0);
    for (const height of [2, 9, 21.5]) expect(skyView(ring(height), [0, 0, 0], DAY)).toBeCloseTo(above(height), 12);
  });

  test('a plant’s own crown hides half the sky of a point on its flank', () => {
    const own: OwnCrown = { of: 'p', kind: 'column', x: 0, y: 0, radius: 40, base: 0, top: 400, openness: 0 };
    expect(skyView(buildScene(emptyPlan()), [40.01, 0, 1], DAY, own)).toBeCloseTo(0.5, 1);
  });

  test('of a grid is that of its cells’ centres', () => {
    for (const seed of [11, 12, 13]) {
      const scene = buildScene(randomPlan(seed));
      const grid = { x0: -6.1, y0: -5.3, cell: 1.9, columns: 6, rows: 5, height: 0.7 };
      const view = skyViewGrid(scene, grid, DAY);
      view.forEach((value, index) => {
        const x = grid.x0 + ((index % 6) + 0.5) * 1.9;
        const y = grid.y0 + (Math.floor(index / 6) + 0.5) * 1.9;
        expect(value).toBeCloseTo(skyView(scene, [x, y, 0.7], DAY), 9);
      });
    }
  });

  test('trees without leaves and cloth that is down let the sky in', () => {
    const scene = buildScene(
      emptyPlan([
        {
          id: 'c',
          kind: 'canopy',
          center: [0, 0],
          length: 5,
          width: 5,
          height: 3,
          density: 0.5,
          up: { from: '05-01', to: '09-30' },
        },
        {
          id: 't',
          kind: 'tree',
          at: [0, 1],
          height: 6,
          crownWidth: 5,
          crownBase: 2,
          openness: 0.1,
          leafless: { from: '11-01', to: '03-01', openness: 0.9 },
        },
      ]),
    );
    const [summer, autumn, winter] = ['07-01', '10-15', '01-10'].map((day) => skyView(scene, [0, 0, 0.5], day));
    expect(summer).toBeLessThan(autumn - 0.05);
    expect(autumn).toBeLessThan(winter - 0.05);
  });
});
