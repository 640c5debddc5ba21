import { convex } from '@turf/convex';
import { featureCollection, point } from '@turf/helpers';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hullOf } from '../../../../engine/plan/geometry/hull.ts';
import { area, pointInRing, signedArea } from '../../../../engine/plan/geometry/shapes.ts';
import type { PlanPoint } from '../../../../engine/plan/types.ts';

const seed = 53;
const coordinate = fc.double({ min: -40, max: 60, noNaN: true });
const somePoints = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 40 });

it('a tent of points is its corners, counter-clockwise, without what lies inside or on a side', () => {
  const hull = hullOf([
    [0, 0],
    [3, 1],
    [6, 0],
    [3, 0],
    [6, 5],
    [0, 4],
    [2, 2],
  ]);
  expect(hull).toEqual([
    [0, 0],
    [6, 0],
    [6, 5],
    [0, 4],
  ]);
  expect(signedArea(hull)).toBe(27);
});

it('points have the hull that the reference library gives them (@turf/convex 7.4)', () => {
  let corners = 0;
  fc.assert(
    fc.property(somePoints, (points: PlanPoint[]) => {
      const ring = convex(featureCollection(points.map(([x, y]) => point([x, y]))))?.geometry.coordinates[0];
      fc.pre(ring !== undefined);
      const hull = hullOf(points);
      corners += hull.length;
      expect(area(hull)).toBeCloseTo(area(ring!.map(([x, y]): PlanPoint => [x, y])), 6);
      for (const at of points) expect(pointInRing(at, hull, 1e-9)).toBe(true);
    }),
    { seed, numRuns: 300 },
  );
  expect(corners).toBeGreaterThan(1000);
});
