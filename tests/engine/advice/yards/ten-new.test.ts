/** Yards of yet other kinds, the advice that each calls for written down before the program was asked about any. */

import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { adviceSentence } from '../../../../engine/advice/site/advice-words.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { nextStepOf } from '../../../../engine/advice/why/next-step.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { placeHeadline } from '../../../../engine/advice/words/cure-headlines.ts';
import { frostAdvice } from '../../../../engine/advice/year/frost/frost.ts';
import { tomorrowOf } from '../../../../engine/advice/year/tomorrow/tomorrow.ts';
import type { Forecast } from '../../../../engine/advice/year/tomorrow/types.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { Feature, ClimateMonth, Plan, Plant } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { sited } from './small-search.ts';
import { bed, plant, yard } from './table.ts';

const told = (plan: Plan, request: SiteRequest = {}): string =>
  adviceSentence(plan, sited(plan, request), valueOf(cheaperFirst(plan)).steps);
const next = (plan: Plan, id: string): string => valueOf(nextStepOf(plan, { plant: id, answer: 'explains' })).sentence;
const listed = (plan: Plan, forecast: Forecast): string =>
  valueOf(tomorrowOf(plan, forecast))
    .tasks.map(({ advice }) => advice.text)
    .join(' ');
const HOT = { date: '2026-06-21', high: 46, low: 29 } as const;

const roof = (density: number, more: Partial<Extract<Feature, { kind: 'canopy' }>> = {}): Feature => ({
  id: 'parasol',
  kind: 'canopy',
  name: 'Parasol',
  center: [3.1, 3.05],
  length: 5.8,
  width: 5.8,
  height: 2.3,
  density,
  ...more,
});

function at(plan: Plan, latitude: number, longitude: number, timeZone: string, months: readonly ClimateMonth[]): Plan {
  return {
    ...plan,
    site: { ...plan.site, latitude, longitude, timeZone },
    climate: { ...plan.climate, months },
  };
}

const year = (highs: readonly number[], lows: readonly number[]): ClimateMonth[] =>
  highs.map((high, k) => ({ month: k + 1, high, low: lows[k], humidity: 30, wind: 2, spread: 3.5 }));

describe('a terrace with a bought parasol', () => {
  // Common sense, no source: who has shade is told what is wrong with it. Under dense cloth in full sun overhead what
  // burns comes in from the side.
  test('where the sun comes in under it, load, why and the day’s list all speak of that side, none of a first cloth', () => {
    const small = roof(0.9, { length: 1.6, width: 1.6 });
    const plan = yard([small, plant('hydrangea', { name: 'Hydrangea', height: 0.9, spread: 0.7 })]);
    const [load] = valueOf(plantLoadsOf(plan));
    expect(load.cloth).toMatchObject({ how: 'under', id: 'parasol' });
    expect(load.sentence).toContain('Hang a drop or a screen on that side');
    expect(next(plan, 'hydrangea')).toContain('Then a drop or a screen on that side');
    const list = listed(plan, HOT);
    expect(list).toMatch(
      /Hang a cloth or a sheet on the [a-z-]+ side of the hydrangea where the sun comes in under the parasol; leave it so/,
    );
    for (const said of [next(plan, 'hydrangea'), list]) expect(said).not.toMatch(/cloth that stops|umbrella/);
  });

  test('under wide thin cloth it is thicker cloth, and for the one day a second one', () => {
    const plan = yard([roof(0.3), plant('hydrangea', { name: 'Hydrangea' })]);
    expect(next(plan, 'hydrangea')).toContain('cloth that stops 50 to 70 % in place of 30 %');
    expect(listed(plan, HOT)).toContain(
      'Hang a second cloth or a sheet over the hydrangea under the parasol, for that day alone',
    );
  });

  // What may be carried off itself is no mark to go by: common sense.
  test('places are told by the house and the parasol, not by other pots', () => {
    const pot = (id: string, where: readonly [number, number]): Plant =>
      plant('hydrangea', { id, name: id, container: true, height: 0.8, spread: 0.5, at: where });
    const house: Feature = {
      id: 'house',
      kind: 'building',
      height: 3,
      outline: [
        [0, 5],
        [6, 5],
        [6, 6],
        [0, 6],
      ],
    };
    const plan = yard([
      house,
      roof(0.8, { length: 2.5, width: 2.5, center: [4.2, 3] }),
      pot('one', [1, 1]),
      pot('two', [2, 1]),
    ]);
    const { spots } = valueOf(placeOf(plan, { plant: 'one', count: 2 }));
    for (const { where } of spots) expect(where).not.toContain('the two');
    expect(spots[0].where).toMatch(/^under the parasol /);
  });
});

