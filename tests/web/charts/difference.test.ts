import { expect, test } from 'vitest';
import { changedGround, paintDifference } from '../../../web/charts/difference.ts';

const SCALE = { ramp: [], from: 0, to: 20, contours: [] };
const COLOURS = { less: '#102030', more: '#405060' };
/** Four cells in a row, half a metre each. */
const GRID = { x0: 1, y0: 2, cell: 0.5, columns: 4, rows: 1 };

/** Which of the dots of one cell are inked, as words of 0 and 1, the lowest row first. */
function inked(before: number, after: number): { readonly dots: string; readonly colours: ReadonlySet<string> } {
  const one = { ...GRID, cell: 2, columns: 1 };
  const { rgba } = paintDifference(Float64Array.of(before), Float64Array.of(after), one, SCALE, COLOURS, 255);
  const pixels = Array.from({ length: 16 }, (_, k) => [...rgba.subarray(k * 4, k * 4 + 4)]);
  return {
    dots: pixels.map(([, , , alpha]) => (alpha > 0 ? '1' : '0')).join(''),
    colours: new Set(pixels.filter(([, , , alpha]) => alpha > 0).map((pixel) => pixel.slice(0, 3).join())),
  };
}

test('where nothing changes, and where one of the two is not known, the paper stays blank', () => {
  for (const [before, after] of [
    [7, 7],
    [7, 7.4],
    [NaN, 3],
    [3, NaN],
  ])
    expect(inked(before, after).dots).toBe('0'.repeat(16));
});

test('less and more of it differ by their texture, not by colour alone', () => {
  const less = inked(12, 6);
  const more = inked(6, 12);
  expect(less.dots).not.toBe(more.dots);
  expect([...less.colours]).toEqual(['16,32,48']);
  expect([...more.colours]).toEqual(['64,80,96']);
});

test('the greater the change, the closer its lines', () => {
  const ink = (change: number): number => inked(15, 15 - change).dots.replaceAll('0', '').length;
  expect(ink(1)).toBeLessThan(ink(3));
  expect(ink(3)).toBeLessThan(ink(9));
});

test('the fine picture lies on the ground of the grid', () => {
  const { grid } = paintDifference(new Float64Array(4), new Float64Array(4), GRID, SCALE, COLOURS, 255);
  expect([grid.x0, grid.y0, grid.cell * grid.columns, grid.cell * grid.rows]).toEqual([1, 2, 2, 0.5]);
});

test('the ground that changes is told in square metres', () => {
  expect(changedGround(Float64Array.of(9, 9, 9, NaN), Float64Array.of(2, 3, 14, 3), GRID, SCALE)).toEqual({
    less: 0.5,
    more: 0.25,
  });
});
