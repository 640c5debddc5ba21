import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../engine/plan/types.ts';
import { checkPace, pacedLength, withPace } from '../../../engine/survey/pace.ts';
import { reasonOf } from './places-for-tests.ts';

const plan: Plan = {
  format: 'shadewright-plan',
  version: 1,
  site: {
    latitude: 33.4,
    longitude: -112,
    timeZone: 'America/Phoenix',
    boundary: [
      [1, 1],
      [11, 1],
      [11, 7],
    ],
    pace: { steps: 20, length: 14 },
    how: { boundary: { by: 'paced' } },
  },
  season: { year: 2026, from: '06-01', to: '08-31' },
  climate: { hotAir: 35, heatwaveHigh: 47, months: [] },
  features: [
    {
      id: 'wall',
      kind: 'wall',
      path: [
        [1, 1],
        [6, 1],
      ],
      height: 1.8,
      thickness: 0.2,
      how: { path: { by: 'paced', pm: 0.5 } },
    },
    {
      id: 'tree',
      kind: 'tree',
      at: [3, 4],
      height: 5,
      crownWidth: 3,
      crownBase: 1,
      openness: 0.2,
      how: { crownWidth: { by: 'paced' }, height: { by: 'guess' } },
    },
    {
      id: 'bed',
      kind: 'bed',
      outline: [
        [2, 2],
        [4, 2],
        [4, 3],
      ],
      plantHeight: 0.5,
    },
  ],
};

describe('paces', () => {
  test('twenty steps in 14 m make thirty steps 21 m, give or take 5 %', () => {
    const { value, pm } = pacedLength(30, { steps: 20, length: 14 });
    expect(value).toBeCloseTo(21, 9);
    expect(pm).toBeCloseTo(1.05, 9);
  });

  test('a longer step lengthens every paced number, and only those', () => {
    const after = withPace(plan, { steps: 20, length: 15.4 });
    expect(after.site.pace).toEqual({ steps: 20, length: 15.4 });
    expect(after.site.boundary[1][0]).toBeCloseTo(12, 9);
    expect(after.site.boundary[0]).toEqual([1, 1]);
    const [wall, tree, bed] = after.features;
    expect(wall.kind === 'wall' && wall.path[1][0]).toBeCloseTo(6.5, 9);
    expect(wall.how?.path).toEqual({ by: 'paced', pm: 0.55 });
    expect(tree).toMatchObject({ height: 5, crownWidth: 3.3000000000000003 });
    expect(bed).toBe(plan.features[2]);
  });

  test('the first pace of a plan changes no length', () => {
    const fresh: Plan = { ...plan, site: { ...plan.site, pace: undefined } };
    expect(withPace(fresh, { steps: 10, length: 9 }).features).toBe(fresh.features);
  });

  test('steps that no one takes are refused', () => {
    expect(reasonOf(checkPace({ steps: 20, length: 40 }))).toContain('2.00 m a step');
    expect(reasonOf(checkPace({ steps: 0, length: 4 }))).toContain('0 steps');
    expect(checkPace({ steps: 20, length: 14.6 }).ok).toBe(true);
  });
});