describe('pots on a flat roof', () => {
  // Martin & Ingram (1993), from memory: roots first.
  test('beside a parapet that shades them roots are cooler, and what is told first is not hotter for a hair less burn', () => {
    const wall: Feature = {
      id: 'parapet',
      kind: 'wall',
      name: 'Parapet',
      path: [
        [0.1, 0],
        [0.1, 6],
      ],
      height: 1,
      thickness: 0.2,
      colour: 'white',
    };
    const pot = { width: 0.3, height: 0.3, colour: 'dark' } as const;
    const basil = plant('basil', { container: true, height: 0.6, spread: 0.4, pot, at: [3, 3] });
    const { spots } = valueOf(placeOf(yard([wall, basil], { high: 36, heatwave: 41 }), { plant: 'basil', count: 3 }));
    const today = spots.find(({ stay }) => stay)!.harm;
    const [best, ...others] = spots;
    expect(best.stay).toBe(false);
    for (const { harm, pot: there } of others)
      if (Math.abs(harm - best.harm) < 0.02 * today)
        expect(best.pot.roots.warmest).toBeLessThan(there.roots.warmest + 2);
  });

  // Common sense, no source: roots that die in both places send no leaves into more sun.
  test('a hydrangea under a parasol is not sent into the open sun because its pot dies there a little later', () => {
    const shade = roof(0.9, { length: 2.7, width: 2.7, height: 2.3 });
    const pot = plant('hydrangea', {
      container: true,
      height: 1,
      spread: 0.8,
      pot: { width: 0.4, height: 0.4, colour: 'light' },
    });
    const paved = yard([shade, pot], { high: 36, heatwave: 45 });
    const { spots } = valueOf(
      placeOf({ ...paved, site: { ...paved.site, surface: 'paving' } }, { plant: 'hydrangea', count: 2 }),
    );
    const stay = spots.find((spot) => spot.stay)!;
    expect(spots[0].harm).toBeLessThanOrEqual(stay.harm);
    for (const { rank, harm } of spots) if (rank < stay.rank) expect(harm).toBeLessThan(1.05 * stay.harm);
  });

  // Common sense, no source: a neighbour carries nothing for next to nothing.
  test('in an open yard where every place is alike a pot is left where it stands', () => {
    const plan = yard([plant('lemon', { name: 'Lemon', container: true, planted: '2026' })]);
    const places = valueOf(placeOf(plan, { plant: 'lemon', count: 1 }));
    expect(placeHeadline(plan, places, 'metric')).toMatch(/^Leave the lemon where it stands/);
    expect(next(plan, 'lemon')).toMatch(/^No place on your ground is worth carrying it to\. Mulch/);
    expect(told(plan)).not.toMatch(/^Move/);
  });
});

describe('where only fruit burns', () => {
  // The published line for fruit knows no water (Schrader, Zhang & Sun 2003).
  test('a purse of 40 builds no frame: it says so with the sum, and what can be hung without one', () => {
    const plan = yard([bed('pepper'), plant('grape', { at: [5, 5] })]);
    const { options, sentence } = sited(plan, { budget: 40 });
    expect(options).toEqual([]);
    expect(sentence).toMatch(
      /^No cloth that may stand here on a frame of its own is to be had for 40 [A-Z]{3}: on the hottest days/,
    );
  });

  // 60° N, 32 °C: a fruit's skin hardly over its limit.
  test('a blueberry that may just burn: nothing to build, and nobody is told that water does it', () => {
    const plan = at(
      yard([plant('blueberry', { name: 'Blueberry' })], { high: 22, heatwave: 32 }),
      60.2,
      24.9,
      'Europe/Helsinki',
      [{ month: 6, high: 22, low: 12, humidity: 60, wind: 3, spread: 3 }],
    );
    const found = sited(plan);
    for (const { added } of found.options) expect(added.isWorth).toBe(false);
    expect(told(plan)).not.toMatch(/water do here|Mulch and water first/);
  });
});

describe('lettuce', () => {
  // Vegetable calendars of UC Cooperative Extension, from memory; at 31 °C a watered leaf stays 5 °C below its limit.
  test('in May: mulch and water before any roof, for they are enough', () => {
    const plan = yard([bed('lettuce', 2.2, 0.25)], { high: 24, heatwave: 33 });
    expect(valueOf(plantLoadsOf(plan))[0].verdict).toBe('at risk');
    expect(told(plan)).toMatch(
      /^Mulch and water first: free, and enough for the bed lettuce-bed as long as it never thirsts\./,
    );
  });
});

