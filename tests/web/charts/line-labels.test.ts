import { expect, test } from 'vitest';
import type { PlanPoint } from '../../../engine/index.ts';
import { labelPlaces } from '../../../web/charts/line-labels.ts';

const level = (y: number, points = 21): PlanPoint[] =>
  Array.from({ length: points }, (_, k): PlanPoint => [k * 0.5, y]);

test('a line has its label at its middle, and lines that run close have theirs side by side', () => {
  const places = labelPlaces(
    [
      { lines: [level(1)], label: '2' },
      { lines: [level(1.2)], label: '6' },
      { lines: [level(9)], label: '12' },
    ],
    1.4,
  );
  expect(places.map(({ label }) => label)).toEqual(['2', '6', '12']);
  expect(places[0].at).toEqual([5, 1]);
  expect(places[2].at).toEqual([5, 9]);
  expect(Math.hypot(places[1].at[0] - 5, 0.2)).toBeGreaterThanOrEqual(1.4);
  expect(places[1].at[1]).toBe(1.2);
});

test('a line too short, or with no room left beside the others, goes without', () => {
  expect(labelPlaces([{ lines: [level(3, 5)], label: '8' }], 0.5)).toEqual([]);
  expect(
    labelPlaces(
      [
        { lines: [level(0)], label: '2' },
        { lines: [level(0.3)], label: '6' },
      ],
      30,
    ).map(({ label }) => label),
  ).toEqual(['2']);
});
