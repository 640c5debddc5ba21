import { expect, test } from 'vitest';
import { gradeZonesOf } from '../../../web/charts/grade-zones.ts';

const CELL = 0.5;

/** A yard of digits, the highest row first; a dot is ground that is not known. */
function zonesOf(picture: readonly string[], occupied: Parameters<typeof gradeZonesOf>[2] = []) {
  const rows = picture.toReversed();
  const grades = Float64Array.from(
    rows.flatMap((row) => [...row].map((digit) => (digit === '.' ? NaN : Number(digit)))),
  );
  return gradeZonesOf(
    { x0: 2, y0: -1, cell: CELL, columns: rows[0].length, rows: rows.length, height: 0.5 },
    grades,
    occupied,
  );
}

/** Area inside rings by the even-odd rule, where holes turn the other way. [m²] */
const areaOf = (rings: readonly (readonly (readonly [number, number])[])[]): number =>
  Math.abs(
    rings.reduce(
      (sum, ring) =>
        sum +
        ring.reduce((part, [x, y], k) => {
          const [nextX, nextY] = ring[(k + 1) % ring.length];
          return part + (x * nextY - nextX * y) / 2;
        }, 0),
      0,
    ),
  );

const YARD = ['55555555', '52222225', '52222225', '52222225', '5222.225', '55555555'];

test('each grade there is has its own ground, with a hole where another grade or unknown ground lies in it', () => {
  const zones = zonesOf(YARD);
  expect(zones.map(({ grade }) => grade)).toEqual([2, 5]);
  // Corners are cut by an eighth of a cell each.
  expect(areaOf(zones[0].rings)).toBeGreaterThan(22 * CELL ** 2);
  expect(areaOf(zones[0].rings)).toBeLessThan(23.5 * CELL ** 2);
  expect(zones[1].rings).toHaveLength(2);
});

test('a number stands in the middle of its ground, and on narrow ground still on it', () => {
  const [two, five] = zonesOf(YARD);
  expect(two.numbersAt).toHaveLength(1);
  const [[x, y]] = two.numbersAt;
  expect(Math.abs(x - 4)).toBeLessThan(0.8);
  expect(Math.abs(y - 0.5)).toBeLessThan(0.5);
  for (const [fx, fy] of five.numbersAt) {
    const row = YARD.toReversed()[Math.floor((fy + 1) / CELL)];
    expect(row[Math.floor((fx - 2) / CELL)]).toBe('5');
  }
});

test('numbers keep clear of crowns and of each other; ground that lies all under a crown still has one', () => {
  const wide = Array.from({ length: 16 }, () => '3'.repeat(24));
  const places = zonesOf(wide, [{ at: [8, 3], radius: 1 }])[0].numbersAt;
  expect(places.length).toBeGreaterThan(3);
  for (const [k, [x, y]] of places.entries()) {
    expect(Math.hypot(x - 8, y - 3)).toBeGreaterThan(1);
    for (const [ox, oy] of places.slice(k + 1)) expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(2.9);
  }
  expect(zonesOf(YARD, [{ at: [4, 0.5], radius: 30 }]).map(({ numbersAt }) => numbersAt.length)).toEqual([1, 1]);
});
