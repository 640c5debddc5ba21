import { describe, expect, it } from 'vitest';
import { fruitTemperature } from '../../engine/load/leaf/leaf.ts';
import { OPEN } from '../../engine/load/leaf/surroundings.ts';
import { lightClassOf } from '../../engine/load/light/light-class.ts';
import { normalShare } from '../../engine/load/light/normal.ts';
import { spotOf } from '../../engine/load/light/spot-of.ts';
import { MOL_PER_MJ } from '../../engine/load/light/weights.ts';
import { plantRowOf } from '../../engine/plan/catalogue/plants.ts';
import { yardPlan } from '../engine/load/yard-plan.ts';

describe('the normal distribution', () => {
  /** Abramowitz, M., Stegun, I. A. (1964), Handbook of Mathematical Functions, table 26.1 (values from memory). */
  it.each([
    [0, 0.5],
    [0.5, 0.6914624613],
    [1, 0.8413447461],
    [1.96, 0.9750021049],
    [3, 0.998650102],
    [-1, 0.1586552539],
    [-2.5, 0.0062096653],
    [-8, 6.220961e-16],
  ])('Φ(%d) = %d', (x, share) => {
    expect(Math.abs(normalShare(x) / share - 1)).toBeLessThan(1e-6);
  });
});

describe('light', () => {
  it(
    'a MJ of sunlight holds 2.018 mol of photosynthetic light: 0.45 × 4.48 µmol/J rounded (Faust & Logan 2018, ' +
      'HortScience 53:1250; others 1.96 to 2.30)',
    () => {
      expect(Math.abs(MOL_PER_MJ / (0.45 * 4.48) - 1)).toBeLessThan(0.002);
      expect(MOL_PER_MJ).toBeGreaterThan(1.96);
      expect(MOL_PER_MJ).toBeLessThan(2.3);
    },
  );

  it(
    'a clear summer day in the open gives 50 to 65 mol/m² (Faust 2001 and extension pages say 50 to 60 and over; ' +
      'from memory)',
    () => {
      const spot = spotOf(yardPlan(), [6, 4], { period: { kind: 'day', date: '06-21' } });
      if (!spot.ok || spot.value.date === null) throw new Error('No day.');
      expect(spot.value.day.dailyLight).toBeGreaterThan(50);
      expect(spot.value.day.dailyLight).toBeLessThan(65);
    },
  );

  it(
    'light classes are those of Penn State Extension: full sun from 6 h, part sun 4 to 6, part shade 2 to 4, ' +
      'full shade below 2',
    () => {
      expect([6, 5.9, 4, 3.9, 2, 1.9].map(lightClassOf)).toEqual([
        'full sun',
        'part sun',
        'part sun',
        'part shade',
        'part shade',
        'full shade',
      ]);
    },
  );
});

describe('fruit surface', () => {
  const moment = (air: number, airMax: number) => ({
    air,
    airMax,
    vapour: 1.2,
    pressure: 100,
    // The line was taken in an orchard at midday, at about 1 m/s.
    wind: 1,
    beam: 850,
    diffuse: 120,
    sinAltitude: 0.8,
    hour: { first: 0, beam: 850, diffuse: 120, openMost: 850 + 0.15 * 120 },
  });

  /**
   * Schrader, Zhang & Sun (2003), Acta Hortic. 618:397–405, as coded in the R package fruclimadapt, sunburn():
   * 1.17·Tmax + 6.21, ± 3 K.
   */
  it.each([
    [30, 41.3],
    [35, 47.2],
    [40, 53.0],
  ])('an apple in the open sun at the day’s warmest, %d °C air, is at %d °C', (airMax, surface) => {
    expect(fruitTemperature(moment(airMax, airMax), 1, OPEN)).toBeCloseTo(surface, 1);
  });

  it('at any hour a sunlit fruit stands 11 to 17 K above the air (Schrader, ASHS 2009, abstract 1984)', () => {
    for (const air of [22, 29, 38]) {
      const above = fruitTemperature(moment(air, 38), 1, OPEN) - air;
      expect(above).toBeGreaterThan(11);
      expect(above).toBeLessThan(17);
    }
  });

  it('a breeze of 3 m/s takes a quarter of the rise, still air adds three fifths, the sky alone leaves a fortieth', () => {
    const rise = (wind: number, share: number) =>
      (fruitTemperature({ ...moment(35, 35), wind }, share, OPEN) - 35) / (0.17 * 35 + 6.21);
    expect(rise(3, 1)).toBeCloseTo(0.75, 2);
    expect(rise(0.15, 1)).toBeCloseTo(1.6, 12);
    expect(rise(1, 0)).toBeCloseTo(18 / 868, 12);
  });

  it(
    'browning of apples begins at 46 °C (Schrader et al. 2001, doi:10.1094/PHP-2001-1004-01-RS), which is what ' +
      'the catalogue holds',
    () => {
      expect(plantRowOf(yardPlan(), 'apple')?.heatLimit).toBe(46);
    },
  );
});
