import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toLatLng, toLatLngs, toPlanPoint } from '../../../../web/map/leaflet/lat-lng.ts';

test('across the plan is longitude and up the plan is latitude', () => {
  expect(toLatLng([3, 7])).toEqual([7, 3]);
  expect(
    toLatLngs([
      [3, 7],
      [-1, 2],
    ]),
  ).toEqual([
    [7, 3],
    [2, -1],
  ]);
});

test('a point that goes to the map and back is the same point, to the bit', () => {
  const metres = fc.double({ min: -10_000, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(metres, metres, (x, y) => {
      const [lat, lng] = toLatLng([x, y]);
      expect(toPlanPoint({ lat, lng })).toEqual([x, y]);
    }),
    { seed: 41 },
  );
});
