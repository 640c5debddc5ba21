/** Lengths, angles and places of shadows against published definitions and values. */

import { describe, expect, test } from 'vitest';
import { castGrid } from '../../engine/cast/grids/cast-grid.ts';
import { castRay } from '../../engine/cast/points/ray.ts';
import type { Feature } from '../../engine/plan/types.ts';
import { buildScene } from '../../engine/scene/build.ts';
import { planDirection } from '../../engine/scene/direction.ts';
import { emptyPlan } from '../engine/cast/random-plans.ts';
import { COTANGENTS } from './cotangents.ts';

const DAY = '07-01';
const DEGREES = 180 / Math.PI;

/** The distance, between two at which the sun reaches a point and does not, where that changes. [m] */
function edgeBetween(dark: number, lit: number, isLit: (at: number) => boolean): number {
  expect([isLit(dark), isLit(lit)]).toEqual([false, true]);
  for (let n = 0; n < 60; n++) {
    const middle = (dark + lit) / 2;
    if (isLit(middle)) lit = middle;
    else dark = middle;
  }
  return (dark + lit) / 2;
}

describe('a wall 1 m high throws cot(altitude) metres of shade', () => {
  const scene = buildScene(
    emptyPlan(
      [
        {
          id: 'w',
          kind: 'wall',
          path: [
            [-30, 0],
            [30, 0],
          ],
          height: 1,
          thickness: 0.2,
        },
      ],
      40,
    ),
  );

  test.each(COTANGENTS)('%d°: %d m', (altitude, length) => {
    // Sun square to the wall (plan bearing 180); the far face stands 0.1 m up the plan.
    const end = edgeBetween(0.1001, 20, (y) => castRay(scene, [0, y, 0], 220, altitude, DAY).share === 1);
    expect(Math.abs(end - 0.1 - length)).toBeLessThan(1e-4);
  });
});

/**
 * Shadow angles of a façade: HSA = azimuth − bearing of the wall's outward normal, tan VSA = tan(altitude)/cos(HSA)
 * (vertical shadow or profile angle: IES Lighting Library; HSA and VSA: Wenham et al., Applied Photovoltaics, app. B,
 * after Szokolay). Shade height = depth of overhang · tan VSA, shade width = depth of fin · |tan HSA| (ASHRAE Handbook
 * Fundamentals, Fenestration; from memory). Values computed from these.
 */
const FACADES: [altitude: number, azimuth: number, faces: number, vsa: number, height: number, width: number][] = [
  [60, 230, 180, 69.6394, 2.6946, 1.1918],
  [45, 210, 180, 49.1066, 1.1547, 0.5774],
  [35, 270, 225, 44.7191, 0.9902, 1],
  [70, 180, 180, 70, 2.7475, 0],
  [40, 330, 0, 44.0953, 0.9689, 0.5774],
];

describe('overhang and fin on a façade', () => {
  test.each(FACADES)(
    'altitude %d°, azimuth %d°, wall faces %d°: VSA %d°, shade %d m down, %d m along per metre',
    (altitude, azimuth, faces, vsa, height, width) => {
      // The plan's +y is the façade's outward normal; the façade is the plane y = 0.
      const overhang = buildScene(
        emptyPlan([{ id: 'o', kind: 'canopy', center: [0, 0.5], length: 1, width: 200, height: 5, density: 1 }], faces),
      );
      const down = edgeBetween(
        0.001,
        4.9,
        (depth) => castRay(overhang, [0, 0, 5 - depth], azimuth, altitude, DAY).share === 1,
      );
      expect(Math.abs(down - height)).toBeLessThan(1e-4);
      expect(Math.abs(Math.atan(down) * DEGREES - vsa)).toBeLessThan(0.002);
      if (width === 0) return;
      const fin = buildScene(
        emptyPlan(
          [
            {
              id: 'f',
              kind: 'screen',
              path: [
                [0, 0],
                [0, 1],
              ],
              height: 100,
              density: 1,
            },
          ],
          faces,
        ),
      );
      // Shade falls on the side away from the sun.
      const away = planDirection(azimuth, altitude, faces)[0] > 0 ? -1 : 1;
      const along = edgeBetween(0.001, 20, (x) => castRay(fin, [away * x, 0, 1], azimuth, altitude, DAY).share === 1);
      expect(Math.abs(along - width)).toBeLessThan(1e-4);
    },
  );

  test('an overhang half as deep as the window is high shades all of it from VSA 63.435° on (projection factor 0.5)', () => {
    const overhang = buildScene(
      emptyPlan([{ id: 'o', kind: 'canopy', center: [0, 0.4], length: 0.8, width: 200, height: 2.5, density: 1 }], 180),
    );
    const sill = (altitude: number) => castRay(overhang, [0, 0, 2.5 - 1.6], 180, altitude, DAY).share;
    expect([sill(63.43), sill(63.44)]).toEqual([1, 0]);
  });
});

