import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubtInputs } from '../../../../engine/advice/doubt/inputs.ts';
import { planErrors } from '../../../../engine/plan/check/check.ts';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { FEATURE } from '../../../../engine/plan/schema/feature.ts';
import type { Feature, Plan, Plant } from '../../../../engine/plan/types.ts';
import { LONG } from '../../../long.ts';

const example = parsePlan(readFileSync('tests/plans/example.plan.json'));
if (!example.ok) throw new Error('the example is a plan');
const PLANS: readonly Plan[] = [example.plan, ...DEMO_NAMES.map((name) => demoPlan(name))];
const KEYS = [...new Set(Object.values(FEATURE.kinds).flatMap((keys) => Object.keys(keys)))];

/** A feature of which everything is guessed, off by so much. */
function guessed(feature: Feature, pm: number): Feature {
  return { ...feature, how: Object.fromEntries(KEYS.map((key) => [key, { by: 'guess', pm }])) };
}

const pot: Plant = { id: 'pot', kind: 'plant', at: [4, 4], height: 0.7, spread: 0.5, plant: 'lemon', container: true };

describe('what is in doubt', () => {
  test('every shift that is tried is a plan that opens', () => {
    const plan = fc.constantFrom(...PLANS);
    const height = fc.double({ min: 0.36, max: 3, noNaN: true });
    const pm = fc.oneof(fc.double({ min: 0.001, max: 3, noNaN: true }), fc.constantFrom(20, 600, 20_000));
    fc.assert(
      fc.property(plan, height, pm, pm, (plan, height, pm, climatePm) => {
        const features = [...plan.features, { ...pot, height }].map((feature) => guessed(feature, pm));
        const climate = { ...plan.climate, how: { heatwaveHigh: { by: 'guess' as const, pm: climatePm } } };
        const site = { ...plan.site, how: { upBearing: { by: 'guess' as const, pm } } };
        for (const { key, shifts } of doubtInputs({ ...plan, site, climate, features }))
          for (const shift of shifts) expect([key, planErrors(shift)]).toEqual([key, []]);
      }),
      { numRuns: LONG ? 40 : 10, seed: 8 },
    );
  });

  test('a pot plant that does not say where its leaves begin is never shifted down into its pot', () => {
    const yard: Plan = { ...demoPlan('courtyard'), options: [], journal: [], features: [guessed(pot, 0.5)] };
    const shifts = doubtInputs(yard).find(({ key }) => key === 'pot.height')?.shifts ?? [];
    const heights = shifts.map(({ features }) => (features[0] as Plant).height);
    expect(heights[0]).toBeCloseTo(1.2, 9);
    expect(heights[1]).toBeCloseTo(0.35 + 0.02, 4);
  });

  test('shares, heights and sizes are told apart by the schema', () => {
    const yard: Plan = { ...PLANS[0], features: PLANS[0].features.map((feature) => guessed(feature, 0.1)) };
    const kinds = new Map(doubtInputs(yard).map(({ key, kind }) => [key, kind]));
    expect(kinds.get('fig.openness')).toBe('thickness of shade');
    expect(kinds.get('roof.density')).toBe('thickness of shade');
    expect(kinds.get('roof.rise')).toBe('height');
    expect(kinds.get('fig.crownBase')).toBe('height');
    expect(kinds.get('west-wall.thickness')).toBe('size');
    expect(kinds.get('west-wall.path')).toBe('place');
    expect(kinds.has('lemon-pot.container')).toBe(false);
  });
});
