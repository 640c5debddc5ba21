import { describe, expect, it } from 'vitest';
import {
  dateIn,
  datesBetween,
  dayOfCommonYear,
  dayOfYear,
  daysAfter,
  midnightAt,
} from '../../../../engine/sun/days/calendar.ts';

describe('dates', () => {
  it('exist or not', () => {
    expect(dateIn(2028, '02-29')).toBe('2028-02-29');
    for (const monthDay of ['02-29', '06-31', '00-10', '13-01', '6-1', '2026-06-01', ''])
      expect(dateIn(2026, monthDay), monthDay).toBeNull();
  });

  it('run on across months and years', () => {
    expect(datesBetween('2027-12-30', '2028-01-02')).toEqual(['2027-12-30', '2027-12-31', '2028-01-01', '2028-01-02']);
    expect(datesBetween('2026-06-05', '2026-06-05')).toEqual(['2026-06-05']);
    expect(datesBetween('2026-06-05', '2026-06-04')).toEqual([]);
    expect(daysAfter('2028-02-28', 2)).toBe('2028-03-01');
  });

  it('have a day of the year, and one in a year of 365 days in which 29 February is the 28th', () => {
    expect(dayOfYear('2026-01-01')).toBe(1);
    expect(dayOfYear('2028-12-31')).toBe(366);
    expect(dayOfCommonYear('2026-01-01')).toBe(0);
    expect([2026, 2028].map((year) => dayOfCommonYear(`${year}-02-28`))).toEqual([58, 58]);
    expect(dayOfCommonYear('2028-02-29')).toBe(58);
    expect([2026, 2028].map((year) => dayOfCommonYear(`${year}-03-01`))).toEqual([59, 59]);
    expect([2026, 2028].map((year) => dayOfCommonYear(`${year}-12-31`))).toEqual([364, 364]);
  });

  it('have a midnight by a clock of fixed offset', () => {
    expect(midnightAt('2026-06-21', -7)).toBe(Date.UTC(2026, 5, 21, 7));
    expect(midnightAt('2026-06-21', 9.5)).toBe(Date.UTC(2026, 5, 20, 14, 30));
  });
});
