import { expect, test } from 'vitest';
import { wedgeOf } from '../../../web/charts/rose.ts';

test('bearings turn clockwise from straight up: north up, east right, south down, west left', () => {
  const at = (bearing: number): number[] =>
    wedgeOf(bearing, 0.4, 18, 62, 76).label.map((value) => Math.round(value) || 0);
  expect([0, 90, 180, 270].map(at)).toEqual([
    [0, -76],
    [76, 0],
    [0, 76],
    [-76, 0],
  ]);
});

test('a wedge begins at the inner ring and reaches in proportion to its tone', () => {
  const radii = (tone: number): number[] => {
    const [first, second] = [...wedgeOf(225, tone, 18, 62, 76).path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
      ([, x, y]) => Math.hypot(Number(x), Number(y)),
    );
    return [first, second].map((radius) => Math.round(radius * 10) / 10);
  };
  expect(radii(0)).toEqual([18, 18]);
  expect(radii(0.25)).toEqual([18, 29]);
  expect(radii(1)).toEqual([18, 62]);
});