/**
 * The sun's zenith projected on the plane across a slope of 9.666° towards 195°: Anderson K., Mikofski M. (2020),
 * Slope-Aware Backtracking for Single-Axis Trackers, NREL, doi 10.2172/1660126, as kept in the tests of pvlib-python
 * (test_shading.py). Holds `planDirection` to a published rotation of azimuth, altitude and a turned frame.
 */
test.each([
  [2.404287, 122.79177, -84.44],
  [11.263058, 133.288729, -72.604],
  [24.109076, 158.939435, -45.578],
  [26.810735, 173.931802, -28.764],
  [23.170447, 204.13681, 15.12],
  [9.461862, 229.102218, 61.587],
])('sun at altitude %d°, azimuth %d°: projected zenith %d°', (altitude, azimuth, projected) => {
  const [across, downhill, up] = planDirection(azimuth, altitude, 195);
  const slope = 9.666 / DEGREES;
  const zenith = Math.atan2(across, up * Math.cos(slope) + downhill * Math.sin(slope)) * DEGREES;
  expect(Math.abs(zenith - projected)).toBeLessThan(1e-3);
});

/** A level canopy h above a plane throws its own shape, moved by h·cot(altitude) away from the sun (closed form). */
describe('the shadow of a level canopy', () => {
  test.each([
    [2.2, 45, 180, 0, 2.2],
    [2.2, 60, 240, 1.1, 0.6351],
    [2.2, 30, 270, 3.8105, 0],
    [2, 50, 0, 0, -1.6782],
  ])(
    '%d m up, sun at altitude %d°, azimuth %d°: moved %d m east, %d m north',
    (height, altitude, azimuth, east, north) => {
      const features: Feature[] = [
        { id: 'c', kind: 'canopy', center: [1, -0.5], length: 1.3, width: 0.9, height: height + 0.5, density: 1 },
      ];
      const grid = { x0: -3, y0: -5, cell: 0.02, columns: 500, rows: 450, height: 0.5 };
      const passes = {
        count: 1,
        azimuth: Float64Array.of(azimuth),
        altitude: Float64Array.of(altitude),
        state: new Uint16Array(1),
      };
      const [sun] = castGrid(buildScene(emptyPlan(features)), grid, passes, [Float64Array.of(1)]);
      let cells = 0;
      let sumX = 0;
      let sumY = 0;
      sun.forEach((value, index) => {
        if (value > 0.5) return;
        cells++;
        sumX += grid.x0 + ((index % 500) + 0.5) * grid.cell;
        sumY += grid.y0 + (Math.floor(index / 500) + 0.5) * grid.cell;
      });
      // To half a cell of 0.02 m.
      expect(Math.abs(cells * grid.cell ** 2 - 1.3 * 0.9)).toBeLessThan(0.05);
      expect(Math.abs(sumX / cells - 1 - east)).toBeLessThan(0.011);
      expect(Math.abs(sumY / cells + 0.5 - north)).toBeLessThan(0.011);
      // And by rays to the millimetre: the shade's near edge along x, and along y.
      const scene = buildScene(emptyPlan(features));
      const lit = (x: number, y: number) => castRay(scene, [x, y, 0.5], azimuth, altitude, DAY).share === 1;
      const rightEdge = edgeBetween(1 + east, 1 + east + 2, (x) => lit(x, -0.5 + north));
      const topEdge = edgeBetween(-0.5 + north, -0.5 + north + 2, (y) => lit(1 + east, y));
      expect(Math.abs(rightEdge - 0.45 - 1 - east)).toBeLessThan(1e-3);
      expect(Math.abs(topEdge - 0.65 + 0.5 - north)).toBeLessThan(1e-3);
    },
  );
});
