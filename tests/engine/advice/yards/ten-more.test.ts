/** Ten more yards, the advice that each calls for written down before the program was asked about any of them. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import type { LadderStep } from '../../../../engine/advice/cheaper-first/step.ts';
import { adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import { nextStepOf, type NextStep } from '../../../../engine/advice/why/next-step.ts';
import { cheaperHeadline } from '../../../../engine/advice/words/cure-headlines.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { SMALL, sited } from './small-search.ts';
import { bed, plant, yard } from './table.ts';

const cures = (plan: Plan): readonly LadderStep[] => valueOf(cheaperFirst(plan)).steps;
const idsOf = (plan: Plan): string[] => cures(plan).map(({ id }) => id);
const next = (plan: Plan, id: string): NextStep => valueOf(nextStepOf(plan, { plant: id, answer: 'explains' }));

const BLACK = { width: 0.4, height: 0.4, colour: 'dark' } as const;

function block(id: string, x0: number, y0: number, x1: number, y1: number, height = 4): Feature {
  return {
    id,
    kind: 'building',
    height,
    outline: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
  };
}

describe('ten more yards', () => {
  // Common practice, no source: a shade plant in a pot is carried out of the sun before anything is built.
  test('a fern in a pot, and a tall house that throws shade: carry it there first', () => {
    const pot = plant('fern', { container: true, height: 0.6, spread: 0.5, at: [3, 1] });
    const plan = yard([block('house', 0, 3, 6, 4.5), pot]);
    const steps = cures(plan);
    expect(steps[0]).toMatchObject({ id: 'move', cost: 0, serves: ['fern'] });
    expect(steps[0].sparedShare).toBeGreaterThan(0.3);
    expect(adviceSentence(plan, sited(plan), steps)).toMatch(
      /^Move the .*fern first: free, and \d+ % less heat damage/,
    );
    expect(next(plan, 'fern').do).toBe('move');
  });

  // Martin & Ingram (1993) and UF/IFAS on root zones, from memory: leaves that bear the sun do not save roots in a
  // black pot.
  test('an olive in a black pot wants no cloth, but its pot wants white round it', () => {
    const plan = yard([plant('olive', { container: true, pot: BLACK, move: 'never' })]);
    expect(sited(plan).options).toEqual([]);
    expect(idsOf(plan)).toEqual(['wrap']);
    expect(cheaperHeadline(plan, cures(plan))).not.toMatch(/You may stop here/);
    expect(cheaperHeadline(plan, cures(plan))).toMatch(/wrap the pot/i);
    expect(next(plan, 'olive').sentence).toMatch(/no shade.*wrap the pot in white/);
  });

  // The same.
  test('a lemon in a pot that nobody can carry: no move is told, its roots are', () => {
    const plan = yard([plant('lemon', { container: true, pot: BLACK, move: 'never', planted: '2026' })]);
    expect(idsOf(plan)).toEqual(['wrap', 'water', 'clay']);
    expect(next(plan, 'lemon')).toMatchObject({ do: 'water', cost: 0 });
    expect(next(plan, 'lemon').sentence).toMatch(/^Mulch, and water.*wrap the pot in white/);
  });

  // University of Arizona: established citrus takes full sun; the pot's wall is another matter (Martin & Ingram).
  test('an old orange in a black pot beside lettuce: cloth for the lettuce alone, white for the pot', () => {
    const orange = plant('orange', { container: true, pot: BLACK, planted: '2010', at: [1.4, 4.6] });
    const plan = yard([bed('lettuce', 3.4), orange], { high: 37, heatwave: 43 });
    expect(sited(plan).served).toEqual(['lettuce-bed']);
    expect(idsOf(plan)).toContain('wrap');
    expect(idsOf(plan)).not.toContain('move');
    const wrap = cures(plan).find(({ id }) => id === 'wrap');
    expect(wrap?.serves).toEqual(['orange']);
  });

  // Common sense: two pots do not stand in one place.
  test('two lemons in pots go to two places, each told', () => {
    const pots = [1.2, 4.8].map((x, k) =>
      plant('lemon', { id: `lemon-${k}`, name: `Lemon ${k}`, container: true, at: [x, 1], planted: '2026' }),
    );
    const plan = yard([block('house', 0, 3, 6, 4.5), ...pots]);
    const [move] = cures(plan);
    expect(move.serves).toEqual(['lemon-0', 'lemon-1']);
    const [one, two] = (move.moves ?? []).map(({ at }) => at);
    expect(Math.hypot(one[0] - two[0], one[1] - two[1])).toBeGreaterThan(0.4);
    for (const pot of pots) expect(move.sentence).toContain(pot.name?.toLowerCase());
  });

  // UF/IFAS on mango: young trees are shaded, bearing ones stand in full sun (from memory).
  test('a young mango beside an old one: cloth for the young', () => {
    const plan = yard([
      plant('mango-young', { at: [1.6, 3], planted: '2026' }),
      plant('mango', { at: [4.4, 3], height: 2.5, spread: 1.6, planted: '2005' }),
    ]);
    const { served, options } = sited(plan);
    expect(options.length).toBeGreaterThan(0);
    expect(served).toEqual(['mango-young']);
  });

  // Torres & Lopez (2010), from memory: what is short of light is never given cloth.
  test('lettuce under a wide dense tree: no cloth over it', () => {
    const tree: Feature = {
      id: 'tree',
      kind: 'tree',
      at: [3, 3],
      height: 5,
      crownWidth: 6,
      crownBase: 1.2,
      openness: 0.03,
    };
    const { options, sentence } = sited(yard([tree, bed('lettuce')], { high: 36, heatwave: 41 }));
    expect(options.filter(({ added }) => added.to === null && added.isWorth)).toEqual([]);
    expect(sentence).toMatch(/too dark|no plant is harmed|not worth building|No cloth/);
  });

  // Nothing grows too hot in a mild month.
  test('tomatoes in a month of 24 °C: nothing to shade, nothing to buy', () => {
    const plan = yard([bed('tomato', undefined, 0.8)], { high: 24, heatwave: 28 });
    expect(sited(plan).options).toEqual([]);
    expect(cheaperHeadline(plan, cures(plan))).toBe('Nothing to shade: no plant is harmed. You may stop here.');
  });

  // Building practice: what a wall to the east leaves is afternoon sun, which comes from the south-west to the west.
  test('a hydrangea at the foot of a wall to its east: upright cloth stands on its other side', () => {
    const plan = yard([block('wall', 4, 0, 4.4, 6, 3), plant('hydrangea', { at: [3.4, 3.05] })]);
    const [screen] = valueOf(siteOf(plan, { ...SMALL, kinds: ['screen'] })).options;
    expect(screen.where).toMatch(/west of the .*hydrangea/);
    expect(screen.density).toBeLessThanOrEqual(0.7);
  });

  // Geometry: south of the tropics a house throws its noon shade to the south.
  test('south of the equator a pot is carried to the south side of the house', () => {
    const north = yard([block('house', 0, 2.4, 6, 3.6), plant('hydrangea', { container: true, at: [3, 5] })]);
    const plan: Plan = {
      ...north,
      site: { ...north.site, latitude: -34, longitude: 138.6, timeZone: 'Australia/Adelaide' },
      season: { ...north.season, from: '01-20', to: '01-21' },
      climate: { ...north.climate, months: north.climate.months.map((month) => ({ ...month, month: 1 })) },
    };
    const [move] = cures(plan);
    expect(move.moves?.[0].at[1]).toBeLessThan(2.4);
  });
});
