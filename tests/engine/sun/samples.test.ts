import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../engine/plan/types.ts';
import { sunPosition } from '../../../engine/sun/position.ts';
import { heatDays, samplesOf, type Period, type SampleTable } from '../../../engine/sun/samples.ts';
import { airSunrise, airTemperature } from '../../../engine/sun/sky/air.ts';
import { clearSky } from '../../../engine/sun/sky/clear-sky.ts';
import { mustBeOk } from '../../parts/outcome.ts';
import { months, planAt } from './plan-at.ts';

function sample(plan: Plan, period: Period): SampleTable {
  const result = samplesOf(plan, period);
  mustBeOk(result);
  return result.samples;
}
const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);

describe('samples', () => {
  const plan = planAt({ site: { latitude: 37.4, longitude: -5.9, elevation: 12 }, climate: { turbidity: 4 } });
  const season = sample(plan, { kind: 'season' });

  it('of a season are those of its days in a row', () => {
    expect(season.days).toHaveLength(107);
    expect(season.days[0].first).toBe(0);
    expect(season.days.at(-1)?.end).toBe(season.count);
    season.days.forEach(({ first, end }, index) => {
      if (index > 0) expect(first).toBe(season.days[index - 1].end);
      for (let at = first; at < end; at++) expect(season.dayOf[at]).toBe(index);
    });
  });

  it('of a day are the same alone', () => {
    const alone = sample(plan, { kind: 'day', date: '08-03' });
    const { first, end } = season.days.find(({ date }) => date === '2026-08-03') ?? { first: NaN, end: NaN };
    expect(alone.count).toBe(end - first);
    for (const name of [
      'when',
      'azimuth',
      'altitude',
      'solarHour',
      'beam',
      'diffuse',
      'global',
      'air',
      'humidity',
    ] as const) {
      expect([...alone[name]]).toEqual([...season[name].subarray(first, end)]);
    }
  });

  it('stand in the middle of steps counted from the day’s first instant, with the sun above the horizon', () => {
    for (let index = 0; index < season.count; index++) {
      const { startMs } = season.days[season.dayOf[index]];
      expect((season.when[index] - startMs) % 600_000).toBe(300_000);
      expect(season.altitude[index]).toBeGreaterThan(0);
      expect(season.hours[index]).toBeCloseTo(1 / 6, 12);
    }
    const { first, startMs } = season.days[40];
    const before = sunPosition(season.when[first] - 600_000, 37.4, -5.9);
    expect(before.altitude).toBeLessThanOrEqual(0);
    expect(season.when[first]).toBeGreaterThan(startMs);
  });

  it('carry the clear sky of their month and the air of their hour', () => {
    const index = season.days[50].first + 33;
    const { high, low } = season.days[50];
    const { distanceAu } = sunPosition(season.when[index], 37.4, -5.9);
    const sky = clearSky({ altitude: season.altitude[index], elevation: 12, turbidity: 4, distanceAu });
    expect(season.beam[index]).toBe(sky.beam);
    expect(season.diffuse[index]).toBe(sky.diffuse);
    expect(season.global[index]).toBe(sky.global);
    // 21 July is day 202.
    expect(season.days[50].date).toBe('2026-07-21');
    expect(season.air[index]).toBeCloseTo(
      airTemperature(season.solarHour[index], high, low, airSunrise(37.4, 202)),
      12,
    );
  });

  it('take months as steps', () => {
    const { days } = season;
    expect(days[29]).toMatchObject({
      date: '2026-06-30',
      month: 6,
      monthDay: '06-30',
      high: 31.5,
      low: 14.75,
      spread: 3.5,
      humidity: 40,
      wind: 2,
    });
    expect(days[30]).toMatchObject({ date: '2026-07-01', month: 7, high: 31.75, low: 14.875 });
  });

  it('have the morning’s sunshine until solar noon and the afternoon’s from then on', () => {
    const stormy = planAt({
      climate: { months: [{ month: 7, high: 37, low: 20, sunshine: 0.85, sunshineAfternoon: 0.4 }] },
      season: { from: '07-02', to: '07-30' },
    });
    const table = sample(stormy, { kind: 'season' });
    for (let index = 0; index < table.count; index++) {
      expect(table.sunshine[index]).toBe(table.solarHour[index] < 12 ? 0.85 : 0.4);
      expect(table.solarHour[index] < 12).toBe(table.azimuth[index] < 180);
    }
  });
});

