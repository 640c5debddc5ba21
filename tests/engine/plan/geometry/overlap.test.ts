import { featureCollection, polygon } from '@turf/helpers';
import { intersect } from '@turf/intersect';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sharesMoreThan } from '../../../../engine/plan/geometry/overlap.ts';
import { area } from '../../../../engine/plan/geometry/shapes.ts';
import { selfMeeting } from '../../../../engine/plan/geometry/turf.ts';
import type { PlanPoint } from '../../../../engine/plan/types.ts';

const house: PlanPoint[] = [
  [0, 0],
  [6, 0],
  [6, 4],
  [3, 4],
  [3, 2],
  [0, 2],
];
const seed = 47;
const corners = fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })), {
  minLength: 3,
  maxLength: 8,
});
const outline = corners.filter((ring) => area(ring) > 0.5 && selfMeeting(ring) === null);

it('a shed shares with a house what lies in both, whichever way round and wherever the outlines begin', () => {
  const shed: PlanPoint[] = [
    [2, 1],
    [5, 1],
    [5, 3],
    [2, 3],
  ];
  // 3 × 1 m below the inner corner, 2 × 1 m beside it.
  for (const ring of [shed, [...shed].reverse(), [...shed, shed[0]]]) {
    expect(sharesMoreThan(4.999, house, ring)).toBe(true);
    expect(sharesMoreThan(5.001, house, ring)).toBe(false);
    expect(sharesMoreThan(4.999, ring, house)).toBe(true);
  }
});

it('outlines that share a wall or a corner share no ground', () => {
  expect(
    sharesMoreThan(0, house, [
      [6, 0],
      [9, 0],
      [9, 4],
      [6, 4],
    ]),
  ).toBe(false);
  expect(
    sharesMoreThan(0, house, [
      [6, 4],
      [8, 4],
      [8, 6],
    ]),
  ).toBe(false);
  expect(
    sharesMoreThan(0, house, [
      [0, 2],
      [3, 2],
      [3, 4],
      [0, 4],
    ]),
  ).toBe(false);
});

it('an outline shares all of itself with itself', () => {
  expect(sharesMoreThan(area(house) - 1e-9, house, house)).toBe(true);
  expect(sharesMoreThan(area(house) + 1e-9, house, house)).toBe(false);
});

it('any two simple outlines share as much as the reference library says (@turf/intersect 7.4)', () => {
  let met = 0;
  fc.assert(
    fc.property(outline, outline, (a, b) => {
      const shape = intersect(
        featureCollection([a, b].map((ring) => polygon([[...ring, ring[0]].map(([x, y]) => [x, y])]))),
      )?.geometry;
      const pieces = shape === undefined ? [] : shape.type === 'Polygon' ? [shape.coordinates] : shape.coordinates;
      const rings = pieces.flatMap(([outer, ...holes]) => [
        area(outer as unknown as PlanPoint[]),
        ...holes.map((hole) => -area(hole as unknown as PlanPoint[])),
      ]);
      const shared = rings.reduce((sum, ring) => sum + ring, 0);
      if (shared > 0) met++;
      expect(sharesMoreThan(shared + 1e-9, a, b)).toBe(false);
      if (shared > 0) expect(sharesMoreThan(shared - 1e-9, a, b)).toBe(true);
    }),
    { seed, numRuns: 300 },
  );
  expect(met).toBeGreaterThan(100);
});
