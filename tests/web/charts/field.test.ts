import { describe, expect, test } from 'vitest';
import { evened, paintField, smoothed } from '../../../web/charts/field.ts';
import { SCALES } from '../../../web/charts/ramp.ts';

describe('a grid of cells as a smooth field', () => {
  const slope = { columns: 4, rows: 3 };
  const values = Float64Array.from({ length: 12 }, (_, k) => 2 * (k % 4) + 10 * Math.floor(k / 4));

  test('a plane stays that plane between the centres', () => {
    const fine = smoothed(slope, values, 5);
    for (let y = 2; y <= 12; y++)
      for (let x = 2; x <= 17; x++)
        expect(fine[y * 20 + x]).toBeCloseTo(2 * ((x + 0.5) / 5 - 0.5) + 10 * ((y + 0.5) / 5 - 0.5), 9);
  });

  test('beyond the outer centres it goes on level, and a level field stays level', () => {
    const fine = smoothed(slope, values, 5);
    expect([fine[0], fine[19], fine[14 * 20]]).toEqual([0, 6, 20]);
    for (const value of smoothed(slope, new Float64Array(12).fill(7), 3)) expect(value).toBeCloseTo(7, 9);
  });

  test('where there is nothing nothing is made up, and what is beside it is not drawn down', () => {
    const holed = new Float64Array(12).fill(7);
    holed[5] = NaN;
    const fine = smoothed(slope, holed, 2);
    const hole = [2 * 8 + 2, 2 * 8 + 3, 3 * 8 + 2, 3 * 8 + 3];
    fine.forEach((value, at) => (hole.includes(at) ? expect(value).toBeNaN() : expect(value).toBeCloseTo(7, 9)));
  });

  test('the picture covers the same ground, at a grain of 5 cm', () => {
    const grid = { x0: 1, y0: 2, cell: 0.25, columns: 4, rows: 3, height: 0.5 };
    const painted = paintField(grid, values, SCALES.hotLoad, 255);
    expect(painted.grid).toMatchObject({ x0: 1, y0: 2, cell: 0.05, columns: 20, rows: 15 });
    expect(painted.rgba.length).toBe(20 * 15 * 4);
  });

  test('a slow slope climbs without bands: no run of columns has one colour, and no step is seen between two', () => {
    const ramp = { x0: 0, y0: 0, cell: 0.1, columns: 60, rows: 40, height: 0.5 };
    // Under the scale's end and beyond it, a level of green every twelve cells or more.
    for (const [from, to] of [
      [21.5, 22.8],
      [25, 27],
    ] as const) {
      const slow = Float64Array.from({ length: 60 * 40 }, (_, k) => from + ((to - from) * (k % 60)) / 59);
      const { grid, rgba } = paintField(ramp, slow, SCALES.hotLoad, 255);
      const mean = (x: number, part: number): number => {
        let sum = 0;
        for (let y = 0; y < grid.rows; y++) sum += rgba[(y * grid.columns + x) * 4 + part];
        return sum / grid.rows;
      };
      // Clear of the edges, where evening out levels the slope.
      for (let x = 20; x + 8 < grid.columns - 20; x++) {
        const green = [0, 2, 4, 6, 8].map((k) => mean(x + k, 1));
        expect(new Set(green).size).toBeGreaterThan(1);
        for (const [k, one] of green.slice(1).entries()) expect(Math.abs(one - green[k])).toBeLessThan(0.75);
      }
      expect(mean(grid.columns - 20, 1)).toBeGreaterThan(mean(20, 1) + 1);
    }
  });

  test('what is above a scale is told apart still, and nothing is brighter than its last colour', () => {
    const grid = { x0: 0, y0: 0, cell: 0.5, columns: 3, rows: 1, height: 0.5 };
    const greenOf = (value: number): number => {
      const { rgba } = paintField(grid, Float64Array.of(value, value, value), SCALES.hotLoad, 255);
      return rgba.reduce((sum, part, at) => sum + (at % 4 === 1 ? part : 0), 0) / (rgba.length / 4);
    };
    const greens = [20, 22, 24, 27, 30, 34, 40].map(greenOf);
    for (const [k, green] of greens.slice(1).entries()) expect(green).toBeGreaterThan(greens[k]);
    expect(greenOf(99)).toBeLessThanOrEqual(0xf0 + 1);
    expect(greenOf(99)).toBeGreaterThan(0xf0 - 2);
  });
});

describe('a grid evened out', () => {
  const grid = { columns: 30, rows: 20, cell: 0.1 };
  const at = (value: (i: number, j: number) => number): Float64Array =>
    Float64Array.from({ length: 600 }, (_, k) => value(k % 30, Math.floor(k / 30)));

  test('a stair of the sun’s steps becomes the slope it stands for, and nothing is higher or lower than before', () => {
    const stair = at((i) => Math.floor(i / 4));
    const even = evened(grid, stair);
    const row = [...even.subarray(300, 330)];
    for (let i = 8; i < 22; i++) {
      // A step of 1 every four cells: 0.25 a cell.
      expect(row[i] - row[i - 1]).toBeGreaterThan(0.2);
      expect(row[i] - row[i - 1]).toBeLessThan(0.3);
    }
    expect(Math.min(...even)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...even)).toBeLessThanOrEqual(7);
  });

  test('a level field stays level right up to a wall, and the wall stays without a value', () => {
    const walled = at((i, j) => (i < 3 || j === 7 ? NaN : 7));
    evened(grid, walled).forEach((value, k) =>
      Number.isNaN(walled[k]) ? expect(value).toBeNaN() : expect(value).toBeCloseTo(7, 9),
    );
  });

  test('across and up are treated alike, and what lies half a metre beyond a step is hardly touched', () => {
    const wide = evened(
      grid,
      at((i) => (i < 15 ? 0 : 10)),
    );
    const square = { columns: 20, rows: 30, cell: 0.1 };
    const high = evened(
      square,
      Float64Array.from({ length: 600 }, (_, k) => (k < 300 ? 0 : 10)),
    );
    for (let i = 0; i < 30; i++) expect(high[i * 20 + 5]).toBeCloseTo(wide[300 + i], 9);
    expect(wide[300 + 9]).toBeLessThan(0.1);
    expect(wide[300 + 20]).toBeGreaterThan(9.9);
  });
});