describe('near the equator', () => {
  const highs = [31, 33, 37, 40, 42, 41, 38, 37, 39, 39, 35, 32];
  const lows = [16, 17, 21, 24, 27, 27, 26, 25, 26, 26, 21, 17];

  // Normals of such places: nights of 16 °C in the coldest month.
  test('nobody is asked for frost dates where there is no frost, and is where the nights are not known', () => {
    const plan = at(yard([bed('chile')]), 15.6, 32.5, 'Africa/Khartoum', year(highs, lows));
    const [said] = valueOf(frostAdvice(plan)).advice;
    expect(said.text).toBe('No frost is to be expected: even in the coldest month nights fall to about 16 °C only.');
    const some = at(plan, 15.6, 32.5, 'Africa/Khartoum', year(highs, lows).slice(3, 8));
    expect(valueOf(frostAdvice(some)).advice[0].text).toMatch(/^The plan does not say when frost comes/);
  });

  // English grammar.
  test('chillies and basil pots are many, in every sentence of load, why, place and the day’s list', () => {
    const pots = plant('basil', {
      id: 'pots',
      name: 'Basil pots',
      container: true,
      height: 0.6,
      spread: 0.4,
      at: [5, 1],
    });
    const chillies: Feature = { ...bed('chile', 1, 0.6), id: 'chillies', name: 'Chillies' } as Feature;
    const plan = at(yard([chillies, pots]), 15.6, 32.5, 'Africa/Khartoum', year(highs, lows));
    const places = valueOf(placeOf(plan, { plant: 'pots', count: 1 }));
    const said = [
      ...valueOf(plantLoadsOf(plan)).map(({ sentence }) => sentence),
      next(plan, 'pots'),
      next(plan, 'chillies'),
      placeHeadline(plan, places, 'metric'),
      ...places.spots.map(({ sentence }) => sentence),
      ...valueOf(whyBurnt(plan, { plant: 'pots', side: 0, date: '2026-06-20' })).rivals.map(({ question }) => question),
      listed(plan, { date: '2026-06-21', high: 45, low: 30 }),
    ].join(' ');
    expect(
      /\bits (?!way)|\bit (uses|gets|needs|stands|stood|likes)\b|\b(soak|water|watch|over|was|did) it\b/i.exec(said),
    ).toBeNull();
    expect(said).toMatch(/\b(their|them)\b/);
    expect(placeOf(plan, { plant: 'chillies' })).toMatchObject({
      problems: [{ message: 'Chillies do not stand in a pot, so there is no other place for them.' }],
    });
  });
});

describe('a plant among others', () => {
  // Geometry: nothing shines over itself.
  test('no plant is told that the sun comes over itself', () => {
    const geraniums = plant('geranium', { name: 'Geraniums', height: 0.7, spread: 0.5 });
    for (const { sentence } of valueOf(plantLoadsOf(yard([geraniums]))))
      expect(sentence).not.toMatch(/the sun coming (over|past) the geraniums/);
  });

  // Common nouns in the possessive take an article; a person's name does not.
  test('the neighbour’s tree is the neighbour’s, Ana’s is Ana’s', () => {
    const tree = (name: string): Feature => ({
      id: 'tree',
      kind: 'tree',
      name,
      at: [1.2, 3],
      height: 5,
      crownWidth: 2,
      crownBase: 1,
      openness: 0.2,
    });
    const said = (name: string) =>
      valueOf(
        placeOf(yard([tree(name), plant('fern', { container: true, height: 0.5, spread: 0.4 })]), {
          plant: 'fern',
          count: 1,
        }),
      ).spots[0].where;
    expect(said('Neighbour’s gum')).toMatch(/of the neighbour’s gum$/);
    expect(said('Ana’s gum')).toMatch(/of Ana’s gum$/);
  });
});

// What the plan itself calls a heatwave is no slip of the pen, nor is a low that nobody typed.
test('a day as hot as the plan’s own heatwave is not asked back', () => {
  const plan = yard([bed('tomato', 2.2, 0.8)], { high: 31, heatwave: 43 });
  const asked = (high: number, low?: number) => valueOf(tomorrowOf(plan, { date: '2026-06-20', high, low })).asked;
  expect(asked(43)).toBeNull();
  expect(asked(47)).toMatch(/Is the high of 47 °C right\?/);
  expect(asked(31, 2)).toMatch(/Is the low of 2 °C right\?/);
});
