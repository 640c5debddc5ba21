import { expect, test } from 'vitest';
import { distanceToPath } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { softened } from '../../../web/charts/softened.ts';

const stairs: readonly PlanPoint[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [2, 1],
  [2, 2],
];

test('a line with its corners cut keeps its ends, stays by the line and turns less sharply', () => {
  const soft = softened(stairs);
  expect([soft[0], soft.at(-1)]).toEqual([stairs[0], stairs.at(-1)]);
  for (const at of soft) expect(distanceToPath(at, stairs)).toBeLessThan(0.25);
  const turns = soft.slice(2).map((c, k) => {
    const [a, b] = [soft[k], soft[k + 1]];
    const heading = (p: PlanPoint, q: PlanPoint): number => Math.atan2(q[1] - p[1], q[0] - p[0]);
    return Math.abs(heading(b, c) - heading(a, b));
  });
  expect(Math.max(...turns)).toBeLessThan(Math.PI / 4);
});

test('a straight line stays straight, and one that comes back to itself still does', () => {
  const straight: readonly PlanPoint[] = [
    [0, 0],
    [1, 2],
    [2, 4],
  ];
  for (const [x, y] of softened(straight)) expect(y).toBeCloseTo(2 * x, 9);
  const ring = softened([...stairs, [0, 2], [0, 0]]);
  expect(ring.at(-1)).toEqual(ring[0]);
});
