import { describe, expect, test } from 'vitest';
import { shadowTable } from '../../../../engine/survey/height/shadow-table.ts';
import { COURTYARD, LANE } from '../places-for-tests.ts';

describe('the shadow clock of a day', () => {
  test('half hours by the clock, shortest near solar noon, pointing away from the sun', () => {
    const rows = shadowTable(COURTYARD, '2026-05-02', 20);
    expect(rows.every(({ clock }) => /:(00|30)$/.test(clock))).toBe(true);
    const ten = rows.find(({ clock }) => clock === '10:00');
    expect(ten?.bearing).toBeCloseTo(273.3, 1);
    expect(ten?.direction).toBeCloseTo(253.3, 1);
    expect(ten?.length).toBeCloseTo(1 / Math.tan((29.8 * Math.PI) / 180), 2);
    const shortest = rows.reduce((least, row) => (row.length < least.length ? row : least));
    expect(shortest.clock).toBe('14:30');
    expect(Math.max(...rows.map(({ length }) => length))).toBeLessThan(11.44);
  });

  test('south of the equator the noon shadow points south', () => {
    const rows = shadowTable(LANE, '2027-01-21', 352);
    const shortest = rows.reduce((least, row) => (row.length < least.length ? row : least));
    expect(Math.abs(shortest.bearing - 180)).toBeLessThan(15);
  });

  test('the day on which clocks jump has no row in the hour that is not there', () => {
    const clocks = shadowTable({ ...COURTYARD, latitude: 60 }, '2026-03-29', 0).map(({ clock }) => clock);
    expect(new Set(clocks).size).toBe(clocks.length);
  });
});
