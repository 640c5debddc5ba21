/** Wind figures against published formulas, tables and worked examples. */

import { describe, expect, test } from 'vitest';
import { beaufortOf } from '../../engine/frame/strength/beaufort.ts';
import {
  GRAVITY,
  holesFactor,
  sidePush,
  tautPull,
  upliftCoefficient,
  upliftForce,
  windPressure,
  BALLAST_FACTOR,
} from '../../engine/frame/strength/wind.ts';

const MPH = 0.44704;
const POUND_FORCE = 4.4482216;
const PSF = 47.880259;

describe('pressure (ASCE/SEI 7: 0.613 V² Pa, 0.00256 V² psf)', () => {
  test.each([
    [8, 39.2],
    [10.8, 71.5],
    [13.9, 118.4],
    [15, 137.9],
    [17.2, 181.3],
    [20, 245.2],
    [25, 383],
    [30, 552],
    [40, 981],
  ])('%d m/s: %d Pa', (gust, pressure) => {
    expect(windPressure(gust)).toBeCloseTo(pressure, pressure < 300 ? 1 : -0.3);
  });

  test('the American form agrees within 0.1 %: 30 mph 2.304 psf, 60 mph 9.216, 115 mph 33.86', () => {
    for (const [mph, psf] of [
      [30, 2.304],
      [60, 9.216],
      [115, 33.86],
    ])
      expect(Math.abs(windPressure(mph * MPH) / PSF / psf - 1)).toBeLessThan(1e-3);
  });
});

describe(
  'uplift of a free monopitch roof (BS 6399-2:1997 table 13; level and blocked EN 1991-1-4 table 7.6, ' +
    'from memory)',
  () => {
    test.each([
      [0, 0.5, 1.3],
      [5, 0.7, 1.4],
      [10, 0.9, 1.4],
      [15, 1.1, 1.5],
      [20, 1.3, 1.5],
      [25, 1.6, 1.6],
      [30, 1.8, 1.8],
      [12.5, 1.0, 1.45],
      [41, 1.8, 1.8],
    ])('%d°: %d clear, %d blocked', (pitch, clear, blocked) => {
      expect(upliftCoefficient(pitch).clear).toBeCloseTo(clear, 9);
      expect(upliftCoefficient(pitch).blocked).toBeCloseTo(blocked, 9);
    });

    test('holes, 1 − (1 − d)² (AS/NZS 1170.2 appendix D, from memory)', () => {
      for (const [density, factor] of [
        [0.3, 0.51],
        [0.4, 0.64],
        [0.5, 0.75],
        [0.6, 0.84],
        [0.7, 0.91],
        [0.8, 0.96],
        [0.9, 0.99],
      ])
        expect(holesFactor(density)).toBeCloseTo(factor, 9);
    });
  },
);

describe('3 × 3 m of 50 % cloth, level, on four posts: worked by hand', () => {
  test.each([
    [8, 132, 344, 5, 13],
    [12, 298, 775, 11, 30],
    [15, 465, 1210, 18, 46],
    [20, 828, 2152, 32, 82],
    [25, 1293, 3362, 49, 129],
    [30, 1862, 4841, 71, 185],
  ])('gust %d m/s: %d to %d N, %d to %d kg a post', (gust, clear, blocked, lightest, heaviest) => {
    const uplift = upliftForce(gust, 9, 0.5, 0);
    expect(Math.abs(uplift.clear - clear)).toBeLessThan(0.7);
    expect(Math.abs(uplift.blocked - blocked)).toBeLessThan(0.7);
    const onEachOfFour = (force: number): number => (BALLAST_FACTOR * force) / (4 * GRAVITY);
    expect(onEachOfFour(uplift.clear)).toBeCloseTo(lightest, -0.3);
    expect(onEachOfFour(uplift.blocked)).toBeCloseTo(heaviest, -0.3);
  });

  test('a shade-house builder’s figure: 4 short tons a post for 70 % cloth, 24 × 24 ft, 120 mph (trade article)', () => {
    const grid = upliftForce(120 * MPH, 576 * 0.09290304, 0.7, 0).clear / POUND_FORCE;
    const linear = (grid / holesFactor(0.7)) * 0.7;
    expect(grid).toBeCloseTo(9660, -2);
    expect(linear).toBeCloseTo(7430, -2);
    expect(linear).toBeLessThan(8000);
    expect(grid).toBeGreaterThan(8000);
  });
});

test(
  'a drop of 3 × 1.2 m, 60 %, at 15 m/s is pushed with 501 N, 801 N·m about the ground, 267 N up at the ' +
    'windward feet of a 3 m frame',
  () => {
    const push = sidePush(15, 3.6, 0.6);
    expect(push).toBeCloseTo(501, -0.3);
    expect(push * 1.6).toBeCloseTo(801, -0.6);
    expect((push * 1.6) / 3).toBeCloseTo(267, -0.3);
  },
);

test(
  'a taut 3 m strip of 50 % cloth that sags 0.15 m pulls 110, 248, 388, 690 N/m at 8, 12, 15, 20 m/s ' +
    '(statics: pL²/8s)',
  () => {
    for (const [gust, pull] of [
      [8, 110],
      [12, 248],
      [15, 388],
      [20, 690],
    ]) {
      expect(Math.abs(tautPull(windPressure(gust) * 0.5 * 0.75, 3, 0.15) - pull)).toBeLessThan(0.7);
    }
  },
);

test('Beaufort by the mean wind (WMO-No. 306, from memory), near 0.836·B^1.5', () => {
  for (const [mean, force] of [
    [5.5, 4],
    [7.9, 4],
    [8, 5],
    [10.7, 5],
    [10.8, 6],
    [13.8, 6],
    [13.9, 7],
    [17.1, 7],
    [17.2, 8],
    [20.7, 8],
    [20.8, 9],
    [0, 0],
  ])
    expect(beaufortOf(mean).force).toBe(force);
  for (const force of [4, 5, 6, 7, 8]) expect(beaufortOf(0.836 * force ** 1.5).force).toBe(force);
});
