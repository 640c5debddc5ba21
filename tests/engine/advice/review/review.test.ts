import { describe, expect, test } from 'vitest';
import { checkReadings, leafReadings } from '../../../../engine/advice/review/readings.ts';
import { reviewOf } from '../../../../engine/advice/review/review.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Feature, Plan, Plant, Reading } from '../../../../engine/plan/types.ts';

const demo = demoPlan('courtyard');
const lemon: Plant = { id: 'lemon', kind: 'plant', at: [3, 4], height: 1.4, spread: 0.8, plant: 'lemon' };
const bare: Plant = { ...lemon, id: 'bare', at: [9, 4] };
const roof: Canopy = { id: 'roof', kind: 'canopy', center: [3, 4], length: 4, width: 4, height: 2.2, density: 0.5 };

function yard(readings: readonly Partial<Reading>[], others: readonly Feature[] = [lemon, bare, roof]): Plan {
  const features = readings.map((reading, k): Reading => ({
    id: `r${k}`,
    kind: 'reading',
    at: [3, 4],
    when: `2026-07-${20 + k}T14:30`,
    ...reading,
  }));
  return { ...demo, journal: [], options: [], features: [...others, ...features] };
}

/** What the estimate says at the readings' minutes, so that a test can be off it by a known amount. */
function estimates(plan: Plan) {
  return checkReadings(plan, leafReadings(plan)).checks;
}

describe('a reading against the estimate of its minute', () => {
  test('between watered and thirsty it is no error at all; beyond, it is inside as far as that leaf may be off', () => {
    const probe = yard([{ plant: 'lemon', air: 38, leaf: 40 }]);
    const [{ watered, thirsty }] = estimates(probe);
    expect(watered).toBeLessThan(thirsty);
    const of = (leaf: number) => reviewOf(yard([{ plant: 'lemon', air: 38, leaf }])).readings[0];
    expect(of((watered + thirsty) / 2)).toMatchObject({ difference: 0, outside: false });
    const above = of(thirsty + 1.5);
    expect(above.difference).toBeCloseTo(1.5, 6);
    expect(above.spread).toBeGreaterThan(1.5);
    expect(above.outside).toBe(false);
    expect(of(thirsty + above.spread + 0.1).outside).toBe(true);
    expect(of(watered - 2).spread).toBeGreaterThan(above.spread);
    expect(of(thirsty + 6).outside).toBe(true);
    expect(of(watered - 6).difference).toBeCloseTo(-6, 6);
  });

  test('the typed air counts, not the month’s mean: 5 K more air is about 5 K more leaf', () => {
    const [cool, warm] = [34, 39].map((air) => estimates(yard([{ plant: 'lemon', air, leaf: 40 }]))[0].thirsty);
    expect(warm - cool).toBeGreaterThan(4);
    expect(warm - cool).toBeLessThan(6);
  });

  test('under half-dense cloth a little less than half of the high sun is left, in the open all of it', () => {
    const checks = estimates(
      yard([
        { plant: 'lemon', air: 38, leaf: 40 },
        { plant: 'bare', at: [9, 4], when: '2026-07-20T14:33', air: 38, leaf: 40 },
      ]),
    );
    const [under, open] = checks.map(({ share }) => share);
    expect(open).toBe(1);
    expect(under).toBeLessThan(0.5);
    expect(under).toBeGreaterThan(0.46);
  });

  test('at night, or in a month without climate, a reading is left out and said so', () => {
    const { readings, notes } = reviewOf(
      yard([
        { air: 20, leaf: 18, when: '2026-07-20T02:00' },
        { air: 12, leaf: 18, when: '2026-01-20T13:00' },
      ]),
    );
    expect(readings).toEqual([]);
    expect(notes[0]).toContain('the sun was down');
    expect(notes[1]).toContain('no figures for its month');
  });
});

