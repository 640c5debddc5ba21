import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { isTimeZone } from '../../../../engine/sun/days/zone.ts';
import { OWN_NAMES } from '../../../../engine/survey/place/own-names.ts';
import { nearestTown, plain, townMeant, towns, townWords } from '../../../../engine/survey/place/places.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';
import { CAPITALS } from '../../../make/capitals.ts';
import { citiesOfPackage, makePlaces, placesText } from '../../../make/places.ts';

const FILE = new URL('../../../../engine/survey/place/places.json', import.meta.url);

describe('the built-in list of towns', () => {
  test('is what its script makes of the package, and lean', () => {
    const text = readFileSync(FILE, 'utf8');
    expect(text).toBe(placesText(makePlaces(citiesOfPackage())));
    expect(gzipSync(text).length).toBeLessThan(12_500);
    expect(towns().length).toBeGreaterThanOrEqual(250);
    expect(towns().length).toBeLessThanOrEqual(700);
  });

  test('every town has a zone that exists, and the zone of its coordinates agrees but for a few at borders', () => {
    let disagreements = 0;
    for (const town of towns()) {
      expect(isTimeZone(town.timeZone), town.name).toBe(true);
      if (zoneAt(town.latitude, town.longitude) !== town.timeZone) disagreements += 1;
    }
    // Renamed zones (Rangoon, Chongqing) count here too.
    expect(disagreements).toBeLessThan(towns().length * 0.1);
  });

  test('a town is found by its first letters, without accents or capitals', () => {
    expect(townMeant('phoe')?.town).toMatchObject({
      name: 'Phoenix',
      country: 'United States of America',
      timeZone: 'America/Phoenix',
    });
    const namesakes = townMeant('córdoba');
    expect([namesakes?.town, ...(namesakes?.others ?? [])].map((town) => town?.country)).toEqual(
      expect.arrayContaining(['Spain', 'Argentina']),
    );
    expect(townMeant('cordoba, and')?.town).toMatchObject({ country: 'Spain' });
    expect(townMeant('alice')?.town).toMatchObject({ timeZone: 'Australia/Darwin' });
    expect(townMeant('xyzzy')).toBeNull();
    expect(townMeant('  ')).toBeNull();
  });

  test('towns are found by what their own people call them, and told by the list’s names', () => {
    for (const [name, owns = []] of Object.entries(OWN_NAMES)) {
      expect(
        towns().filter((town) => town.name === name),
        name,
      ).toHaveLength(1);
      for (const own of owns) {
        expect(plain(own), own).toBe(own);
        expect(townMeant(own)?.town.name, own).toBe(name);
      }
    }
    expect(townMeant('Sevil')).toMatchObject({ town: { name: 'Seville' }, others: [] });
    for (const typed of ['Sevilla, Spain', 'München', 'Αθήνα', 'roma italy', 'Ciudad de México'])
      expect(townMeant(typed), typed).toMatchObject({ others: [] });
    // Its own name goes before others that begin like it.
    expect(townMeant('roma')?.town.name).toBe('Rome');
  });

  test('the 300 largest towns between 50° north and south, and every capital', () => {
    const has = ({ city, country }: { city: string; country: string }): boolean =>
      towns().some((town) => plain(town.name) === plain(city) && town.country === country);
    const largest = citiesOfPackage()
      .filter(({ lat }) => Math.abs(lat) <= 50)
      .toSorted((a, b) => b.pop - a.pop)
      .slice(0, 300);
    expect(largest.filter((city) => !has(city))).toEqual([]);
    for (const capital of ['Canberra', 'Ottawa', 'Reykjavík', 'Quito', 'Windhoek', 'Islamabad', 'Wellington'])
      expect(townMeant(capital)?.town.name, capital).toBe(capital);
    expect(CAPITALS.length).toBeGreaterThan(190);
  });

  test.each([
    ['Bakersfield, California', 'Bakersfield, California'],
    ['bakersfield ca', 'Bakersfield, California'],
    ['Phoenix, AZ, USA', 'Phoenix, Arizona'],
    ['Córdoba, Spain', 'Córdoba, Spain'],
    ['cordoba argentina', 'Córdoba, Argentina'],
    ['Valencia, Spain', 'Valencia, Spain'],
    ['Hyderabad, Pak', 'Hyderabad, Pakistan'],
    ['Dubai, UAE', 'Dubai, United Arab Emirates'],
    ['Seville, Andalusia', 'Seville, Spain'],
  ])('"%s" is %s', (typed, meant) => {
    const found = townMeant(typed);
    expect(found && plain(townWords(found.town))).toBe(plain(meant));
    expect(found?.others).toEqual([]);
  });

  test('a name that several towns have names them all, and each of those words finds its own town', () => {
    const { town, others } = townMeant('cordoba')!;
    expect([town, ...others].map(({ country }) => country)).toEqual(expect.arrayContaining(['Spain', 'Argentina']));
    for (const each of towns()) expect(townMeant(townWords(each))?.town, townWords(each)).toBe(each);
  });

  test('the nearest town to a yard', () => {
    const { town, kilometres } = nearestTown(33.4, -112.2);
    expect(town.name).toBe('Phoenix');
    expect(kilometres).toBeLessThan(25);
  });
});
