import { describe, expect, test } from 'vitest';
import { alongPath, crownEdge, stipple } from '../../../../web/map/ink/ink-points.ts';

describe('dots of a crown', () => {
  test('as many as it stops light: a half-open crown has half of them', () => {
    const dense = stipple([4, 5], 1.2, 0).length;
    expect(stipple([4, 5], 1.2, 0.5).length).toBeCloseTo(dense / 2, -1);
    expect(stipple([4, 5], 1.2, 1)).toEqual([]);
  });

  test('all inside the crown', () => {
    for (const [x, y] of stipple([4, 5], 2.3, 0.1)) expect(Math.hypot(x - 4, y - 5)).toBeLessThan(2.3);
  });

  test('a crown is drawn no wider than it is', () => {
    const reach = crownEdge([2, 3], 1.7).map(([x, y]) => Math.hypot(x - 2, y - 3));
    expect(Math.max(...reach)).toBeLessThanOrEqual(1.7 + 1e-9);
    expect(Math.max(...reach)).toBeGreaterThan(1.69);
    expect(Math.min(...reach)).toBeGreaterThan(1.6);
  });
});

test('marks along a path keep their distance round its corners', () => {
  const marks = alongPath(
    [
      [0, 0],
      [2, 0],
      [2, 3],
    ],
    0.8,
  );
  expect(marks.map(({ at: [x, y] }) => [Number(x.toFixed(3)), Number(y.toFixed(3))])).toEqual([
    [0, 0],
    [0.8, 0],
    [1.6, 0],
    [2, 0.4],
    [2, 1.2],
    [2, 2],
    [2, 2.8],
  ]);
});
