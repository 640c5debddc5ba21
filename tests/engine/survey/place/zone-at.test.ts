import zoneLookup from '@photostructure/tz-lookup';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { towns } from '../../../../engine/survey/place/places.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';

const seed = 5;

// What the table was made from, asked at other points than those it was made at: @photostructure/tz-lookup 11.7.
it('names the zone that the reference library names, anywhere on the globe', () => {
  // Off the cells' edges, which belong to one side or the other by the last bit of a division.
  const anywhere = fc
    .tuple(fc.integer({ min: -8999, max: 8999 }), fc.integer({ min: -17999, max: 17999 }))
    .map((place) => place.map((n) => n / 100 + 0.0037));
  fc.assert(
    fc.property(anywhere, ([latitude, longitude]) => {
      expect(zoneAt(latitude, longitude)).toBe(zoneLookup(latitude, longitude));
    }),
    { seed, numRuns: 300 },
  );
});

it('and near towns, where borders are close', () => {
  for (const [index, { latitude, longitude }] of towns().entries()) {
    const east = longitude + 0.37 * Math.sin(index);
    const north = latitude + 0.37 * Math.cos(index);
    expect(zoneAt(north, east)).toBe(zoneLookup(north, east));
  }
});

it('the poles and both sides of the date line have zones; beyond them there is no place', () => {
  for (const [latitude, longitude] of [
    [90, 0],
    [-90, 0],
    [0, 180],
    [0, -180],
    [-90, 180],
  ])
    expect(zoneAt(latitude, longitude)).toMatch(/^\w+\/\w+/);
  for (const [latitude, longitude] of [
    [90.1, 0],
    [0, 180.1],
    [Number.NaN, 0],
  ])
    expect(() => zoneAt(latitude, longitude)).toThrow(RangeError);
});
