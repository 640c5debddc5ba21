import { describe, expect, it } from 'vitest';
import { sunPosition } from '../../engine/sun/position.ts';
import { airSunrise, airTemperature } from '../../engine/sun/sky/air.ts';
import { TOLERANCES } from './tolerances.ts';

describe('the two-cosine curve', () => {
  // De Wit et al. (1978), after Reicosky et al. (1989), Agric. For. Meteorol. 46:193–209; equations from memory, values
  // worked by hand from them.
  it.each([
    [3, 25.005],
    [5.5, 24],
    [8, 27.179],
    [12, 37.912],
    [14, 40],
    [16, 39.352],
    [18, 37.512],
    [22, 31.595],
  ])('high 40 °C, low 24 °C, sunrise 5.5 h: at %d h %d °C', (hour, published) => {
    expect(Math.abs(airTemperature(hour, 40, 24, 5.5) - published)).toBeLessThan(TOLERANCES.airCurveFormula.max);
  });
});

// Mean hourly dry bulb at Phoenix Sky Harbor by month, hour ending 1 to 24, standard time (UTC−7): TMY3, "Average
// Hourly Statistics for Dry Bulb",
// NREL/EnergyPlus 1bd58b05 weather/USA_AZ_Phoenix-Sky.Harbor…TMY3.stat. High and low are taken from the row.
const PHOENIX = [
  {
    month: 6,
    row: [
      30.8, 29.8, 29.1, 28.1, 27.5, 27.1, 28.2, 30.2, 32.2, 34.2, 36, 37.3, 38.6, 39.5, 39.9, 40.1, 39.9, 39.4, 38.1,
      36.5, 35.1, 33.8, 32.7, 31.8,
    ],
  },
  {
    month: 7,
    row: [
      32.9, 32, 31.3, 30.5, 30.1, 29.9, 30.5, 31.9, 33.7, 35.4, 37, 38.4, 39.4, 40.4, 41, 41.4, 41.2, 40, 38.9, 37.6,
      36.4, 35.5, 34.4, 33.8,
    ],
  },
  {
    month: 8,
    row: [
      31.3, 30.3, 29.9, 29.1, 28.5, 28.1, 28.2, 29.9, 31.8, 33.7, 35.2, 36.5, 37.5, 38.3, 38.7, 39.1, 39.2, 38.9, 37.8,
      36.5, 35.1, 33.6, 32.8, 31.9,
    ],
  },
];

describe('published mean days at Phoenix', () => {
  it.each(PHOENIX)('month $month', ({ month, row }) => {
    expect(row).toHaveLength(24);
    const dayOfYear = [166, 196, 227][month - 6];
    const sunrise = airSunrise(33.45, dayOfYear);
    const high = Math.max(...row);
    const low = Math.min(...row);
    const errors = row.map((published, index) => {
      // Temperatures hold for the moment of the stamp.
      const { solarHour } = sunPosition(Date.UTC(2026, month - 1, 15, 7 + index + 1), 33.45, -111.98);
      return airTemperature(solarHour, high, low, sunrise) - published;
    });
    expect(Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / 24)).toBeLessThan(TOLERANCES.airCurve.max);
    expect(Math.abs(errors.reduce((sum, error) => sum + error, 0) / 24)).toBeLessThan(TOLERANCES.airCurveMean.max);
  });
});

describe("the air's own sunrise", () => {
  it('is the mid-year sunrise at Phoenix within minutes of the true one for the centre on the horizon', () => {
    // FAO 56, Table 2.7: daylight at 34° N is 14.3 h in June and 9.7 h in December, centre at 0°, no refraction.
    expect(Math.abs(24 - 2 * airSunrise(34, 166) - 14.3)).toBeLessThan(0.06);
    expect(Math.abs(24 - 2 * airSunrise(34, 349) - 9.7)).toBeLessThan(0.06);
  });
});
