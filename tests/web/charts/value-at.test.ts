import { expect, test } from 'vitest';
import { valueAt } from '../../../web/charts/value-at.ts';

const GRID = { x0: 2, y0: -1, cell: 0.5, columns: 5, rows: 4 } as const;
const plane = Float64Array.from(
  { length: 20 },
  (_, index) => 3 * (GRID.x0 + ((index % 5) + 0.5) * 0.5) + 7 * (GRID.y0 + (Math.floor(index / 5) + 0.5) * 0.5),
);

test('on a plane it is the plane’s own height wherever four cells are round the point', () => {
  for (const [x, y] of [
    [2.6, -0.3],
    [3.25, 0.25],
    [4.1, 0.6],
  ] as const)
    expect(valueAt(GRID, plane, [x, y])).toBeCloseTo(3 * x + 7 * y, 9);
});

test(
  'at the edge and beside unknown ground it is the cell’s own; on unknown ground nothing, off the grid ' +
    'nothing at all',
  () => {
    expect(valueAt(GRID, plane, [2.1, -0.9])).toBe(plane[0]);
    const holed = plane.slice();
    holed[7] = NaN;
    expect(valueAt(GRID, holed, [3.2, -0.3])).toBeNaN();
    expect(valueAt(GRID, holed, [2.9, -0.3])).toBe(plane[6]);
    expect(valueAt(GRID, plane, [1.9, 0])).toBeNull();
    expect(valueAt(GRID, plane, [3, 1.01])).toBeNull();
  },
);
