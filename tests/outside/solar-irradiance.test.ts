import { describe, expect, it } from 'vitest';
import { sunDistance } from '../../engine/sun/distance.ts';
import { sunPosition } from '../../engine/sun/position.ts';
import { samplesOf } from '../../engine/sun/samples.ts';
import { pressureRatio, relativeAirMass } from '../../engine/sun/sky/air-mass.ts';
import { SOLAR_CONSTANT } from '../../engine/sun/sun-constants.ts';
import { planAt } from '../engine/sun/plan-at.ts';
import { mustBeOk } from '../parts/outcome.ts';
import { TOLERANCES } from './tolerances.ts';

const relative = (ours: number, published: number): number => Math.abs(ours / published - 1);

describe('distance of the sun', () => {
  // pvlib-python 6382338a, tests of nrel_earthsun_distance.
  it.each([
    ['2015-01-02T07:00Z', 0.983289204601],
    ['2015-08-02T06:00Z', 1.01486146446],
  ])('%s', (when, au) => {
    expect(Math.abs(sunDistance(Date.parse(when)) - au)).toBeLessThan(TOLERANCES.sunDistance.max);
  });

  // Spencer (1971), Search 2(5):172; coefficients as in pvlib-python 6382338a.
  it.each([1, 4, 100, 172, 185, 213, 274, 355])("(r0/r)² of Spencer's series on day %i", (day) => {
    const b = (2 * Math.PI * (day - 1)) / 365;
    const spencer =
      1.00011 +
      0.034221 * Math.cos(b) +
      0.00128 * Math.sin(b) +
      0.000719 * Math.cos(2 * b) +
      0.000077 * Math.sin(2 * b);
    const ours = sunDistance(Date.UTC(2026, 0, day, 12)) ** -2;
    expect(Math.abs(ours - spencer)).toBeLessThan(TOLERANCES.distanceFactor.max);
  });
});

describe('air mass of Kasten & Young (1989)', () => {
  // pvlib-python 6382338a tests/test_atmosphere.py, ± 0.001.
  it.each([
    [0, 1],
    [80, 5.586],
    [89.9, 36.467],
  ])('zenith %d°: %d', (zenith, airMass) => {
    expect(Math.abs(relativeAirMass(90 - zenith) - airMass)).toBeLessThan(0.001);
  });

  // The formula's values; Kasten & Young, Applied Optics 28(22):4735–4738, as in EnergyPlus 051dd5fc
  // climate-calculations.tex.
  it.each([
    [10, 1.0151],
    [30, 1.154],
    [45, 1.4126],
    [60, 1.9943],
    [70, 2.9031],
    [75, 3.8129],
    [85, 10.3058],
    [87, 15.1477],
    [88, 19.4332],
    [89, 26.3106],
    [90, 37.9196],
  ])('zenith %d°: %d', (zenith, airMass) => {
    expect(relative(relativeAirMass(90 - zenith), airMass)).toBeLessThan(TOLERANCES.airMass.max);
  });

  // pvlib-python 6382338a, alt2pres. [m], [Pa]
  it.each([
    [-100, 102_532.073, 2e-5],
    [0, 101_324.999, 2e-5],
    [1000, 89_874.75, 2e-5],
    [8000, 35_600.496, 2e-4],
  ])('pressure at %d m', (elevation, pascal, most) => {
    expect(relative(pressureRatio(elevation) * 101_325, pascal)).toBeLessThan(most);
  });

  // FAO Irrigation and Drainage Paper 56, example 2, p. 63: 81.8 kPa at 1800 m.
  it('pressure at 1800 m beside the warmer atmosphere of FAO 56', () => {
    expect(Math.abs(pressureRatio(1800) * 101.3 - 81.8)).toBeLessThan(TOLERANCES.pressureWarmAtmosphere.max);
  });
});

