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
