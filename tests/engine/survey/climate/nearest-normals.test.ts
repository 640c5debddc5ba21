import { describe, expect, test } from 'vitest';
import {
  blendNormals,
  errorBeyondTown,
  FARTHEST,
  likelyError,
  type Spot,
  townsNear,
  type TownNormals,
} from '../../../../engine/survey/climate/blend-normals.ts';
import { CLIMATE_TYPES, type ClimateType } from '../../../../engine/survey/climate/climate-types.ts';
import { hottestDayAbove, NORMALS, nearestNormals } from '../../../../engine/survey/climate/nearest-normals.ts';
import { climateTypeOf, likelyClimate, roughClimate } from '../../../../engine/survey/climate/rough-climate.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

const DESERT_TYPE = typeNamed('low-desert');

describe('published normals of the nearest towns', () => {
  /** Mean daily high of the hottest month, as the weather services publish it on worldweather.wmo.int. [°C] */
  const PUBLISHED: readonly [name: string, country: string, month: number, high: number][] = [
    ['Las Vegas', 'US-NV', 7, 40.1],
    ['Palm Springs', 'US-CA', 7, 41.8],
    ['El Paso', 'US-TX', 6, 35.6],
    ['Phoenix', 'US-AZ', 7, 41],
    ['Cordoba', 'Spain', 7, 36.8],
    ['Seville', 'Spain', 7, 36],
    ['Riyadh', 'Saudi Arabia', 8, 43.7],
    ['Delhi', 'India', 5, 40.5],
    ['Alice Springs', 'Australia', 1, 36.9],
    ['Marrakesh', 'Morocco', 7, 37.7],
  ];

  test.each(PUBLISHED)('%s, %s: a yard in town gets its numbers', (name, country, month, high) => {
    const { months, pm, words } = valueOf(nearestNormals(townNamed(name, country), DESERT_TYPE));
    expect(months[month - 1].high).toBeCloseTo(high, 0);
    expect(words).toMatch(new RegExp(`^published normals of .*${name}.*, here`));
    expect(pm).toBeLessThan(1);
  });

  /** Those with another town of the table near enough to tell them. */
  test.each([
    ['El Paso', 'US-TX'],
    ['Phoenix', 'US-AZ'],
    ['Yuma', 'US-AZ'],
    ['Tucson', 'US-AZ'],
    ['Fresno', 'US-CA'],
    ['Cordoba', 'Spain'],
    ['Seville', 'Spain'],
    ['Baghdad', 'Iraq'],
    ['Delhi', 'India'],
    ['Multan', 'Pakistan'],
    ['Luxor', 'Egypt'],
  ])('%s, %s: its neighbours tell its summer within 1.5 K', (name, country) => {
    expect(Math.abs(summerOff(foretold(townNamed(name, country)), townNamed(name, country)))).toBeLessThan(1.5);
  });

  test.each([
    ['Las Vegas', 'US-NV'],
    ['Riyadh', 'Saudi Arabia'],
    ['Alice Springs', 'Australia'],
  ])('%s, %s: without it nothing is near enough, and it says so', (name, country) => {
    const town = townNamed(name, country);
    const reason = reasonOf(nearestNormals(town, DESERT_TYPE, without(town)));
    expect(reason).toMatch(/^The nearest town with published normals, .* km away/);
    expect(reason).toContain('too far');
  });

  test('with no table at all it refuses too', () => {
    expect(reasonOf(nearestNormals(NORMALS[0], DESERT_TYPE, []))).toContain('no town');
  });
});

describe('every town foretold from the others', () => {
  const KNOWN: readonly [what: string, of: (town: TownNormals) => Spot, rms: number][] = [
    ['height and shore known', (town) => town, 1.6],
    ['shore unknown', ({ latitude, longitude, elevation }) => ({ latitude, longitude, elevation }), 2.8],
    ['height unknown', ({ latitude, longitude, bySea }) => ({ latitude, longitude, bySea }), 2.5],
    ['neither known', ({ latitude, longitude }) => ({ latitude, longitude }), 2.9],
  ];

  test.each(KNOWN)('%s: two in three within the likely error, which is the error told', (_, spotOf, rms) => {
    const told = NORMALS.map((town) => ({ town, spot: spotOf(town) }))
      .map(({ town, spot }) => ({ town, spot, blend: blendNormals(spot, without(town)) }))
      .filter(({ blend }) => blend.near[0].away <= FARTHEST);
    expect(told.length).toBeGreaterThan(140);
    const off = told.map(({ town, blend }) => summerOff(blend.high, town));
    const within = told.filter(
      ({ blend, spot }, k) => Math.abs(off[k]) <= likelyError(blend.near[0].away, spot),
    ).length;
    expect(within / told.length).toBeGreaterThan(0.63);
    expect(within / told.length).toBeLessThan(0.73);
    expect(rootMeanSquare(off)).toBeLessThan(rms);
    expect(Math.abs(off.reduce((sum, value) => sum + value, 0) / off.length)).toBeLessThan(0.2);
  });

  test('the climate types, though they know the shore too, are a third farther off', () => {
    const near = NORMALS.filter((town) => townsNear(town, without(town))[0].away <= FARTHEST);
    const byTowns = rootMeanSquare(near.map((town) => summerOff(foretold(town), town)));
    const byTypes = rootMeanSquare(
      near.map((town) => {
        const type = likelyClimate({ ...town, timeZone: zoneAt(town.latitude, town.longitude) });
        const highs = valueOf(roughClimate(type, town.latitude)).months.map(({ high }) => high);
        return summerOff(highs, town);
      }),
    );
    expect(byTypes).toBeGreaterThan((4 / 3) * byTowns);
  });
});

