/** Ten yards written down with the advice that each calls for before the program was asked about any of them. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { nextStepOf } from '../../../../engine/advice/why/next-step.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { sited } from './small-search.ts';
import { bed, deepShade, plant, yard } from './table.ts';

/** A tall house with one long face. */
function house(x0: number, x1: number, eaves = 0): Feature {
  return {
    id: 'house',
    kind: 'building',
    height: 4,
    eaves,
    outline: [
      [x0, 0],
      [x1, 0],
      [x1, 6],
      [x0, 6],
    ],
  };
}

describe('ten yards held back', () => {
  // Common practice, no source: desert bedding that is sold for full sun.
  test('lantana in the open wants no cloth', () => {
    const { options, sentence } = sited(yard([plant('lantana')]));
    expect(options).toEqual([]);
    expect(sentence).toMatch(/no shade|no plant is harmed/);
  });

  // Common practice, no source: Japanese maples scorch in hot sun and are grown under 50 to 70 %.
  test('a Japanese maple in the open wants cloth, no denser than 70 %', () => {
    const { options } = sited(yard([plant('jmaple')]));
    expect(options.length).toBeGreaterThan(0);
    for (const { density } of options) expect(density).toBeLessThanOrEqual(0.7);
  });

  // University of Arizona Cooperative Extension on vegetable gardens, from memory: morning sun, shade in the afternoon.
  test('tomatoes on the east side of a tall house have their shade already', () => {
    const plan = yard([house(0, 2.1), bed('tomato', 2.2, 0.5)], { high: 36, heatwave: 41 });
    expect(valueOf(plantLoadsOf(plan))[0].verdict).not.toBe('will burn');
    const { options, sentence } = sited(plan);
    for (const { added } of options) expect(added.isWorth).toBe(false);
    expect(sentence).toMatch(/not worth building: mulch and water do here|no plant is harmed/);
  });

  // Building practice (overhangs against a high sun, upright shade against the low one to the west): from memory.
  test('under deep eaves to the west of a house it is upright cloth that helps', () => {
    const plan = yard([house(4, 6, 2.4), plant('hydrangea', { at: [2.9, 3.05] })]);
    const [first] = sited(plan, { kinds: ['roof', 'roof with drops', 'screen'] }).options;
    expect(['screen', 'roof with drops']).toContain(first?.kind);
  });

  // Martin & Ingram (1993) and UF/IFAS on root zones in containers, from memory: a dark pot's roots suffer first.
  test('a lemon in a dark pot on hot ground: roots first, and all that is free before cloth', () => {
    const pot = plant('lemon', { container: true, pot: { width: 0.4, height: 0.4, colour: 'dark' } });
    const { steps } = valueOf(cheaperFirst(yard([pot])));
    expect(steps[0].id).toBe('wrap');
    // It stands in the open: no place there is better, which is said last.
    expect(steps.at(-1)).toMatchObject({ id: 'move', effect: 'nothing to gain' });
    const [roots] = steps.find(({ id }) => id === 'wrap')?.roots ?? [];
    expect(roots.verdict).not.toBe('fine');
    expect(roots.helps.find(({ id }) => id === 'white')?.cooler).toBeGreaterThan(3);
  });

  // Geometry: south of the tropics the sun stands in the north at noon.
  test('south of the equator the sun burns from the north, never from the south', () => {
    const north = yard([plant('pepper')]);
    const plan: Plan = {
      ...north,
      site: { ...north.site, latitude: -34, longitude: 138.6, timeZone: 'Australia/Adelaide' },
      season: { ...north.season, from: '01-20', to: '01-21' },
      climate: { ...north.climate, months: north.climate.months.map((month) => ({ ...month, month: 1 })) },
    };
    const { sides } = valueOf(whyBurnt(plan, { plant: 'pepper', side: 0 }));
    const of = (bearing: number) => sides.find(({ side }) => side === bearing)?.scorchDose ?? NaN;
    expect(of(0)).toBeGreaterThan(of(180));
    expect(Math.max(of(315), of(0), of(45))).toBeGreaterThan(Math.max(of(135), of(180), of(225)));
  });

  // UC IPM and University of Arizona on salt burn, from memory: edges and tips on every side are no sunburn.
  test('leaves crisp on all sides alike are no work for cloth: look at the soil', () => {
    const plan = yard([house(0, 2.1), plant('lemon', { at: [3.2, 3.05] })]);
    const why = valueOf(whyBurnt(plan, { plant: 'lemon', side: 'all', rivals: ['salt'] }));
    expect(why.answer).toBe('does not');
    expect(valueOf(nextStepOf(plan, why))).toMatchObject({ do: 'look', cost: 0 });
    expect(why.sentence).toMatch(/salt|soil|root ball/);
  });

  // Extension pages on hardening transplants (a week to two), from memory.
  test('out of deep shade into the sun a pot is hardened off for one to two weeks', () => {
    const pot = plant('tomato', { container: true, height: 0.6, spread: 0.4, at: [3.1, 3.05] });
    const dark = yard([...deepShade(), pot], { high: 36, heatwave: 41 });
    const best = valueOf(placeOf(dark, { plant: 'tomato', count: 1, on: '2026-06-20' })).spots[0];
    expect(best.stay).toBe(false);
    expect(best.hardening?.days.length).toBeGreaterThanOrEqual(7);
    expect(best.hardening?.days.length).toBeLessThanOrEqual(14);
  });

  // Common sense: what costs nothing is told whatever the purse holds.
  test('for a purse of five there is no cloth, and water and mulch all the same', () => {
    const plan = yard([bed('lettuce')]);
    const { options, sentence } = sited(plan, { budget: 5 });
    expect(options).toEqual([]);
    expect(sentence).toMatch(/^No cloth that may stand here/);
    expect(valueOf(cheaperFirst(plan)).steps.map(({ id }) => id)).toContain('water');
    const step = valueOf(nextStepOf(plan, { plant: 'lettuce-bed', answer: 'explains' }));
    expect(step).toMatchObject({ do: 'water', cost: 0 });
    expect(step.sentence).toMatch(/^Mulch, and water in the morning: free\./);
    // Vegetable calendars of UC and University of Arizona Cooperative Extension, from memory: of the cool months.
    expect(step.sentence).toContain('or sow it for the cool months instead');
  });

  // UC ANR, Faber (2020): young avocados; University of Arizona: established citrus takes full sun.
  test('a young avocado beside an old orange: cloth for the one alone', () => {
    const [avocado, orange] = [
      plant('avocado', { at: [4.2, 3.05], planted: '2026' }),
      plant('orange', { at: [1.6, 3.05], planted: '2005' }),
    ];
    const { options, uncounted, served } = sited(yard([avocado, orange], { high: 37, heatwave: 43 }));
    expect(uncounted).toContainEqual({ id: 'orange', because: 'no shade needed' });
    expect(served).toEqual(options.length > 0 ? ['avocado'] : []);
    expect(options.length).toBeGreaterThan(0);
  });
});
