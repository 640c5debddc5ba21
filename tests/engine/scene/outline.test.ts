import { describe, expect, test } from 'vitest';
import { pointInRing } from '../../../engine/plan/geometry/shapes.ts';
import { pathStripes } from '../../../engine/plan/geometry/stripes.ts';
import type { PlanPoint } from '../../../engine/plan/types.ts';
import { isConvex, SEGMENT, unionOutline } from '../../../engine/scene/outline.ts';
import type { Ring } from '../../../engine/scene/solids.ts';
import { randomFrom } from '../../parts/random.ts';

/** Area inside an outline: its pieces close, so the shoelace adds up in any order. */
function areaOf(outline: Float64Array): number {
  let twice = 0;
  for (let e = 0; e < outline.length; e += SEGMENT)
    twice += outline[e] * outline[e + 3] - outline[e + 2] * outline[e + 1];
  return twice / 2;
}

/** How often an outline winds round a point. */
function windingAt(outline: Float64Array, [x, y]: PlanPoint): number {
  let turned = 0;
  for (let e = 0; e < outline.length; e += SEGMENT) {
    const [ax, ay, bx, by] = [outline[e] - x, outline[e + 1] - y, outline[e + 2] - x, outline[e + 3] - y];
    turned += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return turned / (2 * Math.PI);
}

const square = (x: number, y: number, size: number): Ring => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

describe('unionOutline', () => {
  test('one ring is its own outline', () => {
    expect(unionOutline([square(1, 2, 3)])).toEqual(Float64Array.of(1, 2, 4, 2, 4, 2, 4, 5, 4, 5, 1, 5, 1, 5, 1, 2));
  });

  test('overlaps are cut away', () => {
    const outline = unionOutline([square(0, 0, 2), square(1, 1, 2)]);
    expect(areaOf(outline)).toBeCloseTo(4 + 4 - 1, 12);
    expect(outline.length / SEGMENT).toBe(8);
  });

  test('rings that touch along an edge have no seam, rings that share a side’s line keep it once', () => {
    const abutting = unionOutline([square(0, 0, 2), square(2, 0, 2)]);
    expect(areaOf(abutting)).toBeCloseTo(8, 12);
    expect(windingAt(abutting, [2, 1])).toBeCloseTo(1, 9);
    const overlapping = unionOutline([
      square(0, 0, 2),
      [
        [1, 0],
        [4, 0],
        [4, 2],
        [1, 2],
      ],
    ]);
    expect(areaOf(overlapping)).toBeCloseTo(8, 12);
    expect(areaOf(unionOutline([square(0, 0, 2), square(0, 0, 2)]))).toBeCloseTo(4, 12);
  });

  test('a closed wall has an outer outline and a hole', () => {
    const outline = unionOutline(
      pathStripes(
        [
          [0, 0],
          [5, 0],
          [5, 4],
          [0, 4],
          [0, 0],
        ],
        0.4,
      ),
    );
    expect(areaOf(outline)).toBeCloseTo(5.4 * 4.4 - 4.6 * 3.6, 12);
    expect(windingAt(outline, [2, 2])).toBeCloseTo(0, 9);
    expect(windingAt(outline, [5.1, 2])).toBeCloseTo(1, 9);
  });

  test('every piece ends where another starts, to the bit, however its rings cut each other', () => {
    const random = randomFrom(5);
    for (let n = 0; n < 200; n++) {
      const path = Array.from({ length: 5 }, (): PlanPoint => [8 * random(), 8 * random()]);
      const outline = unionOutline(pathStripes(n % 2 === 0 ? path : [...path, path[0]], 0.2 + random()));
      const at = (e: number) => `${outline[e]} ${outline[e + 1]}`;
      const loose: string[] = [];
      const starts = new Set<string>();
      for (let e = 0; e < outline.length; e += SEGMENT) starts.add(at(e));
      for (let e = 0; e < outline.length; e += SEGMENT) if (!starts.has(at(e + 2))) loose.push(at(e + 2));
      expect(loose).toEqual([]);
    }
  });

  test('winds once round every point inside any ring of a bent path, and round no other (2,000 points)', () => {
    const random = randomFrom(77);
    let inside = 0;
    for (let n = 0; n < 200; n++) {
      const path = Array.from({ length: 5 }, (): PlanPoint => [8 * random(), 8 * random()]);
      const rings = pathStripes(n % 2 === 0 ? path : [...path, path[0]], 0.2 + random());
      const outline = unionOutline(rings);
      for (let m = 0; m < 10; m++) {
        const point: PlanPoint = [9 * random() - 0.5, 9 * random() - 0.5];
        const within = rings.some((ring) => pointInRing(point, ring));
        if (within) inside++;
        expect(windingAt(outline, point)).toBeCloseTo(within ? 1 : 0, 6);
      }
    }
    expect(inside).toBeGreaterThan(200);
  });
});

test('a ring is convex if no corner bends back', () => {
  expect(isConvex(square(0, 0, 1))).toBe(true);
  expect(
    isConvex([
      [0, 0],
      [4, 0],
      [4, 4],
      [3, 1],
    ]),
  ).toBe(false);
});