describe('height, shore and the rest of the climate', () => {
  const town: TownNormals = { ...townNamed('El Paso', 'US-TX'), latitude: 10, longitude: 20, elevation: 1000 };
  const here: Spot = { latitude: 10, longitude: 20, elevation: 1000, bySea: false };

  test('1000 m further down it is 6.5 K warmer, as in the standard atmosphere', () => {
    const low = blendNormals({ ...here, elevation: 0 }, [town]);
    low.high.forEach((high, month) => expect(high).toBeCloseTo(town.high[month] + 6.5, 1));
    low.low.forEach((value, month) => expect(value).toBeCloseTo(town.low[month] + 6.5, 1));
    expect(blendNormals({ latitude: 10, longitude: 20 }, [town]).high).toEqual(town.high);
  });

  test('a town at the same height and on the same shore comes before a nearer one that is not', () => {
    const high = { ...town, name: 'high', elevation: 3000 };
    const coast = { ...town, name: 'coast', bySea: true };
    const far = { ...town, name: 'far', latitude: 11 };
    expect(townsNear(here, [high, coast, far]).map(({ town: { name } }) => name)).toEqual(['far', 'coast', 'high']);
    expect(townsNear({ latitude: 10, longitude: 20 }, [far, coast])[0].town.name).toBe('coast');
  });

  test('between two towns equally far away lies their mean', () => {
    const towns = [1, -1].map((east) => ({
      ...town,
      longitude: 20 + east,
      high: town.high.map((high) => high + east),
    }));
    blendNormals(here, towns).high.forEach((high, month) => expect(high).toBeCloseTo(town.high[month], 1));
  });

  test('sun and wind are the climate type’s, in the half year of the place; humidity the town’s where it has it', () => {
    const alice = valueOf(nearestNormals(townNamed('Alice Springs', 'Australia'), DESERT_TYPE));
    const southern = valueOf(roughClimate(DESERT_TYPE, -23.8)).months;
    alice.months.forEach((month, k) => expect(month).toEqual({ ...southern[k], high: month.high, low: month.low }));
    const bangkok = townNamed('Bangkok', 'Thailand');
    const humidity = valueOf(nearestNormals(bangkok, typeNamed('tropical-wet-dry'))).months.map((m) => m.humidity);
    expect(humidity).toEqual(bangkok.humidity);
  });

  /**
   * Mean yearly highest air temperature, as the headers of weather files give it (Climate Design Data 2009). [°C] The
   * hottest day of most years must not be under it, nor 3 K and the distance's error over it: it is planned for on
   * the hot end.
   */
  const YEARLY: readonly [name: string, country: string, type: string, yearly: number][] = [
    ['Las Vegas', 'US-NV', 'low-desert', 44.5],
    ['Phoenix', 'US-AZ', 'low-desert', 45.8],
    ['El Paso', 'US-TX', 'high-desert', 40.4],
    ['Dallas Fort Worth', 'US-TX', 'humid-subtropical', 39.7],
    ['Tampa', 'US-FL', 'humid-subtropical', 35],
  ];

  test.each(YEARLY)('%s, %s: the hottest day', (name, country, type, yearly) => {
    const spot = NORMALS.find((one) => one.name === name && one.country === country) ?? TAMPA;
    const { heatwaveHigh, near } = valueOf(nearestNormals(spot, typeNamed(type)));
    expect(heatwaveHigh).toBeGreaterThanOrEqual(yearly);
    expect(heatwaveHigh).toBeLessThan(yearly + 3 + errorBeyondTown(near[0].away, spot));
  });

  test('every type has a hottest day above its hottest month', () => {
    for (const type of CLIMATE_TYPES)
      for (const month of [27, 36, 41, 45.6]) expect(hottestDayAbove(type, month), type.id).toBeGreaterThan(1);
  });
});

const TAMPA: Spot = { latitude: 27.92, longitude: -82.45, elevation: 2, bySea: true };

function townNamed(name: string, country: string): TownNormals {
  const town = NORMALS.find((one) => one.name === name && one.country === country);
  if (town === undefined) throw new Error(`no ${name}, ${country}`);
  return town;
}

function typeNamed(id: string): ClimateType {
  const type = climateTypeOf(id);
  if (type === undefined) throw new Error(`no type ${id}`);
  return type;
}

function without(town: TownNormals): TownNormals[] {
  return NORMALS.filter((other) => other !== town);
}

function foretold(town: TownNormals): readonly number[] {
  return blendNormals(town, without(town)).high;
}

/** How far the mean high of the town's three hottest months is off. [K] */
function summerOff(highs: readonly number[], town: TownNormals): number {
  const months = [...town.high.keys()].sort((a, b) => town.high[b] - town.high[a]).slice(0, 3);
  return months.reduce((sum, month) => sum + highs[month] - town.high[month], 0) / 3;
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
