/** Ten yards of kinds not tried before, the advice that each calls for written down before the program was asked. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import type { LadderStep } from '../../../../engine/advice/cheaper-first/step.ts';
import { adviceSentence, pricedWords } from '../../../../engine/advice/site/advice-words.ts';
import type { SiteResult } from '../../../../engine/advice/site/types.ts';
import { nextStepOf } from '../../../../engine/advice/why/next-step.ts';
import { heatHeadline } from '../../../../engine/advice/words/yard-headlines.ts';
import { tomorrowOf } from '../../../../engine/advice/year/tomorrow/tomorrow.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { Feature, Plan, PlanPoint, Plant, Wall } from '../../../../engine/plan/types.ts';
import { wall } from '../../../parts/drawn.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { sited } from './small-search.ts';
import { bed, plant, yard } from './table.ts';

const cures = (plan: Plan): readonly LadderStep[] => valueOf(cheaperFirst(plan)).steps;
const loads = (plan: Plan) => valueOf(plantLoadsOf(plan, { period: { kind: 'heatwave' } }));
const on = (plan: Plan, site: Partial<Plan['site']>): Plan => ({ ...plan, site: { ...plan.site, ...site } });

const tall = (id: string, path: readonly PlanPoint[], more: Partial<Wall> = {}): Feature =>
  wall(id, path, { height: 3, ...more });
const pot = (kind: string, colour: 'dark' | 'white', more: Partial<Plant> = {}): Plant =>
  plant(kind, { height: 0.9, spread: 0.5, container: true, pot: { width: 0.3, height: 0.3, colour }, ...more });

describe('ten yards of other kinds', () => {
  // Whoever builds: nobody pushes a rod into tiles. UC IPM on sunburn, from memory: fruit is not cooled by water.
  test('chillies in a black pot on a tiled balcony: priced for paving, the pot wrapped, no share for water', () => {
    const plan = on(
      yard([
        tall(
          'parapet',
          [
            [0.1, 3],
            [0.1, 0.1],
            [5.9, 0.1],
            [5.9, 3],
          ],
          { height: 1 },
        ),
        pot('chile', 'dark', { at: [3, 1.6], move: 'never' }),
      ]),
      { surface: 'paving' },
    );
    const found = sited(plan);
    expect(found.pricedFor.ground).toBe('paving');
    expect(pricedWords(found, 'metric').ground).not.toMatch(/rod/);
    const steps = cures(plan);
    expect(steps.map(({ id }) => id)).toContain('wrap');
    expect(steps.find(({ id }) => id === 'water')).toMatchObject({ sparedShare: null });
  });

  // UC IPM on sunburn of apples, from memory; Schrader, Zhang & Duplaga (2001): nets of 20 to 30 %.
  test('an apple trained on a white wall: its leaves stay, thin cloth, and no water for the fruit', () => {
    const plan = yard([
      tall(
        'white',
        [
          [0, 4],
          [6, 4],
        ],
        { colour: 'white' },
      ),
      plant('apple', { at: [3, 3.4], height: 2, spread: 0.9, foliageFrom: 0.5, planted: '2017' }),
    ]);
    const step = valueOf(nextStepOf(plan, { plant: 'apple', answer: 'explains' }));
    expect(step.do).toBe('leaves');
    expect(step.sentence).toMatch(/^Leave every leaf .*water does not cool fruit\. Then cloth that stops 20 to 30 %/);
    for (const { density } of sited(plan).options) expect(density).toBeLessThanOrEqual(0.3);
  });

  // Vegetable calendars of UC Cooperative Extension, from memory; Morris (extension, Mojave): tomatoes 30 to 40 %.
  test('an allotment of lettuce and tomatoes side by side: the lettuce may wait for the cool months', () => {
    const plan = yard([bed('lettuce', 1.4), bed('tomato', 3, 1)], { high: 36, heatwave: 43 });
    const water = cures(plan).find(({ id }) => id === 'water');
    expect(water?.sentence).toMatch(/Before you buy cloth for the .*lettuce.*: sow it for the cool months/);
    expect(water?.sentence).not.toMatch(/tomato/);
    for (const { density, plants } of sited(plan).options) {
      const tomato = plants.find(({ id }) => id === 'tomato-bed')!;
      if (tomato.after.topLight < 0.9 * tomato.before.topLight) expect(density).toBeLessThanOrEqual(0.4);
    }
  });

  // Building practice: cloth from a wall that bears it wants two posts fewer; who may fix it is licensed.
  test('a court whose walls may hold cloth: one answer hangs from a wall, and costs less than four posts', () => {
    const walls = (holdsCloth: boolean): Feature[] => [
      tall(
        'north',
        [
          [0, 5.9],
          [6, 5.9],
        ],
        { height: 3.5, holdsCloth },
      ),
      plant('rose', { at: [3, 4.8], height: 1.2, spread: 0.9 }),
    ];
    const kinds = { kinds: ['roof'], heights: [2.1] } as const;
    const [free, held] = [false, true].map((holds) => sited(yard(walls(holds)), kinds));
    const hangs = ({ options }: SiteResult): boolean =>
      options.some(({ features }) => features.some((cloth) => cloth.kind === 'canopy' && cloth.onWall === true));
    expect(hangs(free)).toBe(false);
    expect(hangs(held)).toBe(true);
    const cheapest = ({ options }: SiteResult) => Math.min(...options.map(({ cost }) => cost ?? Infinity));
    expect(cheapest(held)).toBeLessThan(cheapest(free));
  });

  // Nothing burns in the shade of a birch at 32 °C; a black pot's roots are another matter (Martin & Ingram 1993).
  test('ferns, and a hydrangea, under a birch far north: nothing to build, but the black pot wants white', () => {
    const birch: Feature = {
      id: 'birch',
      kind: 'tree',
      at: [3, 3],
      height: 8,
      crownWidth: 4,
      crownBase: 2.2,
      openness: 0.25,
    };
    const tomato = pot('tomato', 'dark', { at: [5.5, 0.6], move: 'never' });
    const shady = [birch, plant('fern', { at: [3, 4.2], height: 0.7 })];
    const north = (...features: Feature[]): Plan =>
      on(yard(features, { high: 23, heatwave: 31 }), { latitude: 59.3, longitude: 18.1, timeZone: 'Europe/Stockholm' });
    const plan = north(...shady, tomato);
    const found = sited(plan);
    expect(found.options).toEqual([]);
    expect(heatHeadline(plan, loads(plan), null)).toMatch(/^No leaf burns here, but roots/);
    expect(adviceSentence(plan, found, cures(plan))).toMatch(/Wrap the pot/);
    expect(heatHeadline(plan, loads(north(...shady)), null)).toMatch(/harms no plant/);
    // A hydrangea in a gap of the crown is a close call that water decides: that nothing is worth building comes first.
    const close = sited(north(...shady, plant('hydrangea', { at: [3.6, 3.4] })));
    expect(close.sentence).toMatch(/^Cloth is not worth building: mulch and water do here\./);
    for (const { added } of close.options) expect(added.isWorth).toBe(false);
  });

  // Desert extension practice, from memory: agaves burn in the summer after planting and not later.
  test('an agave set out this year wants thin cloth for its first summers, one of 2010 wants none', () => {
    const alone = (planted: string) => sited(yard([plant('agave', { height: 0.7, spread: 0.9, planted })]));
    expect(alone('2010').options).toEqual([]);
    for (const { density } of alone('2026').options) expect(density).toBeLessThanOrEqual(0.4);
    expect(alone('2010').sentence).toMatch(/no shade|no plant is harmed/);
  });

  // Common sense: who has hung cloth is told what is wrong with it, not to hang cloth.
  test('a hydrangea under a thin wide roof: thicker cloth in its place', () => {
    const thin: Feature = {
      id: 'roof',
      kind: 'canopy',
      center: [3.1, 3.05],
      length: 6,
      width: 6,
      height: 2.2,
      density: 0.3,
    };
    const [load] = loads(yard([plant('hydrangea'), thin]));
    expect(load.sentence).toMatch(/cloth that stops 50 to 70 % in place of 30 %/);
  });

  // Common practice, no source: okra and cowpeas are grown in full sun through desert summers.
  test('lettuce between okra and cowpeas: cloth for the lettuce alone, and nobody else is spoken of as harmed', () => {
    const plan = yard([bed('okra', 0.3, 1.2), bed('lettuce', 2.2), bed('cowpea', 4.2, 0.5)]);
    const { served, uncounted, options } = sited(plan);
    expect(options.length).toBeGreaterThan(0);
    expect(served).toEqual(['lettuce-bed']);
    expect(uncounted.map(({ id }) => id).toSorted()).toEqual(['cowpea-bed', 'okra-bed']);
  });

  // Martin & Ingram (1993), from memory: a pot's colour decides how hot its sunny wall gets.
  test('two pots of rosemary, one black and one white: the black one is wrapped first', () => {
    const plan = yard([
      pot('rosemary', 'dark', { id: 'black', at: [1.5, 3], move: 'never' }),
      pot('rosemary', 'white', { id: 'white', at: [4.5, 3], move: 'never' }),
    ]);
    const wrap = cures(plan).find(({ id }) => id === 'wrap');
    expect(wrap?.roots?.[0].plant).toBe('black');
    const white = wrap?.roots?.find((each) => each.plant === 'white');
    expect(white?.warmest ?? 0).toBeLessThan((wrap?.roots?.[0].warmest ?? 0) - 3);
    expect(white?.helps.some(({ id, cooler }) => id === 'white' && cooler >= 1) ?? false).toBe(false);
  });

  // NOAA heat safety and common practice: on a day that begins hot there is no cool hour to work in.
  test('a day that begins at 32 °C in feet and Fahrenheit: the evening before, short spells, no metric word', () => {
    const plan: Plan = { ...yard([bed('tomato', 2.2, 1), bed('lettuce', 4)]), units: 'imperial' };
    const day = valueOf(tomorrowOf(plan, { date: '2026-06-21', high: 46, low: 32 }));
    const said = day.tasks.map(({ advice }) => advice.text).join(' ');
    expect(said).toMatch(/a few minutes at a time/);
    expect(said).not.toMatch(/Be out of the garden by now/);
    expect(said).not.toMatch(/°C|\d m\b|\d L\b/);
    expect(day.tasks.filter(({ at }) => at === 'the evening before').length).toBeGreaterThan(0);
  });
});
