import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { findTowns, nearestTown, TOWNS } from '../../../../engine/survey/place/places.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';
import { isTimeZone } from '../../../../engine/sun/zone.ts';
import { citiesOfPackage, makePlaces, placesText } from '../../../make/places.ts';

const FILE = new URL('../../../../engine/survey/place/places.json', import.meta.url);

describe('the built-in list of towns', () => {
  test('is what its script makes of the package, and lean', () => {
    const text = readFileSync(FILE, 'utf8');
    expect(text).toBe(placesText(makePlaces(citiesOfPackage())));
    expect(gzipSync(text).length).toBeLessThan(12_000);
    expect(TOWNS.length).toBeGreaterThanOrEqual(250);
    expect(TOWNS.length).toBeLessThanOrEqual(410);
  });

  test('every town has a zone that exists, and the zone of its coordinates agrees but for a few at borders', () => {
    let disagreements = 0;
    for (const town of TOWNS) {
      expect(isTimeZone(town.timeZone), town.name).toBe(true);
      if (zoneAt(town.latitude, town.longitude) !== town.timeZone) disagreements += 1;
    }
    // Renamed zones (Rangoon, Chongqing) count here too.
    expect(disagreements).toBeLessThan(TOWNS.length * 0.1);
  });

  test('a town is found by its first letters, without accents or capitals', () => {
    expect(findTowns('phoe')[0]).toMatchObject({
      name: 'Phoenix',
      country: 'United States of America',
      timeZone: 'America/Phoenix',
    });
    expect(findTowns('córdoba').map(({ country }) => country)).toEqual(expect.arrayContaining(['Spain', 'Argentina']));
    expect(findTowns('cordoba, and')[0]).toMatchObject({ country: 'Spain' });
    expect(findTowns('alice')[0]).toMatchObject({ timeZone: 'Australia/Darwin' });
    expect(findTowns('xyzzy')).toEqual([]);
    expect(findTowns('  ')).toEqual([]);
    expect(findTowns('a', 3)).toHaveLength(3);
  });

  test('the nearest town to a yard', () => {
    const { town, kilometres } = nearestTown(33.4, -112.2);
    expect(town.name).toBe('Phoenix');
    expect(kilometres).toBeLessThan(25);
  });
});
