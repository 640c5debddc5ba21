import { expect, test } from 'vitest';
import { dayIndex, LEAP_YEAR } from '../../../engine/scene/year.ts';

test('366 days in order, 29 February among them', () => {
  expect(LEAP_YEAR).toHaveLength(366);
  expect([...LEAP_YEAR].sort()).toEqual(LEAP_YEAR);
  expect(['01-01', '02-29', '03-01', '12-31'].map(dayIndex)).toEqual([0, 59, 60, 365]);
});

test('what is no day of the year is refused by name', () => {
  expect(() => dayIndex('04-31')).toThrow('Expected a day of the year as MM-DD, got "04-31".');
});
