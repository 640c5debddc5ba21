/** Every share of heat damage is told of the plants that it is for; every verdict as the heatwave day's. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LadderStep } from '../../../../engine/advice/cheaper-first/step.ts';
import { compareOptions } from '../../../../engine/advice/compare/compare.ts';
import { addedWords, adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteOption, SiteResult } from '../../../../engine/advice/site/types.ts';
import { lessWords, offWords } from '../../../../engine/advice/words/effect-words.ts';
import { effectOn, type Harmed } from '../../../../engine/advice/words/served.ts';
import { heatwaveWords } from '../../../../engine/advice/words/stands.ts';
import type { Verdict } from '../../../../engine/load/types.ts';
import { worthOf } from '../../../../engine/plan/defaults.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { smallPlan } from '../site/small-plans.ts';

const DEMO = demoPlan('courtyard');
const VERDICTS: readonly Verdict[] = [
  'fine',
  'fine once established',
  'no shade needed',
  'at risk',
  'will burn',
  'too dark',
];
const WORTHS = new Map(DEMO.features.map((feature) => [feature.id, worthOf(feature)]));
/** From the mildest to the worst, as far as heat goes. */
const RANK: Readonly<Partial<Record<Verdict, number>>> = { fine: 0, 'at risk': 1, 'will burn': 2 };

