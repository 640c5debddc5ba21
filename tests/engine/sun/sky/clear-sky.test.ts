import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearSky } from '../../../../engine/sun/sky/clear-sky.ts';

const place = fc.record({
  altitude: fc.double({ min: 0.01, max: 90, noNaN: true }),
  elevation: fc.double({ min: -400, max: 4500, noNaN: true }),
  turbidity: fc.double({ min: 1, max: 10, noNaN: true }),
  distanceAu: fc.double({ min: 0.983, max: 1.017, noNaN: true }),
});

describe('the clear sky', () => {
  it('is dark at and below the horizon', () => {
    for (const altitude of [0, -0.001, -40])
      expect(clearSky({ altitude, elevation: 300, turbidity: 3, distanceAu: 1.01 })).toEqual({
        beam: 0,
        diffuse: 0,
        global: 0,
      });
  });

  it('adds up: beam on the level and diffuse make the global, none below 0', () => {
    fc.assert(
      fc.property(place, (at) => {
        const { beam, diffuse, global } = clearSky(at);
        expect(beam).toBeGreaterThanOrEqual(0);
        expect(diffuse).toBeGreaterThanOrEqual(0);
        expect(Math.abs(beam * Math.sin((at.altitude * Math.PI) / 180) + diffuse - global)).toBeLessThan(1e-9);
      }),
      { seed: 39, numRuns: 500 },
    );
  });

  it('has a weaker beam in hazier air and a stronger one under a nearer sun', () => {
    fc.assert(
      fc.property(place, (at) => {
        const { beam } = clearSky(at);
        expect(clearSky({ ...at, turbidity: at.turbidity + 0.5 }).beam).toBeLessThanOrEqual(beam);
        expect(clearSky({ ...at, distanceAu: at.distanceAu * 0.99 }).beam).toBeGreaterThan(beam);
      }),
      { seed: 40, numRuns: 500 },
    );
  });

  it('passes the sunshine threshold of 120 W/m² later the hazier it is', () => {
    // Altitudes at sea level worked from the formula: turbidity 2: 1.2°, 3: 4.0°, 5: 8.9°, 7: 13.7°.
    for (const [turbidity, altitude] of [
      [2, 1.2],
      [3, 4],
      [5, 8.9],
      [7, 13.7],
    ]) {
      const beam = (offset: number): number =>
        clearSky({ altitude: altitude + offset, elevation: 0, turbidity, distanceAu: 1 }).beam;
      expect(beam(-0.15)).toBeLessThan(120);
      expect(beam(0.15)).toBeGreaterThan(120);
    }
  });
});
