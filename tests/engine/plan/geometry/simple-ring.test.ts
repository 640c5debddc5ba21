import { polygon } from '@turf/helpers';
import { kinks } from '@turf/kinks';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { onOneLine, selfMeeting } from '../../../../engine/plan/geometry/simple-ring.ts';
import type { PlanPoint } from '../../../../engine/plan/types.ts';

const seed = 31;
const anyCorners = fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })), {
  minLength: 4,
  maxLength: 7,
});

it('a bow-tie meets itself in its middle', () => {
  expect(
    selfMeeting([
      [0, 0],
      [4, 3],
      [4, 0],
      [0, 3],
    ]),
  ).toEqual([2, 1.5]);
});

it('a concave house is simple, also with its first corner repeated', () => {
  const house: PlanPoint[] = [
    [0, 0],
    [6, 0],
    [6, 4],
    [3, 4],
    [3, 2],
    [0, 2],
  ];
  expect(selfMeeting(house)).toBeNull();
  expect(selfMeeting([...house, house[0]])).toBeNull();
});

it('a corner on another edge, a corner visited twice and an edge that runs back are not simple', () => {
  expect(
    selfMeeting([
      [0, 0],
      [6, 0],
      [6, 4],
      [3, 0],
      [0, 4],
    ]),
  ).toEqual([3, 0]);
  expect(
    selfMeeting([
      [0, 0],
      [2, 0],
      [1, 1],
      [2, 2],
      [0, 2],
      [1, 1],
    ]),
  ).toEqual([1, 1]);
  expect(
    selfMeeting([
      [0, 0],
      [5, 0],
      [3, 0],
      [3, 3],
    ]),
  ).not.toBeNull();
});

it('whatever the reference library calls a crossing is one here (@turf/kinks 7.4)', () => {
  let crossings = 0;
  fc.assert(
    fc.property(anyCorners, (corners) => {
      const distinct = corners.filter(([x, y], i) => corners.findIndex(([a, b]) => a === x && b === y) === i);
      fc.pre(distinct.length >= 4 && !onOneLine(distinct));
      if (kinks(polygon([[...distinct, distinct[0]]])).features.length === 0) return;
      crossings++;
      expect(selfMeeting(distinct)).not.toBeNull();
    }),
    { seed, numRuns: 400 },
  );
  expect(crossings).toBeGreaterThan(100);
});

it('star-shaped rings are simple', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 1, max: 40, noNaN: true }), { minLength: 3, maxLength: 30 }), (radii) => {
      const ring = radii.map((radius, k): PlanPoint => [
        radius * Math.cos((2 * Math.PI * k) / radii.length),
        radius * Math.sin((2 * Math.PI * k) / radii.length),
      ]);
      expect(selfMeeting(ring)).toBeNull();
      expect(onOneLine(ring)).toBe(false);
    }),
    { seed },
  );
});

it('three corners on a slanted line enclose nothing', () => {
  expect(
    onOneLine([
      [0.1, 0.1],
      [0.2, 0.2],
      [0.7, 0.7],
    ]),
  ).toBe(true);
});