const harmed: fc.Arbitrary<Harmed[]> = fc
  .array(
    fc.record({
      worth: fc.double({ min: 0.1, max: 5, noNaN: true }),
      before: fc.double({ min: 0.1, max: 100, noNaN: true }),
      left: fc.double({ min: 0, max: 1.2, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((all) => all.map(({ worth, before, left }, k) => ({ id: `p${k}`, worth, before, after: before * left })));

describe('what a change takes off', () => {
  test('is the same however many plants stand by that it does not touch', () => {
    fc.assert(
      fc.property(harmed, fc.double({ min: 0, max: 1000, noNaN: true }), (plants, other) => {
        const aside = { id: 'aside', worth: 2, before: other, after: other };
        expect(effectOn([...plants, aside])).toEqual(effectOn(plants));
      }),
      { seed: 11 },
    );
  });

  test('of all together lies between what it takes off each, and the one that gains most is told first', () => {
    fc.assert(
      fc.property(harmed, (plants) => {
        const { plants: told, share } = effectOn(plants);
        const shares = told.map((plant) => plant.share);
        expect(share).toBeGreaterThanOrEqual(Math.min(...shares, share) - 1e-9);
        if (told.length > 0) {
          expect(share).toBeGreaterThanOrEqual(Math.min(...shares) - 1e-9);
          expect(share).toBeLessThanOrEqual(Math.max(...shares) + 1e-9);
        }
        const gains = told.map(({ id }) => {
          const { worth, before, after } = plants.find((plant) => plant.id === id)!;
          return worth * (before - after);
        });
        expect(gains).toEqual(gains.toSorted((a, b) => b - a));
      }),
      { seed: 12 },
    );
  });

  test('is never told without the plants that it is of; of plants alike it is told once', () => {
    const plants = [
      { id: 'lemon', share: 0.604 },
      { id: 'hydrangea', share: 0.598 },
      { id: 'geraniums', share: 0.23 },
    ];
    expect(lessWords(DEMO, plants)).toBe(
      '60 % less heat damage to the lemon pot and the hydrangea and 23 % less to the geraniums along the house',
    );
    expect(offWords(DEMO, plants.slice(1))).toBe(
      '60 % of the heat damage off the hydrangea and 23 % off the geraniums along the house',
    );
  });
});

describe('a verdict', () => {
  test('is told as the heatwave day’s, by itself alone, and of burning that water will not save it', () => {
    for (const before of VERDICTS)
      for (const after of VERDICTS) {
        const said = heatwaveWords(DEMO, [{ id: 'lemon', before, after }]);
        if (after === 'too dark') expect(said).toBe('');
        else expect(said).toMatch(/^On the heatwave day .*the lemon pot.*\.$/);
        expect(/even if watered/.test(said)).toBe(after === 'will burn');
        expect(/water decides/.test(said)).toBe(after === 'at risk');
        expect(/still burn/.test(said)).toBe(after === 'will burn' && before === 'will burn');
      }
  });

  // The published line for fruit knows no water (Schrader, Zhang & Sun 2003).
  test('says of fruit nothing of water', () => {
    const plan = yardPlan([
      { id: 'chillies', kind: 'plant', name: 'Chillies', at: [3, 3], height: 1, spread: 1, plant: 'chile' },
    ]);
    const said = (after: Verdict) => heatwaveWords(plan, [{ id: 'chillies', before: 'will burn', after }]);
    expect(said('will burn')).toBe(
      'On the heatwave day the fruit of the chillies will still burn where it is sunniest.',
    );
    expect(said('at risk')).toBe('On the heatwave day the fruit of the chillies may burn where it is sunniest.');
  });

  // Monotone by the definition of both: denser cloth in the same place leaves no point more sun.
  test.each([3, 8, 21, 34])('under ever denser cloth at one place never worsens as damage shrinks: yard %i', (seed) => {
    const plan = smallPlan(seed);
    const plant = plan.features.find(({ kind }) => kind === 'plant');
    const at = plant?.kind === 'plant' ? plant.at : ([2, 2] as const);
    const roof = (density: number): Canopy => ({
      id: 'roof',
      kind: 'canopy',
      center: at,
      length: 2,
      width: 2,
      height: 2.2,
      density,
    });
    const options = [0.2, 0.5, 0.8].map((density, k) => ({ id: `D${k}`, adds: [roof(density)] }));
    const yard: Plan = { ...plan, options };
    const { choices } = valueOf(compareOptions(yard));
    let judged = 0;
    for (const { id } of choices[0].plants) {
      const stands = choices.map(({ plants }) => plants.find((each) => each.id === id)?.after ?? null);
      for (const [k, stand] of stands.entries()) {
        if (k === 0) continue;
        expect(stand?.harm ?? NaN).toBeLessThanOrEqual((stands[k - 1]?.harm ?? NaN) + 1e-9);
        const [milder, was] = [stand?.verdict, stands[k - 1]?.verdict].map((each) => RANK[each ?? 'too dark']);
        if (milder !== undefined && was !== undefined) expect(milder).toBeLessThanOrEqual(was);
        judged++;
      }
    }
    expect(judged).toBeGreaterThan(0);
  });
});

describe('what costs nothing stands before cloth', () => {
  const move = (serves: readonly string[], sparedShare: number): LadderStep => ({
    id: 'move',
    name: 'Move the pots',
    serves,
    spared: 1,
    sparedShare,
    cost: 0,
    gain: '',
    effect: '',
    sentence: '',
  });
  const found = (
    served: readonly string[],
    effect: number,
    verdict: Verdict = 'will burn',
    wateredOver = -2,
  ): SiteResult => {
    const plants = served.map((id) => ({ id, before: { verdict, wateredOver } }));
    return {
      sentence: 'Roof.',
      options: [{ served, effect, plants } as unknown as SiteOption],
    } as unknown as SiteResult;
  };

  // By definition of the verdict: at risk is what burns only if it thirsts.
  test('where water is enough it is told before cloth', () => {
    expect(adviceSentence(DEMO, found(['lemon'], 0.57, 'at risk'), [])).toMatch(
      /^Mulch and water first: free, and enough for the lemon pot as long as it never thirsts\. If it is dry/,
    );
    // Where the list for a hot day calls water alone a close call, it is not called enough here.
    expect(adviceSentence(DEMO, found(['lemon'], 0.57, 'at risk', -0.5), [])).toMatch(
      /^Mulch and water first: free, and on most days enough for the lemon pot/,
    );
    // And after a move as well.
    expect(adviceSentence(DEMO, found(['lemon'], 0.57, 'at risk'), [move(['lemon'], 0.3)])).toMatch(
      /^Move the lemon pot first: .* to it\. Then mulch and water: free, and enough for the lemon pot as long as/,
    );
  });

  test.each([
    [
      ['lemon'],
      0.78,
      ['lemon'],
      0.57,
      'Move the lemon pot first: free, and 78 % less heat damage to it. If you cannot: Roof.',
    ],
    [
      ['lemon'],
      0.3,
      ['lemon'],
      0.57,
      'Move the lemon pot first: free, and 30 % less heat damage to it. Cloth does more: Roof.',
    ],
    [
      ['lemon', 'hydrangea'],
      0.78,
      ['geraniums'],
      0.9,
      'Move the lemon pot and the hydrangea first: free, and 78 % less heat damage to them. For what stays: Roof.',
    ],
    [
      ['lemon'],
      0.51,
      ['lemon'],
      0.57,
      'Move the lemon pot first: free, and 51 % less heat damage to it. If you cannot: Roof.',
    ],
    [['lemon'], 0.05, ['lemon'], 0.57, 'Roof.'],
    [
      ['lemon'],
      0.78,
      ['lemon', 'geraniums'],
      0.6,
      'Move the lemon pot first: free, and 78 % less heat damage to it. Cloth is for what stays too: Roof.',
    ],
  ] as const)('moving %j spares them %d, cloth for %j %d', (moved, share, served, effect, said) => {
    expect(adviceSentence(DEMO, found(served, effect), [move(moved, share)])).toBe(said);
  });
});

test('where no leaf wants cloth but roots die, nobody is told that no plant is harmed', () => {
  const wrap = { id: 'wrap', name: 'Wrap the pot', cost: null, serves: ['lemon'], sparedShare: null };
  const said = (sentence: string, uncounted: readonly object[]): string =>
    adviceSentence(DEMO, { sentence, uncounted, options: [] } as unknown as SiteResult, [
      wrap as unknown as LadderStep,
    ]);
  const roots = 'Wrap the pot: no leaf is harmed, but roots are. Then you may stop.';
  expect(said('Nothing to shade: no plant is harmed.', [])).toBe(roots);
  expect(said('No cloth: the olive needs no shade.', [{}])).toBe(`No cloth: the olive needs no shade. ${roots}`);
});

test('cloth does more than moving only where it does so for the same plants', () => {
  // Of four pots one gains much by its move, the others little: cloth for that one is no better than moving it.
  const moved = [
    { id: 'lemon', worth: 1, before: 10, after: 2 },
    { id: 'hydrangea', worth: 1, before: 30, after: 27 },
  ];
  const step = { id: 'move', cost: 0, serves: ['lemon', 'hydrangea'], sparedShare: 11 / 40, moved };
  const plants = [{ id: 'lemon', before: { verdict: 'will burn' } }];
  const result = { sentence: 'Roof.', options: [{ served: ['lemon'], effect: 0.6, plants }] };
  const said = adviceSentence(DEMO, result as unknown as SiteResult, [step as unknown as LadderStep]);
  expect(said).toContain('If you cannot: Roof.');
});

test('each answer of a search is told of its own plants; answers are held together by those that any of them serves', () => {
  const { options, served: anyOf } = valueOf(
    siteOf(DEMO, { kinds: ['roof', 'screen'], sizes: [{ length: 2, width: 2 }], step: 0.5, turnStep: 45 }),
  );
  expect(options.length).toBeGreaterThan(1);
  for (const { served, effect, together, plants, why, added } of options) {
    const off = (ids: readonly string[]): number => {
      const sum = (of: 'before' | 'after'): number =>
        plants.reduce((all, plant) => {
          const worth = WORTHS.get(plant.id) ?? 1;
          return ids.includes(plant.id) ? all + worth * (plant[of].harm ?? 0) : all;
        }, 0);
      return 1 - sum('after') / sum('before');
    };
    expect(effect).toBeCloseTo(off(served), 9);
    expect(together).toBeCloseTo(off(anyOf), 9);
    if (served.length === 1) expect(why).toContain(`${Math.round(100 * effect)} % of the heat damage off`);
    expect(added.effect).toBeCloseTo(together - (added.to === null ? 0 : options[added.to].together), 9);
  }
});

test('the most there is never stands in the table with less than what costs less', () => {
  const answer = (
    roles: readonly string[],
    served: readonly string[],
    together: number,
    cost: number,
    to: number | null,
  ) =>
    ({
      roles,
      served,
      together,
      cost,
      currency: 'EUR',
      added: { to, effect: 0, cost: to === null ? cost : 9, isWorth: true },
    }) as unknown as SiteOption;
  // A wide roof serves more plants, each of them less: of its own plants its share is lower, of all it is higher.
  const options = [
    answer(['most for money'], ['lemon'], 0.31, 546, null),
    answer(['most'], ['lemon', 'herbs'], 0.44, 555, 0),
  ];
  expect(addedWords(options[1], options)).toBe('13 % more in all than 1 for 9 EUR');
});
