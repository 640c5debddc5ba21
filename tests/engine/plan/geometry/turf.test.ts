import fc from 'fast-check';
import { expect, it } from 'vitest';
import { onOneLine, sideOf } from '../../../../engine/plan/geometry/shapes.ts';
import { selfMeeting } from '../../../../engine/plan/geometry/turf.ts';
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

/** Whether two segments share a point, told exactly: on whole numbers a side is a whole number. */
function share([a, b]: readonly PlanPoint[], [c, d]: readonly PlanPoint[]): boolean {
  const apart = (axis: 0 | 1): boolean =>
    Math.max(a[axis], b[axis]) < Math.min(c[axis], d[axis]) || Math.max(c[axis], d[axis]) < Math.min(a[axis], b[axis]);
  return !apart(0) && !apart(1) && sideOf(a, b, c) * sideOf(a, b, d) <= 0 && sideOf(c, d, a) * sideOf(c, d, b) <= 0;
}

it('an outline of whole numbers meets itself exactly where two edges that are no neighbours share a point', () => {
  const seen = { simple: 0, met: 0 };
  fc.assert(
    fc.property(anyCorners, (corners) => {
      const ring = corners.filter(([x, y], i) => corners.findIndex(([a, b]) => a === x && b === y) === i);
      fc.pre(ring.length >= 4 && !onOneLine(ring));
      const edges = ring.map((corner, i) => [corner, ring[(i + 1) % ring.length]]);
      const meets = edges.some((one, i) =>
        edges.some((other, j) => j > i + 1 && !(i === 0 && j === edges.length - 1) && share(one, other)),
      );
      seen[meets ? 'met' : 'simple']++;
      expect(selfMeeting(ring) !== null).toBe(meets);
    }),
    { seed, numRuns: 600 },
  );
  expect(Math.min(seen.simple, seen.met)).toBeGreaterThan(60);
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
