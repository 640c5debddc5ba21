import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { skylineAltitude } from '../../../../engine/sun/sky/skyline.ts';

const ridge = [
  { azimuth: 250, altitude: 6 },
  { azimuth: 0, altitude: 1 },
  { azimuth: 120, altitude: 3 },
];

describe('the skyline', () => {
  it('is level where none is given', () => {
    expect(skylineAltitude(undefined, 200)).toBe(0);
    expect(skylineAltitude([], 200)).toBe(0);
  });

  it('of one point holds all round', () => {
    for (const azimuth of [0, 77, 260, 359.9])
      expect(skylineAltitude([{ azimuth: 260, altitude: 4.5 }], azimuth)).toBeCloseTo(4.5, 12);
  });

  it('passes through its points and straight between them, in whatever order they stand', () => {
    expect(skylineAltitude(ridge, 250)).toBe(6);
    expect(skylineAltitude(ridge, 0)).toBe(1);
    expect(skylineAltitude(ridge, 30)).toBeCloseTo(1.5, 12);
    expect(skylineAltitude(ridge, 185)).toBeCloseTo(4.5, 12);
  });

  it('runs on through north', () => {
    expect(skylineAltitude(ridge, 305)).toBeCloseTo(3.5, 12);
    expect(
      skylineAltitude(
        [
          { azimuth: 350, altitude: 2 },
          { azimuth: 30, altitude: 6 },
        ],
        0,
      ),
    ).toBeCloseTo(3, 12);
    expect(
      skylineAltitude(
        [
          { azimuth: 350, altitude: 2 },
          { azimuth: 30, altitude: 6 },
        ],
        360,
      ),
    ).toBeCloseTo(3, 12);
  });

  it('turns with its points, and never leaves the span of their altitudes', () => {
    const points = fc.uniqueArray(
      fc.record({ azimuth: fc.integer({ min: 0, max: 359 }), altitude: fc.double({ min: 0, max: 40, noNaN: true }) }),
      {
        selector: ({ azimuth }) => azimuth,
        minLength: 1,
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(
        points,
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 1, max: 359 }),
        (skyline, azimuth, by) => {
          const here = skylineAltitude(skyline, azimuth);
          const altitudes = skyline.map(({ altitude }) => altitude);
          expect(here).toBeGreaterThanOrEqual(Math.min(...altitudes) - 1e-9);
          expect(here).toBeLessThanOrEqual(Math.max(...altitudes) + 1e-9);
          const turned = skyline.map((point) => ({ ...point, azimuth: (point.azimuth + by) % 360 }));
          expect(skylineAltitude(turned, (azimuth + by) % 360)).toBeCloseTo(here, 9);
        },
      ),
      { seed: 31, numRuns: 300 },
    );
  });
});
