import { contours } from 'd3-contour';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contoursOf, linesOn, outlinesOf } from '../../../web/charts/contours.ts';

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

/** The length of what the reference library draws through the cells' centres, the frame's own edge left out. */
function referenceLength(values: readonly number[], columns: number, rows: number, value: number): number {
  const inside = ([u, v]: readonly number[]): boolean => u >= 0.5 && v >= 0.5 && u <= columns - 0.5 && v <= rows - 0.5;
  let length = 0;
  for (const ring of contours()
    .size([columns, rows])
    .contour([...values], value)
    .coordinates.flat()) {
    for (let k = 1; k < ring.length; k++) {
      if (inside(ring[k - 1]) && inside(ring[k]))
        length += Math.hypot(ring[k][0] - ring[k - 1][0], ring[k][1] - ring[k - 1][1]);
    }
  }
  return length;
}

test('on any field the lines are those of d3-contour, saddles and all', () => {
  const side = fc.integer({ min: 2, max: 12 });
  fc.assert(
    fc.property(side, side, fc.infiniteStream(fc.integer({ min: 0, max: 9 })), (columns, rows, stream) => {
      const values = [...stream.take(columns * rows)];
      const grid = { x0: 0, y0: 0, cell: 1000, columns, rows } as const;
      const [{ lines }] = contoursOf(grid, Float64Array.from(values), [4.6]);
      const lengths = lines.map((line) =>
        line.slice(1).reduce((sum, [x, y], k) => sum + Math.hypot(x - line[k][0], y - line[k][1]), 0),
      );
      const total = lengths.reduce((sum, length) => sum + length, 0) / 1000;
      expect(total).toBeCloseTo(referenceLength(values, columns, rows, 4.6), 9);
    }),
    { seed: 8, numRuns: 300 },
  );
});

test('a line that comes back to itself is closed, and a line that ends is one line', () => {
  const round = Float64Array.from({ length: 100 }, (_, k) => -Math.hypot((k % 10) - 4.5, Math.floor(k / 10) - 4.5));
  const [{ lines: rings }] = contoursOf({ x0: 0, y0: 0, cell: 1, columns: 10, rows: 10 }, round, [-3.2]);
  expect(rings).toHaveLength(1);
  expect(rings[0].at(-1)).toEqual(rings[0][0]);
  const [{ lines }] = contoursOf(GRID, slope(), [5.4]);
  expect(lines[0]).toHaveLength(ROWS);
});

test('outlines hold the area that d3-contour gives, ground to the left, holes taken off', () => {
  const side = fc.integer({ min: 1, max: 12 });
  const areaOf = (rings: readonly (readonly (readonly number[])[])[]): number =>
    rings
      .flatMap((ring) => ring.slice(1).map(([x, y], k) => (ring[k][0] * y - x * ring[k][1]) / 2))
      .reduce((sum, part) => sum + part, 0);
  fc.assert(
    fc.property(side, side, fc.infiniteStream(fc.constantFrom(0, 1)), (columns, rows, stream) => {
      const values = [...stream.take(columns * rows)];
      const rings = outlinesOf({ x0: 0, y0: 0, cell: 1, columns, rows }, Float64Array.from(values), 0.5);
      for (const ring of rings) expect(ring.at(-1)).toEqual(ring[0]);
      const reference = contours().size([columns, rows]).contour(values, 0.5).coordinates.flat();
      expect(rings.length).toBe(reference.length);
      expect(areaOf(rings)).toBeCloseTo(Math.abs(areaOf(reference)), 9);
    }),
    { seed: 8, numRuns: 300 },
  );
});

test('a ground that few lines of a scale cross gets those half-way too, each a number to write on it', () => {
  const scale = [2, 6, 12, 18];
  expect(linesOn(Float64Array.of(3.4, NaN, 33.6), scale)).toEqual(scale);
  expect(linesOn(Float64Array.of(1.1, NaN, 4.3), scale)).toEqual([1, 2, 4, 6, 9, 12, 15, 18]);
  expect(linesOn(Float64Array.of(0.1, 0.5), [0.2, 0.4, 0.6])).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6]);
});
