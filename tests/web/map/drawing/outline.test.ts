import { describe, expect, test } from 'vitest';
import { area } from '../../../../engine/index.ts';
import { circle, footprint, outset } from '../../../../web/map/drawing/outline.ts';

describe('what a thing covers', () => {
  test('a straight wall covers its length times its thickness', () => {
    const [ring] = footprint({
      id: 'w',
      kind: 'wall',
      path: [
        [1, 2],
        [1, 9],
      ],
      height: 1.8,
      thickness: 0.3,
    });
    expect(area(ring!)).toBeCloseTo(2.1, 12);
  });

  test('at a joint each piece goes on by half the thickness; the ends stay square', () => {
    const [first, second] = footprint({
      id: 'w',
      kind: 'wall',
      path: [
        [0, 0],
        [6, 0],
        [6, 4],
      ],
      height: 1.8,
      thickness: 0.4,
    });
    expect(area(first!)).toBeCloseTo(6.2 * 0.4, 12);
    expect(area(second!)).toBeCloseTo(4.2 * 0.4, 12);
  });

  test('a wall that ends where it began has no ends', () => {
    const rings = footprint({
      id: 'w',
      kind: 'wall',
      path: [
        [0, 0],
        [5, 0],
        [5, 3],
        [0, 0],
      ],
      height: 1.8,
      thickness: 0.4,
    });
    expect(area(rings[0]!)).toBeCloseTo(5.4 * 0.4, 12);
  });

  test('a turned roof covers length times width', () => {
    const [ring] = footprint({
      id: 'c',
      kind: 'canopy',
      center: [4, 5],
      length: 3,
      width: 2.5,
      turn: 33,
      height: 2.2,
      density: 0.5,
    });
    expect(area(ring!)).toBeCloseTo(7.5, 12);
  });
});

test('eaves reach out by their depth on every side, round notches too', () => {
  expect(
    area(
      outset(
        [
          [0, 0],
          [6, 0],
          [6, 4],
          [0, 4],
        ],
        0.5,
      ),
    ),
  ).toBeCloseTo(35, 12);
  const notched = [
    [0, 0],
    [6, 0],
    [6, 2],
    [2, 2],
    [2, 5],
    [0, 5],
  ] as const;
  expect(area(outset([...notched].reverse(), 0.5))).toBeCloseTo(18 + 0.5 * 22 + 4 * 0.25, 9);
});

test('a circle of many corners has nearly the area of the circle', () => {
  expect(area(circle([2, 1], 1.5, 360))).toBeCloseTo(Math.PI * 2.25, 3);
});
