import { expect, it } from 'vitest';
import { daysInMonth, isLeapYear, monthWord, monthsOfSeason } from '../../../../engine/plan/dates/dates.ts';

it('leap years follow the Gregorian rule of 1582', () => {
  for (const [year, leap] of [
    [1900, false],
    [2000, true],
    [2024, true],
    [2026, false],
    [2100, false],
  ] as const)
    expect(isLeapYear(year)).toBe(leap);
  expect(daysInMonth(2028, 2)).toBe(29);
  expect(daysInMonth(2026, 2)).toBe(28);
  expect(Array.from({ length: 12 }, (_, month) => daysInMonth(2027, month + 1)).reduce((a, b) => a + b)).toBe(365);
  expect(monthWord(9)).toBe('September');
});

it('a season knows its months, across New Year too', () => {
  expect(monthsOfSeason({ from: '06-01', to: '09-15' })).toEqual([6, 7, 8, 9]);
  expect(monthsOfSeason({ from: '12-01', to: '03-15' })).toEqual([12, 1, 2, 3]);
  expect(monthsOfSeason({ from: '07-02', to: '07-02' })).toEqual([7]);
  // From 15 June round to 1 June: every month, and June once.
  expect(monthsOfSeason({ from: '06-15', to: '06-01' })).toHaveLength(12);
});
