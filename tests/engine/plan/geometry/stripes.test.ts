import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../../engine/plan/geometry/shapes.ts';
import { eavesStripes, pathStripes, stripe } from '../../../../engine/plan/geometry/stripes.ts';
import type { PlanPoint } from '../../../../engine/plan/types.ts';

const rounded = (ring: readonly PlanPoint[]) =>
  ring.map(([x, y]) => [Number(x.toFixed(9)) + 0, Number(y.toFixed(9)) + 0]);

describe('footprints', () => {
  test('a stripe is a counter-clockwise rectangle about its segment', () => {
    const ring = stripe([1, 1], [1, 5], 0.3, 0.2, 0.7);
    expect(rounded(ring)).toEqual([
      [1.3, 0.8],
      [1.3, 5.7],
      [0.7, 5.7],
      [0.7, 0.8],
    ]);
    expect(signedArea(ring)).toBeCloseTo(0.6 * 4.9, 12);
  });

  test('joints are carried on by half the thickness, ends are not', () => {
    const [first, second] = pathStripes(
      [
        [0, 0],
        [3, 0],
        [3, 2],
      ],
      0.4,
    ).map(rounded);
    expect(first).toEqual([
      [0, -0.2],
      [3.2, -0.2],
      [3.2, 0.2],
      [0, 0.2],
    ]);
    expect(second).toEqual([
      [3.2, -0.2],
      [3.2, 2],
      [2.8, 2],
      [2.8, -0.2],
    ]);
  });

  test('a closed path has joints all round; equal points in a row count as one', () => {
    const stripes = pathStripes(
      [
        [0, 0],
        [0, 0],
        [3, 0],
        [3, 2],
        [3, 2],
        [0, 0],
      ],
      0.4,
    );
    expect(stripes).toHaveLength(3);
    expect(rounded(stripes[0])[0]).toEqual([-0.2, -0.2]);
  });

  test('eaves reach as far to both sides of an edge and past both its ends', () => {
    const [south] = eavesStripes(
      [
        [0, 0],
        [5, 0],
        [5, 3],
        [0, 3],
      ],
      0.6,
    ).map(rounded);
    expect(south).toEqual([
      [-0.6, -0.6],
      [5.6, -0.6],
      [5.6, 0.6],
      [-0.6, 0.6],
    ]);
  });
});
