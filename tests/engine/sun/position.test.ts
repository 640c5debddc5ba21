import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sunPosition } from '../../../engine/sun/position.ts';

const RAD = Math.PI / 180;
const instant = fc.integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2035, 0, 1) });

describe('true solar time', () => {
  it('is before twelve exactly while the azimuth is below 180°, on either side of the zenith', () => {
    fc.assert(
      fc.property(
        instant,
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (when, latitude, longitude) => {
          const { azimuth, solarHour } = sunPosition(when, latitude, longitude);
          expect(solarHour < 12).toBe(azimuth < 180);
        },
      ),
      { seed: 37, numRuns: 500 },
    );
  });

  it('goes on by an hour in an hour, within two seconds, and by 24 hours in a day, within half a minute', () => {
    fc.assert(
      fc.property(
        instant,
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (when, latitude, longitude) => {
          const now = sunPosition(when, latitude, longitude).solarHour;
          const gone = (hours: number): number =>
            (sunPosition(when + hours * 3_600_000, latitude, longitude).solarHour - now + 48) % 24;
          // Where the refraction is frozen, below the horizon, and where it is not, the step must be the same.
          expect(Math.abs(gone(1) - 1) * 3600).toBeLessThan(2);
          expect(Math.abs(((gone(24) + 12) % 24) - 12) * 3600).toBeLessThan(32);
        },
      ),
      { seed: 38, numRuns: 500 },
    );
  });

  it('and the declination give the altitude back, refraction aside', () => {
    // sin h = sin φ sin δ + cos φ cos δ cos H, with the declination of a solstice: 23.44°.
    const { altitude, solarHour } = sunPosition(Date.UTC(2026, 5, 21, 9, 30), 35, 10);
    const hourAngle = (solarHour - 12) * 15 * RAD;
    const expected =
      Math.asin(
        Math.sin(35 * RAD) * Math.sin(23.437 * RAD) + Math.cos(35 * RAD) * Math.cos(23.437 * RAD) * Math.cos(hourAngle),
      ) / RAD;
    expect(altitude - expected).toBeGreaterThan(0);
    expect(altitude - expected).toBeLessThan(0.02);
  });
});