describe('a day above the air and its daylight: FAO 56', () => {
  // Ra of Allen et al. (1998), FAO Irrigation and Drainage Paper 56, Table 2.6, 15th of each month, as transcribed in
  // public sources. [MJ/m²/day]
  const TABLE = [
    { latitude: 0, ra: [36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6] },
    { latitude: 20, ra: [26.8, 30.6, 34.7, 37.9, 39.3, 39.5, 39.3, 38.3, 35.8, 31.8, 27.7, 25.6] },
    { latitude: 30, ra: [21.1, 25.8, 31.4, 36.8, 40, 41.2, 40.6, 38.1, 33.4, 27.6, 22.2, 19.8] },
    { latitude: 34, ra: [18.7, 23.7, 29.9, 36.1, 40, 41.6, 40.8, 37.6, 32.1, 25.6, 19.9, 17.3] },
    { latitude: 38, ra: [16.2, 21.5, 28.1, 35.2, 39.8, 41.8, 40.8, 37, 30.7, 23.6, 17.5, 14.8] },
    { latitude: -10, ra: [39.5, 39.3, 37.8, 34.6, 31.1, 29.1, 29.8, 32.8, 36.3, 38.5, 39.3, 39.4] },
  ];

  it.each(TABLE)('top-of-air day totals at $latitude°', ({ latitude, ra }) => {
    ra.forEach((published, index) => {
      const { total } = dayAboveAir(latitude, index + 1, 15);
      const most = [6, 7, 12].includes(index + 1)
        ? TOLERANCES.topOfAirDayTotal.max
        : TOLERANCES.topOfAirDayTotalOtherMonths.max;
      expect(relative(total, published), `month ${index + 1}`).toBeLessThan(most);
    });
  });

  // Examples 8 (p. 80), 10 (p. 84) and 18 (p. 113).
  it.each([
    { latitude: -20, month: 9, day: 3, ra: 32.2, most: TOLERANCES.topOfAirDayTotalOtherMonths.max },
    { latitude: -22.9, month: 5, day: 15, ra: 25.1, most: TOLERANCES.topOfAirDayTotalOtherMonths.max },
    { latitude: 50.8, month: 7, day: 6, ra: 41.09, most: TOLERANCES.topOfAirDayTotal.max },
  ])('worked example at $latitude°: $ra MJ/m²', ({ latitude, month, day, ra, most }) => {
    expect(relative(dayAboveAir(latitude, month, day).total, ra)).toBeLessThan(most);
  });

  // Daylight hours N, Table 2.7, June, July, December; examples 9, 10, 18.
  it.each([
    [20, 6, 15, 13.2],
    [20, 7, 15, 13.1],
    [20, 12, 15, 10.8],
    [30, 6, 15, 13.9],
    [30, 7, 15, 13.8],
    [30, 12, 15, 10.1],
    [34, 6, 15, 14.3],
    [34, 7, 15, 14.1],
    [34, 12, 15, 9.7],
    [38, 6, 15, 14.6],
    [38, 7, 15, 14.4],
    [38, 12, 15, 9.4],
    [40, 6, 15, 14.8],
    [40, 7, 15, 14.6],
    [40, 12, 15, 9.2],
    [-20, 9, 3, 11.7],
    [-22.9, 5, 15, 10.9],
    [50.8, 7, 6, 16.1],
  ])('daylight at %d° on %i-%i: %d h', (latitude, month, day, hours) => {
    const ours = dayAboveAir(latitude, month, day).daylight;
    expect(Math.abs(ours - hours)).toBeLessThan(TOLERANCES.daylightHours.max);
  });

  /**
   * Horizontal extraterrestrial energy [MJ/m²] and hours of sun above the horizon, from the engine's own samples of a
   * day of 2026 at longitude 0.
   */
  function dayAboveAir(latitude: number, month: number, day: number): { total: number; daylight: number } {
    const date = `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
    const plan = planAt({ site: { latitude, longitude: 0, timeZone: 'UTC' }, season: { from: date, to: date } });
    const result = samplesOf(plan, { kind: 'day', date });
    mustBeOk(result);
    const { count, hours, when, altitude } = result.samples;
    let total = 0;
    let daylight = 0;
    for (let index = 0; index < count; index++) {
      const { distanceAu } = sunPosition(when[index], latitude, 0);
      total += (SOLAR_CONSTANT / distanceAu ** 2) * Math.sin((altitude[index] * Math.PI) / 180) * hours[index] * 0.0036;
      daylight += hours[index];
    }
    return { total, daylight };
  }
});
