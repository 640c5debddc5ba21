import { beforeAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../../../engine/plan/types.ts';
import { localIso } from '../../../../engine/sun/days/zone.ts';
import { samplesOf, type Period, type SampleTable } from '../../../../engine/sun/samples.ts';
import { parseEpw } from '../../../../engine/sun/weather/epw.ts';
import { hourFinder, weatherExtremes, type Weather } from '../../../../engine/sun/weather/weather.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { epwBytes, epwLines, LOCATION, type EpwRow } from '../epw-file.ts';
import { planAt } from '../plan-at.ts';

function weatherOf(
  row: (month: number, day: number, hour: number) => EpwRow,
  utcOffset = 1,
  longitude = -4.8,
): Weather {
  const read = parseEpw(
    epwBytes(epwLines({ row, location: LOCATION.replace(',-4.8,1.0,', `,${longitude},${utcOffset},`) })),
  );
  mustBeOk(read);
  return read.weather;
}
function sample(plan: Plan, period: Period, weather: Weather): SampleTable {
  const result = samplesOf(plan, period, weather);
  mustBeOk(result);
  return result.samples;
}

/**
 * Every hour of the year has a diffuse, a beam and an air of its own: month and day, its stamp, and a mixture; the beam
 * is so small that it counts as none by night.
 */
const coded = (month: number, day: number, hour: number): EpwRow => ({
  beam: hour,
  diffuse: month * 100 + day,
  air: 20 + hour / 2 + day / 100,
  humidity: 20 + hour,
  wind: 1 + hour / 10,
});
let weather: Weather;
beforeAll(() => {
  weather = weatherOf(coded);
});

describe('the hour of a weather file', () => {
  it('is the one that ends at its stamp, by standard time', () => {
    const hourOf = hourFinder(weather, '2026-07-20');
    // 15:10 by the clock of Madrid in summer is 14:10 standard time: the hour that ends at 15.
    const index = hourOf(Date.UTC(2026, 6, 20, 13, 10));
    expect([weather.diffuse[index], weather.beam[index]]).toEqual([720, 15]);
    expect(weather.beam[hourOf(Date.UTC(2026, 6, 20, 13, 59, 59))]).toBe(15);
    expect(weather.beam[hourOf(Date.UTC(2026, 6, 20, 14, 0))]).toBe(16);
  });

  it('belongs to the day before just after midnight by the summer clock', () => {
    const index = hourFinder(weather, '2026-07-01')(Date.UTC(2026, 5, 30, 22, 30));
    expect([weather.diffuse[index], weather.beam[index]]).toEqual([630, 24]);
  });

  it('belongs to the year’s other end across New Year, whatever the year', () => {
    const behind = weatherOf(coded, -3);
    const index = hourFinder(behind, '2031-01-01')(Date.UTC(2031, 0, 1, 2, 30));
    expect([behind.diffuse[index], behind.beam[index]]).toEqual([1231, 24]);
    const ahead = hourFinder(weather, '2026-12-31')(Date.UTC(2026, 11, 31, 23, 30));
    expect([weather.diffuse[ahead], weather.beam[ahead]]).toEqual([101, 1]);
  });

  it('of 29 February is the 28th’s', () => {
    const index = hourFinder(weather, '2028-02-29')(Date.UTC(2028, 1, 29, 11, 30));
    expect([weather.diffuse[index], weather.beam[index]]).toEqual([228, 13]);
    const next = hourFinder(weather, '2028-03-01')(Date.UTC(2028, 2, 1, 11, 30));
    expect(weather.diffuse[next]).toBe(301);
    expect(weatherExtremes(weather, '2028-02-29')).toEqual({ high: 32.28, low: 20.78 });
  });

  it('is found for files in half hours of time zone', () => {
    const india = weatherOf(coded, 5.5, 77.2);
    const index = hourFinder(india, '2026-05-09')(Date.UTC(2026, 4, 9, 6, 31));
    expect([india.diffuse[index], india.beam[index]]).toEqual([509, 13]);
  });
});

describe('samples with a weather file', () => {
  const plan = planAt({ climate: { offset: 1.5 } });

  it('take beam, diffuse, air, humidity and wind from the hour', () => {
    const table = sample(plan, { kind: 'season' }, weather);
    for (let index = 0; index < table.count; index += 7) {
      const standard = localIso(table.when[index] - 3_600_000, 'Europe/Madrid');
      const stamp = Number(standard.slice(11, 13)) + 1;
      const month = Number(standard.slice(5, 7));
      const day = Number(standard.slice(8, 10));
      expect(table.beam[index]).toBe(stamp);
      expect(table.diffuse[index]).toBe(month * 100 + day);
      expect(table.air[index]).toBeCloseTo(20 + stamp / 2 + day / 100 + 1.5, 10);
      expect(table.humidity[index]).toBe(20 + stamp);
      expect(table.humidityAir[index]).toBe(table.air[index]);
      expect(table.wind[index]).toBeCloseTo(1 + stamp / 10, 10);
      expect(table.sunshine[index]).toBe(1);
      expect(table.spread[index]).toBe(0);
      expect(table.global[index]).toBeCloseTo(
        table.beam[index] * Math.sin((table.altitude[index] * Math.PI) / 180) + month * 100 + day,
        9,
      );
    }
  });

  it('have each day’s own extremes, with the offset', () => {
    const { days } = sample(plan, { kind: 'day', date: '08-09' }, weather);
    expect(days[0].high).toBeCloseTo(32.09 + 1.5, 10);
    expect(days[0].low).toBeCloseTo(20.59 + 1.5, 10);
    expect(days[0].spread).toBe(0);
  });

  it('take the month’s humidity and wind where the file has none', () => {
    const dry = weatherOf(() => ({ humidity: 999, wind: 999, air: 30 }));
    const yard = planAt({ climate: { months: [{ month: 7, high: 37, low: 20, humidity: 24, wind: 1.7 }] } });
    const table = sample(yard, { kind: 'day', date: '07-10' }, dry);
    expect([table.humidity[20], table.wind[20]]).toEqual([24, 1.7]);
    expect(table.humidityAir[20]).toBeCloseTo(30, 10);
  });

  it('of the heatwave day have a clear sky and the two-cosine air all the same, from the file’s months', () => {
    const hotAugust = weatherOf((month, _day, hour) => ({
      air: hour === 15 ? (month === 8 ? 40 : 34) : 21,
      beam: 1,
      diffuse: 2,
    }));
    const yard = planAt({ climate: { heatwaveHigh: 46 } });
    const table = sample(yard, { kind: 'heatwave' }, hotAugust);
    expect(table.days[0]).toMatchObject({ date: '2026-08-21', spread: 0 });
    expect(table.days[0].high).toBeCloseTo(46, 10);
    expect(table.days[0].low).toBeCloseTo(27, 10);
    expect(Math.max(...table.beam)).toBeGreaterThan(800);
    expect([...table.beam]).toEqual([...sampleClear(yard).beam]);
  });

  const sampleClear = (yard: Plan): SampleTable => {
    const result = samplesOf(yard, { kind: 'day', date: '08-21' });
    mustBeOk(result);
    return result.samples;
  };
});
