import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { letterOf, numberOf } from '../../../../engine/survey/climate/letters.ts';
import { NORMALS } from '../../../../engine/survey/climate/nearest-normals.ts';
import { faultsOf } from '../../../make/normals-faults.ts';
import { makeNormals, normalsText, RAW, SOURCES, townsOfCsv } from '../../../make/normals.ts';

const KEYS = Object.keys(SOURCES);
const TABLE = townsOfCsv(readFileSync(RAW, 'utf8'));

describe('the table of published normals', () => {
  test('normals.json is what the script makes of normals.csv, and unpacks to the same numbers', () => {
    const made = new URL('../../../../engine/survey/climate/normals.json', import.meta.url);
    expect(readFileSync(made, 'utf8')).toBe(normalsText(makeNormals(TABLE)));
    for (const town of NORMALS) {
      const raw = TABLE.find(({ name, country }) => name === town.name && country === town.country);
      expect(town, town.name).toEqual({ ...raw, humidity: raw?.humidity?.map(Math.round) });
    }
  });

  test('more than 120 towns, on every continent with a hot summer', () => {
    expect(NORMALS.filter(({ high }) => Math.max(...high) >= 30).length).toBeGreaterThan(200);
    for (const country of [
      'US-AZ',
      'Mexico',
      'Spain',
      'Morocco',
      'Egypt',
      'Saudi Arabia',
      'Iran',
      'India',
      'Mali',
      'Australia',
      'Argentina',
    ])
      expect(
        NORMALS.some((town) => town.country === country),
        country,
      ).toBe(true);
  });

  test.each([
    ['a low over its high', { low: TABLE[0].high }, 'highs and lows'],
    ['the seasons of the other half of the world', { latitude: -TABLE[0].latitude }, 'hottest in month'],
    ['one month mistyped', { high: TABLE[0].high.map((high, month) => (month === 3 ? high + 10 : high)) }, 'month 4'],
    ['eleven months', { low: TABLE[0].low.slice(1) }, 'not twelve'],
    ['a town under water', { elevation: -900 }, 'no such place'],
    ['an unnamed source', { source: 'hearsay' }, 'no source'],
  ])('it refuses %s', (_, wrong, why) => {
    expect(faultsOf([{ ...TABLE[0], ...wrong }], KEYS).join()).toContain(why);
  });

  test('it refuses a town twice, and one with another’s numbers', () => {
    expect(faultsOf([TABLE[0], TABLE[0]], KEYS)).toHaveLength(3);
    expect(faultsOf([TABLE[0], { ...TABLE[0], name: 'B', latitude: 33 }], KEYS).join()).toContain(
      `highs of ${TABLE[0].name}`,
    );
    expect(faultsOf(TABLE, KEYS)).toEqual([]);
  });

  test('a letter for every number up to 300 either way, each its own, none that JSON must escape', () => {
    const numbers = Array.from({ length: 601 }, (_, k) => k - 300);
    const letters = numbers.map(letterOf);
    expect(letters.map(numberOf)).toEqual(numbers);
    expect(JSON.stringify(letters.join(''))).toHaveLength(603);
    expect(() => letterOf(400)).toThrow(RangeError);
  });
});
