import { describe, expect, test } from 'vitest';
import { CLIMATE_TYPES } from '../../../../engine/survey/climate/climate-types.ts';
import { askedMonth } from '../../../../engine/survey/climate/known-temperatures.ts';
import { climateTypeOf, likelyClimate, roughClimate } from '../../../../engine/survey/climate/rough-climate.ts';
import { towns } from '../../../../engine/survey/place/places.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

describe('rough climates', () => {
  test('every type has twelve months that a thermometer could show', () => {
    for (const type of CLIMATE_TYPES) {
      for (const series of [type.high, type.low, type.humidity, type.sunshine, type.turbidity])
        expect(series, type.id).toHaveLength(12);
      type.high.forEach((high, i) => expect(high - type.low[i], `${type.id} ${i}`).toBeGreaterThan(5));
      expect(Math.min(...type.sunshine)).toBeGreaterThan(0.3);
      expect(Math.max(...type.sunshine)).toBeLessThan(0.95);
      expect(type.hottest).toBeGreaterThan(Math.max(...type.high));
    }
  });

  test('it says that it is rough', () => {
    const climate = valueOf(roughClimate(CLIMATE_TYPES[0], 33.4));
    expect(climate.from).toBe('rough');
    expect(climate.source).toContain('from memory');
  });

  test('south of the equator the same summer comes half a year later', () => {
    const type = CLIMATE_TYPES[3];
    const north = valueOf(roughClimate(type, 37)).months;
    const south = valueOf(roughClimate(type, -34)).months;
    expect(south[0]).toEqual({ ...north[6], month: 1 });
    expect(south[7]).toEqual({ ...north[1], month: 8 });
  });

  test('three known numbers are laid over it, in January south of the equator', () => {
    expect(askedMonth(37)).toBe(7);
    expect(askedMonth(-34)).toBe(1);
    const known = { high: 34, low: 15.5, hottest: 46 };
    const climate = valueOf(roughClimate(CLIMATE_TYPES[3], -34, known));
    expect(climate.months[0]).toMatchObject({ month: 1, high: 34, low: 15.5 });
    expect(climate.heatwaveHigh).toBe(46);
    expect(climate.source).toContain('January high of 34 °C');
    const july = valueOf(roughClimate(CLIMATE_TYPES[3], -34)).months[6];
    expect(climate.months[6].high).toBeCloseTo(july.high - 2, 9);
  });

  test('a low never passes its high, and the hottest day is never cooler than the hottest month', () => {
    const monsoon = climateTypeOf('monsoon');
    if (!monsoon) throw new Error('no such type');
    const finding = roughClimate(monsoon, 26, { high: 33, low: 30, hottest: 34 });
    const climate = valueOf(finding);
    for (const { high, low } of climate.months) expect(low).toBeLessThan(high);
    expect(climate.heatwaveHigh).toBe(Math.max(...climate.months.map(({ high }) => high)));
    expect(finding.ok && finding.notes).toHaveLength(2);
  });

  test('numbers that cannot be are asked about', () => {
    const known = (high: number, low: number, hottest: number) =>
      reasonOf(roughClimate(CLIMATE_TYPES[0], 33, { high, low, hottest }));
    expect(known(25, 30, 44)).toContain('not below the high');
    expect(known(40, 28, 36)).toContain('cannot be cooler');
    expect(known(104, 82, 117)).toContain('between −20 and 58 °C');
  });

  test('every town of the list gets a type, and the well-known ones the right one', () => {
    for (const town of towns()) expect(likelyClimate(town).id).toBeTruthy();
    expect(likelyClimate({ latitude: 33.5, timeZone: 'America/Phoenix' }).id).toBe('low-desert');
    expect(likelyClimate({ latitude: 37.9, timeZone: 'Europe/Madrid' }).id).toBe('mediterranean-inland');
    expect(likelyClimate({ latitude: -34.4, timeZone: 'Australia/Adelaide' }).id).toBe('mediterranean-inland');
    expect(likelyClimate({ latitude: 29.8, timeZone: 'America/Chicago' }).id).toBe('humid-subtropical');
    expect(likelyClimate({ latitude: 28.6, timeZone: 'Asia/Kolkata' }).id).toBe('monsoon');
    expect(likelyClimate({ latitude: -23.7, timeZone: 'Australia/Darwin' }).id).toBe('low-desert');
    expect(likelyClimate({ latitude: 1.3, timeZone: 'Asia/Singapore' }).id).toBe('wet-tropical');
    expect(likelyClimate({ latitude: 12, timeZone: 'Nowhere/Known' }).id).toBe('tropical-wet-dry');
    const pacific = (latitude: number, longitude: number, bySea = false): string =>
      likelyClimate({ latitude, longitude, timeZone: 'America/Los_Angeles', bySea }).id;
    expect(pacific(36.17, -115.14), 'Las Vegas').toBe('low-desert');
    expect(pacific(33.83, -116.55), 'Palm Springs').toBe('low-desert');
    expect(pacific(39.53, -119.81), 'Reno').toBe('high-desert');
    expect(pacific(36.75, -119.77), 'Fresno').toBe('mediterranean-inland');
    expect(pacific(32.72, -117.16, true), 'San Diego').toBe('mediterranean-coast');
  });
});
