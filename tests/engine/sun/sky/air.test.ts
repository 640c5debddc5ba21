import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airSunrise, airTemperature } from '../../../../engine/sun/sky/air.ts';

describe("the air's sunrise", () => {
  it('is at six on the equator all year', () => {
    for (const day of [1, 80, 172, 300]) expect(airSunrise(0, day)).toBeCloseTo(6, 12);
  });

  it('is midnight where the sun does not set and noon where it does not rise', () => {
    expect(airSunrise(75, 172)).toBe(0);
    expect(airSunrise(75, 355)).toBe(12);
  });
});

describe('air through the day', () => {
  const day = fc.record({
    low: fc.double({ min: -5, max: 30, noNaN: true }),
    range: fc.double({ min: 0, max: 25, noNaN: true }),
    sunrise: fc.double({ min: 0, max: 12, noNaN: true }),
  });

  it('is lowest at sunrise, highest at 14 h, never beyond either, without a jump', () => {
    fc.assert(
      fc.property(day, fc.double({ min: 0, max: 23.99, noNaN: true }), ({ low, range, sunrise }, hour) => {
        const high = low + range;
        const air = airTemperature(hour, high, low, sunrise);
        expect(airTemperature(sunrise, high, low, sunrise)).toBeCloseTo(low, 9);
        expect(airTemperature(14, high, low, sunrise)).toBeCloseTo(high, 9);
        expect(air).toBeGreaterThanOrEqual(low - 1e-9);
        expect(air).toBeLessThanOrEqual(high + 1e-9);
        // The steepest the curve can be is π·range/4 K/h, on its shorter branch of at least 2 h.
        expect(Math.abs(airTemperature(hour + 0.01, high, low, sunrise) - air)).toBeLessThanOrEqual(
          range * 0.008 + 1e-9,
        );
      }),
      { seed: 32, numRuns: 300 },
    );
  });

  it('meets itself at midnight', () => {
    expect(airTemperature(23.999999, 39, 22, 5.2)).toBeCloseTo(airTemperature(0, 39, 22, 5.2), 4);
  });
});
