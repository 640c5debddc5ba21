import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseCoordinates } from '../../../../engine/survey/place/coordinates.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

describe('coordinates as people write them', () => {
  test.each([
    ['37.88, -4.78', 37.88, -4.78],
    ['37.88 −4.78', 37.88, -4.78],
    ['37.88,-4.78', 37.88, -4.78],
    ['37,88 -4,78', 37.88, -4.78],
    ['37,88, -4,78', 37.88, -4.78],
    ['37,88,-4,78', 37.88, -4.78],
    ['37,88; -4,78', 37.88, -4.78],
    ['-34.45 / 140.57', -34.45, 140.57],
    ['37°53′N 4°47′W', 37 + 53 / 60, -(4 + 47 / 60)],
    ['37° 53\' 24" N, 4° 46\' 48" W', 37.89, -4.78],
    ['34º27’S 140º34,2’E', -34.45, 140.57],
    ['N 37.88 W 4.78', 37.88, -4.78],
    ['4.78W 37.88N', 37.88, -4.78],
    ['37 53 24 N 4 46 48 W', 37.89, -4.78],
    ["-34°27' 140°34.2'", -34.45, 140.57],
    ['0 0', 0, 0],
    ["-0°30' 10°", -0.5, 10],
  ])('%s', (text, latitude, longitude) => {
    const place = valueOf(parseCoordinates(text));
    expect(place.latitude).toBeCloseTo(latitude, 10);
    expect(place.longitude).toBeCloseTo(longitude, 10);
  });

  test.each([
    ['', 'no place yet'],
    ['37.88', 'one latitude and one longitude'],
    ['somewhere hot', 'does not belong'],
    ['37.88N 4.78', 'one latitude and one longitude'],
    ['12 N 13 N', 'same direction'],
    ['-3 S 4 E', 'both a sign and a letter'],
    ['140.57, -34.45', 'was the longitude written first?'],
    ['91 200', 'beyond 90°'],
    ['45, 181', 'beyond 180°'],
    ["37°61'N 4°47'W", '0 to 59'],
    ["37.5°30'N 4°47'W", 'only the last number'],
    ['1 2 3 4 N 5 E', 'no angle'],
  ])('%s is refused: %s', (text, reason) => {
    expect(reasonOf(parseCoordinates(text))).toContain(reason);
  });

  test('whatever place is written out in degrees and minutes with letters comes back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -89, max: 89 }),
        fc.integer({ min: 0, max: 59 }),
        fc.integer({ min: -179, max: 179 }),
        fc.integer({ min: 0, max: 59 }),
        (lat, latMinutes, lon, lonMinutes) => {
          const text =
            `${Math.abs(lat)}°${latMinutes}′${lat < 0 ? 'S' : 'N'} ` +
            `${Math.abs(lon)}°${lonMinutes}′${lon < 0 ? 'W' : 'E'}`;
          const place = valueOf(parseCoordinates(text));
          expect(Math.abs(place.latitude)).toBeCloseTo(Math.abs(lat) + latMinutes / 60, 9);
          expect(place.latitude < 0).toBe(lat < 0);
          expect(place.longitude < 0).toBe(lon < 0);
        },
      ),
      { seed: 71 },
    );
  });
});
