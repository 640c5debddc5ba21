import { expect, test } from 'vitest';
import { contoursOf } from '../../../web/charts/contours.ts';

const COLUMNS = 24;
const ROWS = 16;
const GRID = { x0: 3, y0: -2, cell: 0.25, columns: COLUMNS, rows: ROWS } as const;
const centreX = (i: number): number => GRID.x0 + (i + 0.5) * GRID.cell;

/** A field of one slope: the value is x. */
const slope = (): Float64Array => Float64Array.from({ length: COLUMNS * ROWS }, (_, index) => centreX(index % COLUMNS));

test('on a field whose value is x, the line of 5.4 is the straight line x = 5.4', () => {
  const [{ value, lines }] = contoursOf(GRID, slope(), [5.4]);
  expect(value).toBe(5.4);
  expect(lines).toHaveLength(1);
  for (const [x] of lines[0]) expect(x).toBeCloseTo(5.4, 9);
});

test('round a hill the line is the circle on which the hill is that high', () => {
  const hill = Float64Array.from({ length: COLUMNS * ROWS }, (_, index) => {
    const y = GRID.y0 + (Math.floor(index / COLUMNS) + 0.5) * GRID.cell;
    return 9 - Math.hypot(centreX(index % COLUMNS) - 6, y) ** 2;
  });
  const [{ lines }] = contoursOf(GRID, hill, [9 - 1.5 ** 2]);
  expect(lines).toHaveLength(1);
  for (const [x, y] of lines[0]) expect(Math.hypot(x - 6, y)).toBeCloseTo(1.5, 1);
});

test('where cells are missing a line ends; none is drawn along their edge', () => {
  const holed = slope().map((value, index) => (Math.floor(index / COLUMNS) >= 10 ? NaN : value));
  const [{ lines }] = contoursOf(GRID, holed, [5.4]);
  expect(lines).toHaveLength(1);
  for (const [x, y] of lines[0]) {
    expect(x).toBeCloseTo(5.4, 9);
    expect(y).toBeLessThan(GRID.y0 + 10 * GRID.cell + 1e-9);
  }
});

test('a value that is nowhere has no line, and a line shorter than a metre is left out', () => {
  const speck = new Float64Array(COLUMNS * ROWS);
  speck[7 * COLUMNS + 9] = 10;
  expect(contoursOf(GRID, speck, [5, 20]).map(({ lines }) => lines.length)).toEqual([0, 0]);
});