describe('pairs', () => {
  const pair = (minutes: number, more: Partial<Reading> = {}) => [
    { plant: 'lemon', covered: true, air: 41, leaf: 42, light: 49_000, when: '2026-07-20T15:10' },
    {
      plant: 'bare',
      at: [9, 4] as const,
      covered: false,
      air: 41,
      leaf: 48,
      light: 98_000,
      when: `2026-07-20T15:${10 + minutes}`,
      ...more,
    },
  ];

  test('open 48, covered 42, air 41 at 15:10: a difference of 6 K, and no correction claimed from one pair', () => {
    const result = reviewOf(yard(pair(3)));
    expect(result.pairs).toMatchObject([{ open: 'r1', covered: 'r0', minutesApart: 3, cooler: 6 }]);
    expect(result.corrections).toEqual([]);
    expect(result.sentences).toContain('One pair claims nothing: no correction is offered.');
    expect(result.sentences.some((text) => text.includes('6 °C cooler'))).toBe(true);
    expect(result.sentences.find((text) => text.startsWith('A pair'))).toMatch(
      /lemon under the cloth and the plant bare in the open, 3 minutes apart/,
    );
  });

  test(
    'a leaf said to be under a cloth that the plan does not have is held against nothing: no difference of 0 ' +
      'to 0 °C is made up',
    () => {
      const result = reviewOf(yard(pair(3), [lemon, bare]));
      expect(result.readings.map(({ plant }) => plant)).toEqual(['bare']);
      expect(result.pairs).toMatchObject([{ cooler: 6, estimated: null, density: 0.5 }]);
      expect(result.sentences.find((text) => text.startsWith('A pair'))).toMatch(/6 °C cooler than the open one\.$/);
      expect(result.notes).toEqual([expect.stringContaining('no cloth in the plan shades that leaf')]);
      // A cloth that hangs elsewhere is none; drawn over the leaf it counts.
      expect(reviewOf(yard(pair(3), [lemon, bare, { ...roof, center: [30, 4] }])).pairs[0].estimated).toBeNull();
      expect(reviewOf(yard(pair(3))).pairs[0].estimated?.[0]).toBeGreaterThan(1);
    },
  );

  test('in a wall’s shade a cloth makes next to no difference, and it is said so in words', () => {
    const house: Feature = {
      id: 'house',
      kind: 'building',
      outline: [
        [-9, -9],
        [-1, -9],
        [-1, 30],
        [-9, 30],
      ],
      height: 40,
    };
    const evening = (minute: number) => `2026-07-20T19:${minute}`;
    const result = reviewOf(
      yard(
        [
          { plant: 'lemon', covered: true, air: 38, leaf: 36, when: evening(10) },
          { plant: 'bare', at: [9, 4], covered: false, air: 38, leaf: 37, when: evening(12) },
        ],
        [lemon, { ...bare, at: [4.5, 7] }, roof, house],
      ),
    );
    expect(result.readings.map(({ share }) => share)).toEqual([0, 0]);
    expect(result.sentences.find((text) => text.startsWith('A pair'))).toMatch(
      /the estimate (sees no difference there|says about −?1 °C)/,
    );
  });

  test('two leaves of one plant, one lifted out from under its cloth: the open one is held against the open sky', () => {
    const [covered, open] = pair(3).map((reading) => ({ ...reading, plant: 'lemon', at: [3, 4] as const, side: 225 }));
    const result = reviewOf(yard([covered, open], [lemon, roof]));
    const [under, bareLeaf] = result.readings;
    expect(bareLeaf.share).toBe(1);
    expect(under.share).toBeLessThan(0.6);
    expect(result.pairs[0].estimated![0]).toBeGreaterThan(1);
    // Said of neither, a reading is taken as the plan has it.
    expect(reviewOf(yard([{ ...open, covered: undefined }], [lemon, roof])).readings[0].share).toBeCloseTo(
      under.share,
      2,
    );
  });

  test('readings six minutes apart are no pair', () => {
    expect(reviewOf(yard(pair(6))).pairs).toEqual([]);
  });

  test('half the light under the cloth: its density is 50 %', () => {
    expect(reviewOf(yard(pair(2))).pairs[0].density).toBeCloseTo(0.5, 12);
  });

  test('a reading that names its partner is paired with it, not with a nearer stranger', () => {
    const stranger = {
      plant: 'bare',
      at: [9, 4] as const,
      covered: false,
      air: 41,
      leaf: 47,
      when: '2026-07-20T15:11',
    };
    expect(reviewOf(yard([...pair(4, { pair: 'r0' }), stranger])).pairs.map(({ open }) => open)).toEqual(['r1']);
  });
});

describe('corrections', () => {
  /**
   * Readings that the yard with a thinner cloth would have given, a bit above its thirsty leaf, held against the denser
   * one.
   */
  function readingsUnder(density: number, count: number, above = 0.2) {
    const asked = Array.from({ length: count }, (_, k) => ({
      plant: 'lemon',
      air: 36 + k,
      leaf: 40,
      covered: true,
      when: `2026-07-${10 + k}T15:${20 + 5 * k}`,
    }));
    const truth = estimates(yard(asked, [lemon, { ...roof, density }]));
    return asked.map((reading, k) => ({ ...reading, leaf: truth[k].thirsty + above }));
  }

  test(
    'three readings hotter than a dense cloth allows name its density, with what the error falls to; the plan ' +
      'is not touched',
    () => {
      const plan = yard(readingsUnder(0.1, 3), [lemon, { ...roof, density: 0.9 }]);
      const before = structuredClone(plan);
      const { corrections, readings } = reviewOf(plan);
      expect(readings.every(({ outside, difference }) => outside && difference > 0)).toBe(true);
      const density = corrections.find(({ pointer }) => pointer === '/features/1/measuredDensity')!;
      expect(density.to).toBeLessThan(0.4);
      expect(density.errorAfter).toBeLessThan(0.3 * density.errorBefore);
      expect(density.sentence).toMatch(/falls from \d+\.\d °C to \d+\.\d °C/);
      expect(plan).toEqual(before);
    },
  );

  test('two readings outside are not enough', () => {
    expect(reviewOf(yard(readingsUnder(0.1, 2), [lemon, { ...roof, density: 0.9 }])).corrections).toEqual([]);
  });
});
