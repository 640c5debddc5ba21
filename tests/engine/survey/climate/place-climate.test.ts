import { describe, expect, test } from 'vitest';
import { placeClimate, type PlaceClimate } from '../../../../engine/survey/climate/place-climate.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

const at = (latitude: number, longitude: number): { latitude: number; longitude: number; timeZone: string } => ({
  latitude,
  longitude,
  timeZone: zoneAt(latitude, longitude),
});

const hottest = ({ climate }: PlaceClimate): number => Math.max(...climate.months.map(({ high }) => high));

describe('the climate of a place', () => {
  /**
   * Mean high of the hottest month, NOAA U.S. Climate Normals 1981–2010, from memory. [°C] By their climate types alone
   * these fell 4 to 6 K too cool.
   */
  test.each([
    ['Las Vegas', 36.17, -115.14, 40.1],
    ['Palm Springs', 33.83, -116.55, 42],
    ['El Paso', 31.76, -106.49, 35.7],
  ])('%s is within 1 K of its published summer', (name, latitude, longitude, high) => {
    const place = valueOf(placeClimate(at(latitude, longitude)));
    expect(Math.abs(hottest(place) - high)).toBeLessThan(1);
    expect(place.climate.from).toBe('rough');
    expect(place.climate.source).toMatch(new RegExp(`^Rough: published normals of .*${name}`));
    expect(place.climate.source).toContain('may be off by 1 °C');
    expect(place.climate.source).toContain('World Weather Information Service');
  });

  test('between towns the error grows, is told, and the heatwave is planned for on its hot end', () => {
    const town = valueOf(placeClimate({ ...at(24.72, 46.73), elevation: 635, bySea: false }));
    const between = valueOf(placeClimate({ ...at(25.4, 48.6), elevation: 635, bySea: false }));
    expect(between.climate.source).toMatch(/Riyadh.* km.* away, brought to 635 m: .* may be off by 2 °C/);
    expect(between.climate.how?.months?.pm).toBeGreaterThan((town.climate.how?.months?.pm ?? 9) + 0.5);
    const above = ({ climate }: PlaceClimate, place: PlaceClimate): number => climate.heatwaveHigh - hottest(place);
    expect(above(between, between)).toBeGreaterThan(above(town, town) + 0.5);
  });

  test('far from every town of the table the climate type holds as before, and why is said', () => {
    const finding = placeClimate(at(0, -100));
    expect(valueOf(finding).near).toEqual([]);
    expect(valueOf(finding).climate.source).toMatch(/^Rough: the climate type "wet tropics/);
    expect(finding.ok && finding.notes[0]).toMatch(/^The nearest town .* too far/);
    expect(valueOf(finding).climate.how).toEqual({ months: { by: 'guess', pm: 3 } });
  });

  /** Published by their weather services, 1981–2010, from memory. [°C] By their types they fell 5 and 2 K too hot. */
  test.each([
    ['Córdoba, Argentina', -31.42, -64.18, 30.5],
    ['Canberra', -35.28, 149.13, 28],
  ])(
    'a milder town is carried where its type or its neighbours would tell it too hot: %s',
    (_, latitude, longitude, high) => {
      expect(Math.abs(hottest(valueOf(placeClimate(at(latitude, longitude)))) - high)).toBeLessThan(1.5);
    },
  );

  test('a chosen type comes before the towns', () => {
    const place = valueOf(placeClimate({ ...at(36.17, -115.14), type: 'high-desert' }));
    expect(hottest(place)).toBe(33);
    expect(place.near).toEqual([]);
  });

  test('the person’s own three numbers shift the towns’ months, and cannot contradict each other', () => {
    const known = { high: 38, low: 25, hottest: 45 };
    const { climate } = valueOf(placeClimate({ ...at(36.17, -115.14), known }));
    expect(climate.months[6]).toMatchObject({ high: expect.closeTo(38, 9), low: expect.closeTo(25, 9) });
    expect(climate.heatwaveHigh).toBe(45);
    expect(climate.source).toContain('shifted to your July high of 38 °C');
    expect(reasonOf(placeClimate({ ...at(36.17, -115.14), known: { ...known, low: 40 } }))).toContain('not below');
  });

  test('a yard by the sea is told from the coast, one behind it from the inland', () => {
    const spot = at(35.37, -119.02);
    expect(hottest(valueOf(placeClimate({ ...spot, bySea: true })))).toBeLessThan(
      hottest(valueOf(placeClimate({ ...spot, bySea: false }))) - 3,
    );
  });

  test('a height makes it cooler; a height that nobody gave does not', () => {
    const spot = at(36.17, -115.14);
    const high = hottest(valueOf(placeClimate({ ...spot, elevation: 1665 })));
    expect(hottest(valueOf(placeClimate(spot))) - high).toBeCloseTo(6.5, 0);
  });
});
