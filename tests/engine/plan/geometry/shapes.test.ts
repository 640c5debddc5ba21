import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { polygon } from '@turf/helpers';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canopyCorners, canopyEdge, canopyHeightOver } from '../../../../engine/plan/geometry/cloth-shapes.ts';
import {
  area,
  boundsOf,
  centroid,
  cleanPath,
  distance,
  distanceToPath,
  isClosed,
  openRing,
  pathLength,
  pointInRing,
  signedArea,
  strictlyInRing,
  turned,
} from '../../../../engine/plan/geometry/shapes.ts';
import type { Canopy, PlanPoint } from '../../../../engine/plan/types.ts';

const seed = 4711;
const anyPoint = fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true }));
/** A star-shaped ring about the origin, counter-clockwise. */
const anyRing = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: 2, max: 30, noNaN: true })), {
    minLength: 5,
    maxLength: 12,
  })
  .map((spokes) => {
    const whole = spokes.reduce((sum, [step]) => sum + step, 0);
    let turn = 0;
    return spokes.map(([step, radius]): PlanPoint => {
      turn += (step / whole) * 2 * Math.PI;
      return [radius * Math.cos(turn), radius * Math.sin(turn)];
    });
  });

describe('rings', () => {
  it('a regular polygon has the area n/2 · r² · sin(2π/n)', () => {
    for (const n of [3, 5, 8, 360]) {
      const ring = Array.from({ length: n }, (_, k): PlanPoint => [
        7 + 2.5 * Math.cos((2 * Math.PI * k) / n),
        -3 + 2.5 * Math.sin((2 * Math.PI * k) / n),
      ]);
      expect(area(ring)).toBeCloseTo((n / 2) * 2.5 ** 2 * Math.sin((2 * Math.PI) / n), 9);
    }
  });

  it('the centroid of an L of two rectangles is their weighted middle', () => {
    const ell: PlanPoint[] = [
      [1, 2],
      [7, 2],
      [7, 4],
      [3, 4],
      [3, 9],
      [1, 9],
    ];
    const [x, y] = centroid(ell);
    // 6 × 2 about (4, 3) and 2 × 5 about (2, 6.5).
    expect(x).toBeCloseTo((12 * 4 + 10 * 2) / 22, 12);
    expect(y).toBeCloseTo((12 * 3 + 10 * 6.5) / 22, 12);
  });

  it('winding, starting corner and a repeated first point change neither area nor centroid', () => {
    fc.assert(
      fc.property(anyRing, fc.nat(11), (ring, start) => {
        const from = start % ring.length;
        const other = [...ring.slice(from), ...ring.slice(0, from)].reverse();
        const closed = [...other, other[0]];
        expect(area(closed)).toBeCloseTo(area(ring), 8);
        expect(distance(centroid(closed), centroid(ring))).toBeLessThan(1e-9);
        expect(signedArea(openRing(closed))).toBeGreaterThan(0);
        expect(openRing(closed)).toHaveLength(ring.length);
      }),
      { seed },
    );
  });

  it('a point is inside exactly where the reference library says so', () => {
    let inside = 0;
    fc.assert(
      fc.property(anyRing, anyPoint, (ring, point) => {
        const answer = pointInRing(point, ring);
        if (answer) inside++;
        expect(answer).toBe(booleanPointInPolygon(point, polygon([[...ring, ring[0]].map((corner) => [...corner])])));
      }),
      { seed, numRuns: 500 },
    );
    expect(inside).toBeGreaterThan(50);
  });

  it('within the edge counts as inside, and is not strictly inside', () => {
    const square: PlanPoint[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ];
    expect(pointInRing([4 + 5e-10, 1.5], square, 1e-9)).toBe(true);
    expect(pointInRing([4 + 2e-9, 1.5], square, 1e-9)).toBe(false);
    expect(strictlyInRing([4 - 5e-10, 1.5], square, 1e-9)).toBe(false);
    expect(strictlyInRing([3.9, 1.5], square, 1e-9)).toBe(true);
  });
});

describe('paths', () => {
  it('equal points in a row count as one, and a path that comes back is closed', () => {
    expect(
      cleanPath([
        [1, 1],
        [1, 1],
        [2, 5],
        [2, 5],
        [1, 1],
      ]),
    ).toEqual([
      [1, 1],
      [2, 5],
      [1, 1],
    ]);
    expect(
      isClosed([
        [0, 0],
        [3, 0],
        [3, 2],
        [0, 0],
      ]),
    ).toBe(true);
    expect(
      isClosed([
        [0, 0],
        [3, 0],
        [0, 0],
      ]),
    ).toBe(false);
  });

  it('a 3-4-5 corner is 7 long, 5 across, and 2.4 from its far side', () => {
    expect(
      pathLength([
        [0, 0],
        [3, 0],
        [3, 4],
      ]),
    ).toBe(7);
    expect(distance([0, 0], [3, 4])).toBe(5);
    expect(
      distanceToPath(
        [3, 0],
        [
          [0, 0],
          [3, 4],
        ],
      ),
    ).toBeCloseTo(2.4, 12);
    expect(
      distanceToPath(
        [-1, 0],
        [
          [0, 0],
          [3, 4],
        ],
      ),
    ).toBe(1);
    expect(
      boundsOf([
        [3, -1],
        [-2, 5],
      ]),
    ).toEqual({ minX: -2, minY: -1, maxX: 3, maxY: 5 });
  });
});

describe('a canopy', () => {
  const canopy: Canopy = {
    id: 'c',
    kind: 'canopy',
    center: [10, 5],
    length: 4,
    width: 2,
    turn: 90,
    height: 2.2,
    rise: 0.4,
    density: 0.5,
  };

  it('turned by 90 degrees has its front to the plan’s right, where the cloth is at height + rise', () => {
    const [frontLeft, backLeft, backRight, frontRight] = canopyCorners(canopy);
    for (const [corner, wanted] of [
      [frontLeft, [12, 6, 2.6]],
      [backLeft, [8, 6, 2.2]],
      [backRight, [8, 4, 2.2]],
      [frontRight, [12, 4, 2.6]],
    ] as const) {
      corner.forEach((value, axis) => expect(value).toBeCloseTo(wanted[axis], 12));
    }
    expect(canopyEdge(canopy, 'front').map(([x]) => x)).toEqual([expect.closeTo(12), expect.closeTo(12)]);
    expect(canopyEdge(canopy, 'left').map(([, y]) => y)).toEqual([expect.closeTo(6), expect.closeTo(6)]);
  });

  it('hangs linearly between back and front, and nowhere else', () => {
    expect(canopyHeightOver(canopy, [9, 5.5])).toBeCloseTo(2.3, 12);
    expect(canopyHeightOver(canopy, [10, 6.1])).toBeNull();
  });

  it('goes round counter-clockwise whatever its turn', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (turn) => {
        const ring = canopyCorners({ ...canopy, turn }).map(([x, y]): PlanPoint => [x, y]);
        expect(signedArea(ring)).toBeCloseTo(8, 9);
      }),
      { seed },
    );
  });

  it('a clockwise quarter turn takes +y to +x', () => {
    const [x, y] = turned([2, 5], [2, 1], 90);
    expect(x).toBeCloseTo(6, 12);
    expect(y).toBeCloseTo(1, 12);
  });
});
