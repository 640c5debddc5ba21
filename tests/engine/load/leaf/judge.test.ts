import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { byGravity, heatVerdict, hotRuns, judgeLeaf } from '../../../../engine/load/leaf/judge.ts';
import { LeafDay } from '../../../../engine/load/leaf/leaf-day.ts';
import { surfaceTemperature } from '../../../../engine/load/leaf/leaf.ts';
import type { LeafMoment } from '../../../../engine/load/leaf/receives.ts';
import { CLOSED, OPEN } from '../../../../engine/load/leaf/surroundings.ts';
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

/** A fruit of which each sample's temperature in the shade and under no sky is that of the air: by hand to follow. */
const airs = (temperatures: readonly number[], minutes = 10): LeafDay => {
  const moments = temperatures.map((air): LeafMoment => ({
    air,
    airMax: 40,
    vapour: 1,
    pressure: 100,
    wind: 1,
    beam: 800,
    diffuse: 100,
    sinAltitude: 0.7,
    hour: { first: 0, beam: 800, diffuse: 100, openMost: 800 },
  }));
  return new LeafDay(moments, new Float64Array(moments.length).fill(minutes / 60), row('apple'), 'thirsty');
};
const judged = (temperatures: readonly number[], minutes?: number) =>
  judgeLeaf(airs(temperatures, minutes), new Float64Array(temperatures.length), CLOSED, 40);

describe('a leaf judged through a day', () => {
  it('dose: the degrees above the limit × hours, and nothing for those below', () => {
    expect(judged([30, 41, 43, 39, 46]).dose).toBeCloseTo((1 + 3 + 6) / 6, 12);
    expect(judged([30, 39.9]).dose).toBe(0);
    expect(judged([41, 43], 60).dose).toBeCloseTo(4, 12);
  });

  it('peak: the warmest sample, the first of equals, above the limit or not', () => {
    expect(judged([30, 44, 43, 44])).toMatchObject({ peak: 44, warmest: 1 });
    expect(judged([12, 11])).toMatchObject({ peak: 12, warmest: 0 });
    expect(judged([])).toMatchObject({ peak: -Infinity, warmest: -1, dose: 0, longest: 0 });
  });

  it('time on end: the longest stretch at the limit or over it', () => {
    expect(judged([40, 41, 39, 42, 40, 43, 20]).longest).toBeCloseTo(0.5, 12);
    expect(judged([39.999, 39.999]).longest).toBe(0);
  });

  it('samples left out cut a stretch in two', () => {
    const leaf = airs([41, 41, 30, 41, 41, 41]);
    const shares = new Float64Array(6);
    expect(judgeLeaf(leaf, shares, CLOSED, 40, Int32Array.of(0, 1, 3, 4, 5)).longest).toBeCloseTo(0.5, 12);
    expect(judgeLeaf(leaf, shares, CLOSED, 40, Int32Array.of(0, 1, 4, 5)).longest).toBeCloseTo(1 / 3, 12);
  });

  it('runs: each stretch with its hours and excess; without the sun on it a sample is of none', () => {
    const leaf = airs([41, 42, 36, 43]);
    expect(hotRuns(leaf, new Float64Array(4), CLOSED, 40)).toMatchObject([
      { first: 0, last: 1, hours: 2 / 6, excess: 3 / 6 },
      { first: 3, last: 3, hours: 1 / 6, excess: 3 / 6 },
    ]);
    const runs = hotRuns(leaf, Float64Array.of(0.1, 0.09, 0.5, 0.5), CLOSED, 40, 0.1);
    // A fruit feels the shade of the hour before, too: the third sample stays below its limit.
    expect(runs.map(({ first, last }) => [first, last])).toEqual([
      [0, 0],
      [3, 3],
    ]);
  });
});

describe('the half hour', () => {
  it('on end at the limit counts, three steps of ten minutes included; less does not', () => {
    expect(heatVerdict(1 / 6 + 1 / 6 + 1 / 6, 0)).toBe('at risk');
    expect(heatVerdict(0.5, 0)).toBe('at risk');
    expect(heatVerdict(29 / 60, 0)).toBe('fine');
    expect(heatVerdict(5, 29 / 60)).toBe('at risk');
    expect(heatVerdict(5, 0.5)).toBe('will burn');
  });

  it('burning is graver than risk, and risk than nothing', () => {
    expect(['will burn', 'fine', 'at risk'].toSorted((a, b) => byGravity(a as 'fine', b as 'fine'))).toEqual([
      'fine',
      'at risk',
      'will burn',
    ]);
  });
});

describe('the table of a leaf', () => {
  const shareOrSky = fc.double({ min: 0, max: 1, noNaN: true });

  it('is within 1e-4 K of the leaf’s own balance, whatever the moment, plant, water, share and sky (law)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: heat.moments.length - 1 }),
        shareOrSky,
        shareOrSky,
        fc.constantFrom('lemon', 'tomato', 'banana', 'apple'),
        fc.constantFrom('watered' as const, 'thirsty' as const),
        (k, share, sky, id, watering) => {
          const leaf = surfaceTemperature(heat.moments[k], row(id), watering, share, {
            sky,
            groundRise: 18,
            walls: null,
          });
          expect(
            Math.abs(heat.leaves(watering, row(id)).at(k, share, { sky, groundRise: 18, walls: null }) - leaf),
          ).toBeLessThan(1e-4);
        },
      ),
      { seed: 20260622, numRuns: 500 },
    );
  });

  it('holds in still air, for a wide leaf, and beyond its ends', () => {
    const paved = { ...OPEN, groundRise: 18 };
    const still = heat.moments.map((moment) => ({ ...moment, wind: 0.1 }));
    const wide = { ...row('lemon'), leafWidth: 0.3 };
    for (const absorptance of [0.02, 0.5, 1]) {
      const leaf = new LeafDay(still, heat.samples.hours, wide, 'thirsty', [], absorptance);
      for (const k of [0, 20, 40])
        for (const share of [0, 0.31, 1])
          expect(leaf.at(k, share, paved)).toBeCloseTo(
            surfaceTemperature(still[k], wide, 'thirsty', share, paved, absorptance),
            2,
          );
    }
  });

  it('no point is over the limit at a sample that is not among the hot ones (law)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: heat.moments.length - 1 }),
        shareOrSky,
        shareOrSky,
        fc.double({ min: 30, max: 60, noNaN: true }),
        fc.constantFrom('lemon', 'tomato', 'apple'),
        (k, share, sky, limit, id) => {
          const leaf = heat.leaves('thirsty', row(id));
          fc.pre(!leaf.hotSamples(limit).includes(k));
          expect(leaf.at(k, share, { sky, groundRise: 18, walls: null })).toBeLessThan(limit);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});