describe('civil days with a change of clocks', () => {
  it.each([
    { zone: 'Australia/Lord_Howe', latitude: -31.55, longitude: 159.08, date: '04-05', hours: 24.5 },
    { zone: 'Australia/Lord_Howe', latitude: -31.55, longitude: 159.08, date: '10-04', hours: 23.5 },
    { zone: 'Australia/Adelaide', latitude: -34.9, longitude: 138.6, date: '10-04', hours: 23 },
    { zone: 'Europe/Madrid', latitude: 40.4, longitude: -3.7, date: '10-25', hours: 25 },
  ])('$date in $zone', ({ zone, latitude, longitude, date, hours }) => {
    const plan = planAt({ site: { latitude, longitude, timeZone: zone }, season: { stepMinutes: 60 } });
    const { days, count, when, hours: steps } = sample(plan, { kind: 'day', date });
    expect((days[0].endMs - days[0].startMs) / 3_600_000).toBe(hours);
    for (let index = 0; index < count; index++) {
      expect(steps[index]).toBe(1);
      expect(((when[index] - days[0].startMs) / 60_000) % 60).toBe(30);
    }
  });

  it('end with a short step, which weighs its length', () => {
    // Near the pole the sun stays up through the whole of a day of 24.5 hours.
    const pole = planAt({
      site: { latitude: 89.5, longitude: 159.08, timeZone: 'Australia/Lord_Howe' },
      season: { stepMinutes: 60 },
    });
    const table = sample(pole, { kind: 'day', date: '04-05' });
    expect(table.count).toBe(25);
    expect(table.hours[24]).toBe(0.5);
    expect(table.when[24]).toBe(table.days[0].endMs - 900_000);
    expect(sum(table.hours)).toBe(24.5);
  });
});

describe('the heatwave day', () => {
  const climate = {
    heatwaveHigh: 45,
    offset: 1.2,
    turbidity: 3,
    months: [
      { month: 6, high: 33, low: 16, sunshine: 0.9 },
      {
        month: 7,
        high: 37,
        low: 19.5,
        sunshine: 0.8,
        sunshineAfternoon: 0.5,
        spread: 4,
        turbidity: 4.5,
        humidity: 27,
        wind: 2.6,
      },
      { month: 8, high: 37, low: 20 },
      { month: 9, high: 32, low: 15 },
    ],
  };
  const plan = planAt({ climate });
  const heatwave = sample(plan, { kind: 'heatwave' });

  it('is the 21st of the hottest month, its high the heatwave’s, its low raised by as much, both by the thermometer', () => {
    expect(heatwave.days).toHaveLength(1);
    expect(heatwave.days[0]).toMatchObject({ date: '2026-07-21', spread: 0, humidity: 27, wind: 2.6 });
    expect(heatwave.days[0].high).toBeCloseTo(46.2, 10);
    expect(heatwave.days[0].low).toBeCloseTo(19.5 + 1.2 + 8, 10);
    expect(heatwave.days[0].monthMean).toBeCloseTo((37 + 19.5) / 2 + 1.2, 10);
    expect(Math.max(...heatwave.air)).toBeCloseTo(46.2, 1);
  });

  it('is sunny all day and without spread, under the month’s own clear sky', () => {
    expect(heatwave.sunshine.every((share) => share === 1)).toBe(true);
    expect(heatwave.spread.every((spread) => spread === 0)).toBe(true);
    const same = sample(plan, { kind: 'day', date: '07-21' });
    expect([...heatwave.beam]).toEqual([...same.beam]);
    expect(same.sunshine[0]).toBe(0.8);
    expect(same.spread[0]).toBe(4);
  });

  it('is one of the heat days, which are as much hotter than their months', () => {
    const heat = heatDays(plan);
    if (!heat.ok) throw new Error('expected heat days');
    const days = heat.value.map((period) => sample(plan, period));
    expect(days.map((table) => table.days[0].date)).toEqual(['2026-06-21', '2026-07-21', '2026-08-21', '2026-09-21']);
    [33, 37, 37, 32].forEach((high, index) => expect(days[index].days[0].high).toBeCloseTo(high + 8 + 1.2, 10));
    expect([...days[1].air]).toEqual([...heatwave.air]);
    expect(days[0].sunshine[0]).toBe(1);
  });

  it('is in the second year where the season meets its month there', () => {
    const south = planAt({
      site: { latitude: -34.9, longitude: 138.6, timeZone: 'Australia/Adelaide' },
      season: { from: '11-15', to: '03-10' },
      climate: {
        months: [
          { month: 11, high: 28, low: 12 },
          { month: 12, high: 30, low: 14 },
          { month: 1, high: 34, low: 17 },
          { month: 2, high: 34, low: 18 },
          { month: 3, high: 29, low: 13 },
        ],
      },
    });
    expect(sample(south, { kind: 'heatwave' }).days[0].date).toBe('2027-01-21');
  });

  it('is only of months of the season', () => {
    expect(samplesOf(plan, { kind: 'heatDay', month: 4 })).toMatchObject({
      ok: false,
      problems: [{ message: 'Month 4 is not in the season, so it has no heat day.' }],
    });
  });
});

