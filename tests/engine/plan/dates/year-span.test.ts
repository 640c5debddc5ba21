import { expect, it } from 'vitest';
import { inYearlySpan } from '../../../../engine/plan/dates/year-span.ts';

it('a span within a year holds both its ends', () => {
  const summer = { from: '05-10', to: '09-30' };
  for (const [day, inside] of [
    ['05-09', false],
    ['05-10', true],
    ['07-04', true],
    ['09-30', true],
    ['10-01', false],
  ] as const)
    expect(inYearlySpan(summer, day)).toBe(inside);
});

it('a span across New Year holds the winter', () => {
  const winter = { from: '12-01', to: '03-01' };
  for (const [day, inside] of [
    ['11-30', false],
    ['12-01', true],
    ['12-31', true],
    ['01-01', true],
    ['02-29', true],
    ['03-01', true],
    ['03-02', false],
  ] as const)
    expect(inYearlySpan(winter, day)).toBe(inside);
});

it('a span of one day is that day', () => {
  expect(inYearlySpan({ from: '06-21', to: '06-21' }, '06-21')).toBe(true);
  expect(inYearlySpan({ from: '06-21', to: '06-21' }, '06-20')).toBe(false);
});
