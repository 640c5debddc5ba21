import { expect, test } from 'vitest';
import type { PlanPoint } from '../../../engine/index.ts';
import { softGround } from '../../../web/charts/soft-ground.ts';

/** Shoelace formula; positive where the ground lies to the left. [m²] */
function areaOf(ring: readonly PlanPoint[]): number {
  return ring.slice(1).reduce((sum, [x, y], k) => sum + (ring[k][0] * y - x * ring[k][1]) / 2, 0);
}

test('squares that lie together have one outline of about their ground, and a hole is taken off it', () => {
  const side = 0.25;
  const squares = Array.from({ length: 20 * 12 }, (_, k): PlanPoint => [
    1 + (k % 20) * side,
    2 + Math.floor(k / 20) * side,
  ]);
  const [whole, ...others] = softGround(squares, side);
  expect(others).toEqual([]);
  expect(areaOf(whole) / (squares.length * side ** 2)).toBeCloseTo(1, 1);
  const holed = squares.filter(([x, y]) => Math.hypot(x - 3, y - 3.25) > 0.6);
  const rings = softGround(holed, side);
  expect(rings.map((ring) => Math.sign(areaOf(ring))).toSorted()).toEqual([-1, 1]);
  expect(rings.reduce((sum, ring) => sum + areaOf(ring), 0) / (holed.length * side ** 2)).toBeCloseTo(1, 1);
});

test('ground in two places has two outlines, and none has none', () => {
  expect(
    softGround(
      [
        [1, 1],
        [2, 1],
        [9, 5],
      ],
      1,
    ),
  ).toHaveLength(2);
  expect(softGround([], 0.25)).toEqual([]);
});