describe('what cannot be sampled is said in one sentence', () => {
  it('a month without figures', () => {
    expect(samplesOf(planAt({ climate: { months: months(6, 7, 9) } }), { kind: 'season' })).toEqual({
      ok: false,
      problems: [
        {
          pointer: '/climate/months',
          message: 'The climate has no figures for August (month 8), and they are needed.',
          severity: 'error',
        },
      ],
    });
    expect(samplesOf(planAt({ climate: { months: months(6, 7, 8, 9) } }), { kind: 'day', date: '04-02' }).ok).toBe(
      false,
    );
    expect(samplesOf(planAt({ climate: { months: months(6, 7, 9) } }), { kind: 'day', date: '07-02' }).ok).toBe(true);
  });

  it('a time zone that does not exist', () => {
    expect(samplesOf(planAt({ site: { timeZone: 'Spain/Madrid' } }), { kind: 'season' })).toMatchObject({
      ok: false,
      problems: [{ pointer: '/site/timeZone' }],
    });
  });
});

describe('laws of samples', () => {
  const place = fc.record({
    latitude: fc.double({ min: -66, max: 66, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    timeZone: fc.constantFrom(
      'UTC',
      'Europe/Madrid',
      'Asia/Kolkata',
      'Australia/Adelaide',
      'Australia/Lord_Howe',
      'America/Phoenix',
      'America/Santiago',
      'Pacific/Kiritimati',
    ),
  });
  const day = fc
    .record({ month: fc.integer({ min: 1, max: 12 }), day: fc.integer({ min: 1, max: 28 }) })
    .map(({ month, day: number }) => `${String(month).padStart(2, '0')}-${String(number).padStart(2, '0')}`);
  const stepMinutes = fc.constantFrom(5, 10, 12, 15, 20, 30, 60);

  it('the steps of a day add up to no more than the day, and to its daylight within a step at either end', () => {
    fc.assert(
      fc.property(place, day, stepMinutes, (site, date, step) => {
        const fine = sample(planAt({ site, season: { stepMinutes: 1 } }), { kind: 'day', date });
        const coarse = sample(planAt({ site, season: { stepMinutes: step } }), { kind: 'day', date });
        const { startMs, endMs } = coarse.days[0];
        expect(sum(coarse.hours)).toBeLessThanOrEqual((endMs - startMs) / 3_600_000);
        // A zone far from the sun's own time may cut the daylight in two: up to four ends.
        expect(Math.abs(sum(coarse.hours) - sum(fine.hours))).toBeLessThanOrEqual((2 * step + 1) / 60);
        for (let index = 1; index < coarse.count; index++)
          expect(coarse.when[index]).toBeGreaterThan(coarse.when[index - 1]);
      }),
      { seed: 33, numRuns: 60 },
    );
  });

  it('every value is a number in its range', () => {
    fc.assert(
      fc.property(
        place,
        day,
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.integer({ min: -400, max: 4000 }),
        (site, date, turbidity, elevation) => {
          const table = sample(planAt({ site: { ...site, elevation }, climate: { turbidity } }), { kind: 'day', date });
          for (let index = 0; index < table.count; index++) {
            expect(table.azimuth[index] >= 0 && table.azimuth[index] < 360).toBe(true);
            expect(table.solarHour[index] >= 0 && table.solarHour[index] < 24).toBe(true);
            expect(table.beam[index] >= 0 && table.beam[index] < 1420).toBe(true);
            expect(table.diffuse[index] >= 0 && table.diffuse[index] < 700).toBe(true);
            const onLevel =
              table.beam[index] * Math.sin((table.altitude[index] * Math.PI) / 180) + table.diffuse[index];
            expect(Math.abs(onLevel - table.global[index])).toBeLessThan(1e-9);
          }
        },
      ),
      { seed: 34, numRuns: 40 },
    );
  });

  it('at the mirrored latitude half a year on the day is as long and the air rises alike', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.integer({ min: 1, max: 28 }),
        (latitude, dayOfMonth) => {
          const number = String(dayOfMonth).padStart(2, '0');
          const high = (months_: number) => ({ month: months_, high: 36, low: 19 });
          const climate = { months: [high(6), high(12)] };
          const north = sample(
            planAt({ site: { latitude, longitude: 0, timeZone: 'UTC' }, climate, season: { stepMinutes: 1 } }),
            { kind: 'day', date: `06-${number}` },
          );
          const south = sample(
            planAt({
              site: { latitude: -latitude, longitude: 0, timeZone: 'UTC' },
              climate,
              season: { stepMinutes: 1 },
            }),
            { kind: 'day', date: `12-${number}` },
          );
          // June's and December's declinations mirror within 0.3°, and refraction does not mirror at all.
          expect(Math.abs(sum(north.hours) - sum(south.hours))).toBeLessThan(0.12);
          expect(Math.abs(Math.max(...north.altitude) - Math.max(...south.altitude))).toBeLessThan(0.4);
          expect(Math.abs(sum(north.air) / north.count - sum(south.air) / south.count)).toBeLessThan(0.1);
        },
      ),
      { seed: 35, numRuns: 30 },
    );
  });
});
