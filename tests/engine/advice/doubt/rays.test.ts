import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubtInputs } from '../../../../engine/advice/doubt/inputs.ts';
import { createRayYard } from '../../../../engine/advice/doubt/rays.ts';
import type { RayHarm } from '../../../../engine/advice/doubt/suffered.ts';
import { rayVerdicts } from '../../../../engine/advice/doubt/verdicts.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import type { Feature, How, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const guess = (...keys: string[]): How => Object.fromEntries(keys.map((key) => [key, { by: 'guess' }]));

const CASTERS: readonly Feature[] = [
  {
    id: 'wall',
    kind: 'wall',
    path: [
      [0.2, 0.5],
      [0.2, 7],
    ],
    height: 2.6,
    thickness: 0.3,
    openness: 0.1,
    how: guess('height', 'thickness', 'openness', 'path'),
  },
  {
    id: 'house',
    kind: 'building',
    outline: [
      [3, 6.9],
      [11, 6.9],
      [11, 8],
      [3, 8],
    ],
    height: 3.2,
    eaves: 0.6,
    how: guess('height', 'eaves', 'outline'),
  },
  {
    id: 'tree',
    kind: 'tree',
    at: [4.2, 2.1],
    height: 4.4,
    crownWidth: 2.6,
    crownBase: 1.3,
    openness: 0.2,
    how: guess('height', 'openness', 'crownWidth', 'crownBase', 'at'),
  },
  {
    id: 'roof',
    kind: 'canopy',
    center: [8.1, 4.2],
    length: 2.4,
    width: 2.1,
    height: 2.2,
    density: 0.55,
    how: guess('height', 'density', 'center', 'turn'),
  },
];
const PLANTS: readonly Feature[] = [
  {
    id: 'lemon',
    kind: 'plant',
    at: [2.1, 3.3],
    height: 1.6,
    spread: 1.1,
    plant: 'lemon',
    container: true,
    how: guess('at', 'height', 'spread'),
  },
  { id: 'tomato', kind: 'plant', at: [8.4, 4.6], height: 1.2, spread: 0.7, plant: 'tomato', worth: 2 },
  {
    id: 'herbs',
    kind: 'bed',
    outline: [
      [5.5, 2.2],
      [7.5, 2.2],
      [7.5, 3],
      [5.5, 3],
    ],
    plantHeight: 0.3,
    plant: 'thyme',
  },
];
const plain = yardPlan([...CASTERS, ...PLANTS]);
const YARD: Plan = {
  ...plain,
  site: { ...plain.site, upBearing: 25, how: { upBearing: { by: 'compass' } } },
  season: { year: 2026, from: '06-20', to: '07-04', stepMinutes: 20 },
  climate: {
    ...plain.climate,
    months: [...plain.climate.months, { month: 7, high: 41, low: 26, humidity: 25, wind: 1.5 }],
  },
};

describe('a yard judged with rays', () => {
  const yard = valueOf(createRayYard(YARD));
  const harms = valueOf(harmOf(YARD));

  test('harm is what harm is everywhere: of a plant to a hundredth, of a bed from nine cells to a tenth', () => {
    expect(yard.base.map(({ id }) => id)).toEqual(harms.map(({ id }) => id));
    yard.base.forEach(({ id, harm }, k) => {
      const allowed = (id === 'herbs' ? 0.1 : 0.01) * harms[k].harm;
      expect(Math.abs(harm - harms[k].harm), id).toBeLessThanOrEqual(allowed);
    });
    expect(harms.every(({ harm }) => harm > 0)).toBe(true);
  });

  test('verdicts are those of the load', () => {
    const verdictOf = valueOf(rayVerdicts(YARD));
    const verdicts = valueOf(plantLoadsOf(YARD)).map(({ id, verdict }) => [id, verdict]);
    expect(yard.base.map((harm) => [harm.id, verdictOf(harm, harm)])).toEqual(verdicts);
  });

  test('with any one input off it is what a yard drawn so would be, though only what changed was cast again', () => {
    const inputs = doubtInputs(YARD);
    expect(inputs.length).toBeGreaterThan(18);
    for (const { key, feature, shifts } of inputs) {
      shifts.forEach((shift, s) =>
        expectAlike(valueOf(yard.under(shift, feature)), valueOf(createRayYard(shift)).base, `${key} ${s}`),
      );
    }
  });

  test('asking in any order gives the same answers', () => {
    const inputs = doubtInputs(YARD);
    const first = inputs.map(({ shifts, feature }) => valueOf(yard.under(shifts[0], feature)));
    fc.assert(
      fc.property(fc.nat(inputs.length - 1), (n) => {
        expect(valueOf(yard.under(inputs[n].shifts[0], inputs[n].feature))).toEqual(first[n]);
      }),
      { seed: 4, numRuns: 12 },
    );
  });
});

function expectAlike(got: readonly RayHarm[], fresh: readonly RayHarm[], what: string): void {
  got.forEach(({ id, harm, inHeat, light }, k) => {
    // What walls throw is not cast anew where a shadow on them moves: a fiftieth.
    expect(Math.abs(harm - fresh[k].harm), `${what}: ${id}`).toBeLessThan(0.02 * fresh[k].harm + 1e-8);
    expect(inHeat, `${what}: ${id}`).toBe(fresh[k].inHeat);
    // Of the air's heat and of a limit light knows nothing.
    expect(light, `${what}: ${id}`).toBeCloseTo(fresh[k].light, 5);
  });
}
