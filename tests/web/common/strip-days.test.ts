import { expect, test } from 'vitest';
import { dateAt, isOn, piecesOn, placeOn, stripOf } from '../../../web/common/strip-days.ts';

const NORTHERN = { year: 2028, from: '06-01', to: '09-15' };
const SOUTHERN = { year: 2027, from: '12-01', to: '03-15' };

test('a leap year has 366 days, and 29 February a place of its own', () => {
  expect(stripOf(NORTHERN, 2027).days).toBe(365);
  const leap = stripOf(NORTHERN, 2028);
  expect(leap).toMatchObject({ first: '2028-01-01', days: 366 });
  expect(
    ['2028-02-28', '2028-02-29', '2028-03-01', '2028-12-31'].map((date) => Math.round(placeOn(leap, date) * 366)),
  ).toEqual([58, 59, 60, 365]);
});

test('where the season crosses New Year the strip begins in July and holds both years', () => {
  const strip = stripOf(SOUTHERN, 2027);
  expect(strip).toMatchObject({ first: '2027-07-01', days: 366 });
  expect(
    ['2027-06-30', '2027-07-01', '2028-02-29', '2028-06-30', '2028-07-01'].map((date) => isOn(strip, date)),
  ).toEqual([false, true, true, true, false]);
  // 30 days of July are over on the 31st; January of the next year comes 184 days after 1 July.
  expect(['2027-07-31', '2028-01-01'].map((date) => Math.round(placeOn(strip, date) * 366))).toEqual([30, 184]);
});

test('a winter that runs over the strip’s end is drawn in two pieces of its whole length', () => {
  const strip = stripOf(NORTHERN, 2027);
  const pieces = piecesOn(strip, '2027-12-10', '2028-02-10');
  expect(pieces.map(([at, width]) => [Math.round(at * 365), Math.round(width * 365)])).toEqual([
    [343, 22],
    [0, 41],
  ]);
});

test.each([
  ['a season of a leap year', NORTHERN],
  ['a season over New Year into a leap year', SOUTHERN],
])('every day of the strip of %s can be picked, 29 February too', (_, season) => {
  const strip = stripOf(season, season.year);
  const places = Array.from({ length: strip.days }, (_day, place) => place);
  const picked = places.map((place) => dateAt(strip, place));
  expect(picked.filter((date) => date === '02-29')).toHaveLength(1);
  expect(new Set(picked).size).toBe(366);
  expect(picked.map((date) => Math.round(placeOn(strip, `${season.year}-${date}`) * strip.days))).toEqual(places);
});

test('a year without 29 February has its bead on 1 March', () => {
  const strip = stripOf(NORTHERN, 2027);
  expect(placeOn(strip, '2027-02-29')).toBe(placeOn(strip, '2027-03-01'));
  expect(Array.from({ length: strip.days }, (_, place) => dateAt(strip, place))).not.toContain('02-29');
});
