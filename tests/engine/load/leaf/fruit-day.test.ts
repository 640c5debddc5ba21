import { describe, expect, it } from 'vitest';
import { heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const apple = plantRowOf({}, 'apple')!;
const OPEN_SKY = { sky: 1, groundRise: 0, walls: null };
const NO_SKY = { sky: 0, groundRise: 0, walls: null };

/** An apple's skin through the heatwave day of an open yard, in so much wind over it. [m/s] */
function appleIn(wind: number) {
  const plain = yardPlan();
  const plan: Plan = {
    ...plain,
    site: { ...plain.site, shelter: 'open' },
    climate: { ...plain.climate, months: plain.climate.months.map((month) => ({ ...month, wind })) },
  };
  const heat = valueOf(heatDayOf(plan, buildScene(plan), { kind: 'heatwave' }));
  const { samples, moments } = heat;
  return { samples, moments, leaf: heat.leaves('thirsty', apple), high: heat.day.high };
}

const { samples, moments, leaf, high } = appleIn(2);
const count = samples.count;
const inSun = new Float64Array(count).fill(1);
const noon = Math.floor(count / 2);
/** Samples whose middle lies in the hour up to another's, its own among them. */
const hourUpTo = (k: number): number[] =>
  Array.from({ length: k + 1 }, (_, n) => n).filter((n) => samples.when[k] - samples.when[n] < 3_600_000);

describe('a fruit through the day', () => {
  it('rises above the air by (0.17·Tmax + 6.21)·u^−0.3·S/S₁, S the mean light of the hour before (Schrader, Zhang & Sun 2003; the scaling a project choice)', () => {
    const light = (k: number, share: number, sky: number) => {
      const hour = hourUpTo(k);
      const hours = hour.reduce((sum, n) => sum + samples.hours[n], 0);
      const sum = hour.reduce(
        (all, n) => all + samples.hours[n] * (share * moments[n].beam + 0.15 * sky * moments[n].diffuse),
        0,
      );
      return sum / hours;
    };
    // While the sun was down nothing came: only from an hour after its rise on is the hour a whole one.
    const whole = Array.from({ length: count }, (_, k) => k).filter((k) => hourUpTo(k).length >= 6);
    const most = Math.max(...whole.map((k) => light(k, 1, 1)));
    const factor = (0.17 * high + 6.21) * Math.min(1.6, Math.max(0.75, (0.45 * 2) ** -0.3));
    for (const k of whole) {
      expect(leaf.on(k, inSun, OPEN_SKY)).toBeCloseTo(samples.air[k] + (factor * light(k, 1, 1)) / most, 6);
      expect(leaf.at(k, 0.4, NO_SKY)).toBeCloseTo(samples.air[k] + (factor * light(k, 0.4, 0)) / most, 6);
    }
  });

  it('feels shade of the hour before, and none that ended an hour ago', () => {
    const shaded = inSun.slice();
    const [first] = hourUpTo(noon);
    shaded.fill(0, first, noon);
    const cooler = leaf.on(noon, inSun, OPEN_SKY) - leaf.on(noon, shaded, OPEN_SKY);
    expect(cooler).toBeGreaterThan(5);
    const before = inSun.slice();
    before.fill(0, 0, first);
    expect(leaf.on(noon, before, OPEN_SKY)).toBe(leaf.on(noon, inSun, OPEN_SKY));
  });

  it('is at the air’s temperature in no light at all, and hotter in still air, within bounds', () => {
    for (let k = 0; k < count; k++) expect(leaf.at(k, 0, NO_SKY)).toBe(samples.air[k]);
    const rise = (wind: number) => appleIn(wind).leaf.on(noon, inSun, OPEN_SKY) - samples.air[noon];
    expect(rise(4)).toBeLessThan(rise(2));
    expect(rise(2)).toBeLessThan(rise(1));
    expect(rise(0.1) / rise(20)).toBeCloseTo(1.6 / 0.75, 9);
  });
});
