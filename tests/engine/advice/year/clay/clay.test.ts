import { describe, expect, test } from 'vitest';
import { isInFlower } from '../../../../../engine/advice/year/clay/bloom.ts';
import { clayCooling } from '../../../../../engine/advice/year/clay/clay.ts';
import { noClayBecause } from '../../../../../engine/advice/year/clay/who-may-be-sprayed.ts';
import { seasonOf } from '../../../../../engine/advice/year/season/season.ts';
import { CATALOGUE } from '../../../../../engine/plan/catalogue/plants.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Feature, JournalEntry, Plan, Plant } from '../../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../../parts/outcome.ts';

const rowOf = (id: string) => CATALOGUE.find((row) => row.id === id)!;
const moment = {
  air: 42,
  airMax: 42,
  vapour: 0.985,
  pressure: 101.3,
  wind: 0.3,
  beam: 900,
  diffuse: 110,
  sinAltitude: Math.sin(Math.PI / 3),
  hour: { first: 0, beam: 0, diffuse: 0, openMost: 0 },
};

function clayFor(
  plants: readonly string[],
  journal: readonly JournalEntry[] = [],
  more: readonly Feature[] = [],
  chosen = true,
) {
  const demo = demoPlan('courtyard');
  const features = plants.map((plant, k): Plant => ({
    id: plant,
    kind: 'plant',
    at: [2 + 1.5 * k, 3],
    height: 0.9,
    spread: 0.7,
    plant,
  }));
  const plan: Plan = { ...demo, journal, options: [], features: [...features, ...more], clay: chosen };
  const season = seasonOf(plan);
  mustBeOk(season);
  return season.value.clay;
}

describe('clay', () => {
  test(
    'a film that takes the absorptance from 0.50 to 0.40 cools a hot leaf by 1.9 K with open and 2.6 K with ' +
      'closed stomata (worked leaf cases)',
    () => {
      const { watered, thirsty } = clayCooling([moment], rowOf('lemon'));
      // The cases have 0.10 and 0.005 mol m⁻² s⁻¹, ours 0.25 and 0.02: so a little less, in the same order.
      expect(watered).toBeGreaterThan(1);
      expect(watered).toBeLessThan(1.9);
      expect(thirsty).toBeGreaterThan(2);
      expect(thirsty).toBeLessThan(2.7);
      expect(thirsty).toBeGreaterThan(watered);
    },
  );

  const clay = clayFor(['lemon', 'lettuce', 'basil', 'raspberry', 'olive']);

  test('leaves that are eaten are not sprayed, plants not at risk are left alone, fuzzy fruit stops before picking', () => {
    expect(clay.skipped.map(({ plant }) => plant)).toEqual(['lettuce', 'basil']);
    expect(clay.plants.map(({ plant }) => plant)).not.toContain('olive');
    expect(clay.plants.find(({ plant }) => plant === 'raspberry')?.fuzzyFruit).toBe(true);
    expect(clay.advice.some(({ text }) => text.includes('stop 2 to 3 weeks before picking'))).toBe(true);
  });

  test('orchard strength to the gram: 60 g/L first, half of it after (50, then 25 lb in 100 gallons: Rutgers 2012)', () => {
    const [lemon] = clay.plants;
    expect(lemon.firstGrams / lemon.litres).toBeCloseTo((50 * 453.592) / 378.5, 0);
    expect(lemon.nextGrams).toBeCloseTo(lemon.firstGrams / 2, 9);
  });

  test('nothing is dated before somebody chooses it', () => {
    const unasked = clayFor(['lemon'], [], [], false);
    expect([unasked.isChosen, unasked.coats, unasked.plants]).toEqual([false, [], []]);
    expect(unasked.advice[0].text).toContain('only if you choose it');
  });

  test('each plant has two coats a few days apart, by its first harmful week, and none in a spring of 26 °C', () => {
    for (const { coats, until, plant, waitsForFlowers } of clay.plants) {
      expect(Date.parse(coats[1]) - Date.parse(coats[0]), plant).toBe(4 * 86_400_000);
      // May’s highs are 26 °C here: the film would be worn off before anything can burn.
      expect(coats[0] >= '2026-05-20', plant).toBe(true);
      expect(coats[1] < (waitsForFlowers ? '2026-07-10' : '2026-07-01'), plant).toBe(true);
      expect(until > '2026-08-21', plant).toBe(true);
    }
    expect(clay.coats.length).toBeLessThanOrEqual(4);
  });

  test('it says to read the label, and to look before any further coat', () => {
    const told = clay.advice.map(({ text }) => text).join(' ');
    expect(told).toMatch(/Read the label first: how many coats a year it allows/);
    expect(told).toMatch(/look at it every 2 to 3 weeks, and spray only where it has thinned/);
  });

  test('never in the months of a plant’s flowers: lemons flower to May, raspberries to June, hydrangeas all summer', () => {
    for (const { plant, coats } of clay.plants)
      for (const date of coats)
        expect(isInFlower(rowOf(plant), Number(date.slice(5, 7)), 38), `${plant} on ${date}`).toBe(false);
    expect(clayFor(['hydrangea']).skipped[0]?.why).toMatch(/in flower all summer/);
    // Half a year on in the south.
    expect([isInFlower(rowOf('lemon'), 4, -34), isInFlower(rowOf('lemon'), 10, -34)]).toEqual([false, true]);
  });

  test('not where light is short, nor under cloth', () => {
    const high = (id: string, density: number): Feature => ({
      id,
      kind: 'canopy',
      center: [2, 3],
      length: 6,
      width: 6,
      height: 2.2,
      density,
    });
    expect(clayFor(['lemon'], [], [high('thin', 0.2)]).skipped[0]?.why).toMatch(/under cloth/);
    const row = rowOf('lemon');
    const at = { standing: 'short', isUnderCloth: false, flowersAllSummer: false } as const;
    expect(noClayBecause(row, at)).toMatch(/too little light/);
    expect(noClayBecause(row, { ...at, standing: 'enough' })).toBeNull();
  });

  test('rain after the last coat washes it off; a drizzle, or rain before it, does not', () => {
    const spray: JournalEntry = { date: '2026-07-03', what: 'spray' };
    const rain = (date: string, amount: number): JournalEntry => ({ date, what: 'rain', amount });
    expect(clayFor(['lemon'], [spray, rain('2026-07-08', 14)]).washedOff).toEqual({
      sprayed: '2026-07-03',
      rain: '2026-07-08',
      amount: 14,
    });
    expect(clayFor(['lemon'], [spray, rain('2026-07-08', 3), rain('2026-07-01', 40)]).washedOff).toBeNull();
  });
});
