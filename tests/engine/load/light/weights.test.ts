import { describe, expect, it } from 'vitest';
import { meanWithinUnit } from '../../../../engine/load/light/normal.ts';
import { chanceOfHeat, weightsOf } from '../../../../engine/load/light/weights.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { samplesOf, type Period } from '../../../../engine/sun/samples.ts';
import { yardPlan } from '../yard-plan.ts';

function weigh(plan: Plan, period: Period = { kind: 'season' }) {
  const sampled = samplesOf(plan, period);
  if (!sampled.ok) throw new Error('No samples.');
  const { samples } = sampled;
  return { samples, weights: weightsOf(buildScene(plan), samples, plan.climate.hotAir) };
}

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
const june = (month: object): Plan['climate'] => ({
  ...yardPlan().climate,
  months: [{ month: 6, high: 40, low: 23, ...month }],
});

describe('weights', () => {
  it('sun hours of an open spot: the time with a beam over 120 W/m², times the sunshine', () => {
    const { samples, weights } = weigh(yardPlan([], { climate: june({ sunshine: 0.8 }) }));
    let hours = 0;
    for (let k = 0; k < samples.count; k++) if (samples.beam[k] > 120) hours += 0.8 * samples.hours[k];
    expect(sum(weights.channels.sunHours)).toBeCloseTo(hours / 5, 9);
    expect(sum(weights.channels.sunHours)).toBeLessThan(0.8 * 14.4);
  });

  it('low suns of a beam at or under 120 W/m² give dose but no sun hours', () => {
    const { samples, weights } = weigh(yardPlan());
    const low = samples.beam.findIndex((beam) => beam > 0 && beam <= 120);
    expect(low).toBeGreaterThanOrEqual(0);
    expect(weights.channels.sunHours[low]).toBe(0);
    expect(weights.channels.beamDose[low]).toBeGreaterThan(0);
  });

  it('a year of W·h is MJ by 0.0036: a beam of B watts for dt hours is B·dt·0.0036', () => {
    const { samples, weights } = weigh(yardPlan(), { kind: 'day', date: '06-21' });
    const k = Math.floor(samples.count / 2);
    expect(weights.channels.beamDose[k]).toBeCloseTo(samples.beam[k] * samples.hours[k] * 0.0036, 12);
  });

  it('morning ends where the sun’s bearing passes 180°, though it stands in the north', () => {
    const site = { ...yardPlan().site, latitude: -23, longitude: 133.9, timeZone: 'Australia/Darwin' };
    const { samples, weights } = weigh(yardPlan([], { site }));
    for (let k = 0; k < samples.count; k++) {
      const morning = samples.azimuth[k] < 180;
      expect(weights.channels.morningHours[k]).toBe(morning ? weights.channels.sunHours[k] : 0);
    }
  });

  it('with no spread an hour is hot from hotAir on, and not below', () => {
    expect(chanceOfHeat(35, 0, 35)).toBe(1);
    expect(chanceOfHeat(34.999, 0, 35)).toBe(0);
    expect(chanceOfHeat(35, 3, 35)).toBeCloseTo(0.5, 12);
    expect(chanceOfHeat(38, 3, 35)).toBeCloseTo(0.8413447461, 9);
  });

  it('the hot load of a sample is its dose times the mean of (air − 28)/10 kept between 0 and 1', () => {
    const { samples, weights } = weigh(yardPlan([], { climate: june({ spread: 0 }) }));
    for (let k = 0; k < samples.count; k++) {
      const part = Math.min(1, Math.max(0, (samples.air[k] - 28) / 10));
      expect(weights.channels.hotLoad[k]).toBeCloseTo(weights.channels.beamDose[k] * part, 12);
    }
  });

  it.each([
    [-0.4, 0.3],
    [0.2, 0.35],
    [0.5, 0.1],
    [0.9, 0.5],
    [1.6, 0.4],
  ])('the mean of a clamped normal value is that of its integral (mean %d, spread %d)', (mean, spread) => {
    let integral = 0;
    const steps = 40_000;
    for (let k = 0; k < steps; k++) {
      const z = -9 + (18 * (k + 0.5)) / steps;
      const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
      integral += (Math.min(1, Math.max(0, mean + spread * z)) * density * 18) / steps;
    }
    expect(meanWithinUnit(mean, spread)).toBeCloseTo(integral, 6);
  });

  it('under a closed sky a third of the clear sky’s light is left, all of it from the sky', () => {
    const clear = weigh(yardPlan([], { climate: june({ sunshine: 1 }) }));
    const closed = weigh(yardPlan([], { climate: june({ sunshine: 0 }) }));
    let whole = 0;
    for (let k = 0; k < clear.samples.count; k++)
      whole += (clear.samples.global[k] * clear.samples.hours[k] * 0.0036 * 2.018) / 5;
    const clearSky = clear.weights.sky[0].light + sum(clear.weights.channels.beamLight);
    expect(clearSky).toBeCloseTo(whole, 6);
    expect(closed.weights.sky[0].light).toBeCloseTo(whole / 3, 6);
    expect(sum(closed.weights.channels.beamLight)).toBe(0);
  });

  it('the parts of the year add up to the whole: a cloth up from the 22nd has two days without and three with', () => {
    const roof = {
      id: 'r',
      kind: 'canopy',
      center: [6, 4],
      length: 3,
      width: 2,
      height: 2.1,
      density: 0.4,
      up: { from: '06-22', to: '10-01' },
    } as const;
    const { weights } = weigh(yardPlan([roof]));
    expect(weights.sky.map(({ days }) => days).toSorted()).toEqual([expect.closeTo(0.4, 12), expect.closeTo(0.6, 12)]);
    expect(weights.sky.reduce((total, { light }) => total + light, 0)).toBeCloseTo(sum(weights.skyLightOfDay), 12);
  });
});
