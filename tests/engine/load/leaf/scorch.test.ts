import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { surfaceTemperature } from '../../../../engine/load/leaf/leaf.ts';
import { scorchAt } from '../../../../engine/load/leaf/scorch.ts';
import { OPEN } from '../../../../engine/load/leaf/surroundings.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { PlantRow } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const plan = yardPlan();
const heat = valueOf(heatDayOf(plan, buildScene(plan), { kind: 'heatwave' }));
const row = (id: string): PlantRow => {
  const found = plantRowOf(plan, id);
  if (!found) throw new Error(id);
  return found;
};
const LEMON = row('lemon');
const even = (share: number) => new Float64Array(heat.samples.count).fill(share);

describe('the heat of a leaf', () => {
  const noon = heat.moments[Math.floor(heat.moments.length / 2)];

  it('takes vapour from the month’s mean air at its humidity, and an open yard’s part of the wind, on the heatwave day too', () => {
    // es(31.5 °C) = 4.62 kPa, 15 % of it; 0.45 · 2 m/s.
    for (const moment of heat.moments) {
      expect(moment.vapour).toBeCloseTo(0.15 * 0.611 * Math.exp((17.502 * 31.5) / (31.5 + 240.97)), 9);
      expect(moment.wind).toBeCloseTo(0.9, 12);
      expect(moment.airMax).toBe(46);
    }
  });

  it('falls with every bit of water: watered below thirsty, stomata on both sides below one', () => {
    const leaf = (plant: PlantRow, watering: 'watered' | 'thirsty') =>
      surfaceTemperature(noon, plant, watering, 1, OPEN);
    expect(leaf(LEMON, 'watered')).toBeLessThan(leaf(LEMON, 'thirsty') - 3);
    expect(leaf({ ...LEMON, bothSides: true }, 'watered')).toBeLessThan(leaf(LEMON, 'watered') - 1);
  });

  it('a wide leaf that is dry runs hotter than a narrow one', () => {
    expect(surfaceTemperature(noon, { ...LEMON, leafWidth: 0.2 }, 'thirsty', 1, OPEN)).toBeGreaterThan(
      surfaceTemperature(noon, { ...LEMON, leafWidth: 0.01 }, 'thirsty', 1, OPEN) + 2,
    );
  });

  it('of fruit is the same watered or not', () => {
    const pepper = row('pepper');
    expect(pepper.limitOf).toBe('fruit');
    expect(surfaceTemperature(noon, pepper, 'watered', 0.7, { sky: 0.8, groundRise: 18, walls: null })).toBe(
      surfaceTemperature(noon, pepper, 'thirsty', 0.7, { sky: 0.8, groundRise: 18, walls: null }),
    );
  });

  it('rises with the share of the beam, whatever the moment, plant and sky (law)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: heat.moments.length - 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom('lemon', 'tomato', 'banana', 'apple'),
        fc.constantFrom('watered', 'thirsty'),
        (k, a, b, view, id, watering) => {
          const at = (share: number) =>
            surfaceTemperature(heat.moments[k], row(id), watering, share, { sky: view, groundRise: 18, walls: null });
          expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) - 1e-6);
        },
      ),
      { seed: 20260621, numRuns: 300 },
    );
  });
});

describe('scorch', () => {
  it('dose: Σ (thirsty leaf − limit)·dt while above it', () => {
    const shares = even(1);
    let dose = 0;
    heat.moments.forEach((moment, k) => {
      const excess = surfaceTemperature(moment, LEMON, 'thirsty', 1, { sky: 0.9, groundRise: 18, walls: null }) - 44;
      if (excess > 0) dose += excess * heat.samples.hours[k];
    });
    const scorch = scorchAt(heat, LEMON, 44, { shares, around: { sky: 0.9, groundRise: 18, walls: null } });
    expect(dose).toBeGreaterThan(20);
    // The table's cubics, not the balance itself: within 1e-4 K at every sample.
    expect(scorch.dose).toBeCloseTo(dose, 5);
  });

  it('a shade of an hour in the middle cuts the time on end in two', () => {
    const shares = even(1);
    const whole = scorchAt(heat, LEMON, 47, { shares, around: OPEN });
    const k = Math.floor(((whole.run?.first ?? 0) + (whole.run?.last ?? 0)) / 2);
    shares.fill(0, k - 3, k + 3);
    const cut = scorchAt(heat, LEMON, 47, { shares, around: OPEN });
    expect(cut.run?.hours).toBeLessThan((whole.run?.hours ?? 0) / 2 + 0.2);
    expect(cut.thirsty).toBeCloseTo(whole.thirsty, 0);
    expect(cut.dose).toBeLessThan(whole.dose);
  });

  it('less of the beam never raises the dose (law)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (share, cut, view) => {
          const [more, less] = [share, share * cut].map(
            (each) =>
              scorchAt(heat, LEMON, 44, { shares: even(each), around: { sky: view, groundRise: 18, walls: null } })
                .dose,
          );
          expect(less).toBeLessThanOrEqual(more + 1e-6);
        },
      ),
      { seed: 7, numRuns: 40 },
    );
  });
});
