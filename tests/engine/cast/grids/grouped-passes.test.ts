import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../../engine/cast/grids/cast-grid.ts';
import { groupedPasses } from '../../../../engine/cast/grids/grouped-passes.ts';
import { castRay } from '../../../../engine/cast/points/ray.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { seasonOf, YARD } from '../../../bench/yard.ts';
import { emptyPlan } from '../random-plans.ts';

describe('grouped passes', () => {
  test('a season within 1°: a quarter of the passes, every cell within 0.09 h a day and 0.4 % of the open dose', () => {
    const { scene, passes, channels } = seasonOf(YARD);
    const [hours, , , dose] = channels;
    const grid = { x0: 0, y0: 0, cell: 0.5, columns: 36, rows: 24, height: 0.5 };
    const grouped = groupedPasses(scene, passes, [hours, dose], 1);
    expect(grouped.passes.count).toBeLessThan(passes.count / 3.5);
    const full = castGrid(scene, grid, passes, [hours, dose]);
    const quick = castGrid(scene, grid, grouped.passes, grouped.channels);
    const openDose = dose.reduce((sum, weight) => sum + weight);
    const days = 107;
    full[0].forEach((sum, index) => expect(Math.abs(sum - quick[0][index]) / days).toBeLessThan(0.09));
    full[1].forEach((sum, index) => expect(Math.abs(sum - quick[1][index]) / openDose).toBeLessThan(0.004));
  });

  test('weights are kept whole, those behind the skyline left out', () => {
    const plan = emptyPlan([], 12);
    const scene = buildScene({ ...plan, site: { ...plan.site, skyline: [{ azimuth: 0, altitude: 10 }] } });
    const altitude = Float64Array.from({ length: 90 }, (_, k) => 0.35 + k);
    const passes = {
      count: 90,
      azimuth: Float64Array.from(altitude, (_, k) => 355 + (k % 9)),
      altitude,
      state: new Uint16Array(90),
    };
    const weights = Float64Array.from(altitude, (_, k) => 1 + k);
    const { passes: few, channels } = groupedPasses(scene, passes, [weights], 3);
    const bright = weights.reduce((sum, weight, k) => sum + (altitude[k] > 10 ? weight : 0), 0);
    expect(channels[0].reduce((sum, weight) => sum + weight)).toBeCloseTo(bright, 9);
    expect(few.count).toBeLessThan(80);
    // None of the groups' middles has slipped behind the skyline.
    for (let k = 0; k < few.count; k++)
      expect(castRay(scene, [0, 0, 0], few.azimuth[k], few.altitude[k], '07-01').share).toBe(1);
  });

  test('a group of one is itself', () => {
    const scene = buildScene(emptyPlan([], 200));
    const passes = {
      count: 2,
      azimuth: Float64Array.of(10.5, 301.25),
      altitude: Float64Array.of(20.25, 61.5),
      state: new Uint16Array(2),
    };
    const { passes: same, channels } = groupedPasses(scene, passes, [Float64Array.of(3, 4)], 1);
    expect([...same.azimuth].map((azimuth) => Number(azimuth.toFixed(9)))).toEqual([10.5, 301.25]);
    expect([...same.altitude].map((altitude) => Number(altitude.toFixed(9)))).toEqual([20.25, 61.5]);
    expect([...channels[0]]).toEqual([3, 4]);
  });
});
