import { describe, expect, it } from 'vitest';
import type { Scorch } from '../../../../engine/load/leaf/scorch.ts';
import { leastLight, lightStanding } from '../../../../engine/load/light/light-class.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { PlantLoad } from '../../../../engine/load/types.ts';
import { isEstablished, limitOf } from '../../../../engine/load/verdict/limit.ts';
import { milderBy, verdictOf, worstOf } from '../../../../engine/load/verdict/verdict.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Feature, Plan, Plant, PlantRow } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const scorch = (changes: Partial<Scorch>): Scorch => ({
  dose: 0,
  thirsty: 40,
  watered: 38,
  warmest: -1,
  inHeat: 'fine',
  cooler: 'fine',
  hotter: 'fine',
  run: null,
  ...changes,
});
const row = (id: string): PlantRow => {
  const found = plantRowOf(yardPlan(), id);
  if (!found) throw new Error(id);
  return found;
};

describe('what the heatwave day says of one point', () => {
  it('the worst point is the gravest, then the one with the largest dose', () => {
    const points = [
      scorch({ dose: 9, inHeat: 'at risk' }),
      scorch({ dose: 4, inHeat: 'will burn' }),
      scorch({ dose: 5, inHeat: 'will burn' }),
    ];
    expect(worstOf(points)).toBe(2);
    expect(worstOf([scorch({}), scorch({})])).toBe(0);
  });
});

describe('verdicts', () => {
  it('stand one step milder where the row wants no shade, or shade for the young only and the plant is established', () => {
    expect(milderBy(row('olive'), false)).toBe('no shade needed');
    expect(milderBy(row('lemon'), true)).toBe('fine once established');
    expect(milderBy(row('lemon'), false)).toBeNull();
    expect(milderBy(row('tomato'), true)).toBeNull();
    expect(verdictOf('at risk', 'no shade needed', false)).toBe('no shade needed');
    expect(verdictOf('at risk', 'fine once established', false)).toBe('fine once established');
    expect(verdictOf('will burn', 'fine once established', false)).toBe('at risk');
    expect(verdictOf('fine', 'no shade needed', false)).toBe('fine');
  });

  it('a place too dark is told, but not before a sun that burns even the watered', () => {
    expect(verdictOf('fine', null, true)).toBe('too dark');
    expect(verdictOf('at risk', null, true)).toBe('too dark');
    expect(verdictOf('will burn', null, true)).toBe('will burn');
  });

  /** Classes of Torres & Lopez 2010, Purdue Extension HO-238-W (from memory), where a row names no least light. */
  it('daily light alone decides: enough from the least on, short from two thirds of it, too dark below', () => {
    expect(row('tomato').minDLI).toBe(20);
    expect([20, 19.9, 13.4, 13.3].map((light) => lightStanding(row('tomato'), light))).toEqual([
      'enough',
      'short',
      'short',
      'too dark',
    ]);
    expect(row('lemon')).toMatchObject({ minDLI: null, light: 'full sun' });
    expect([18, 17.9, 12, 11.9].map((light) => lightStanding(row('lemon'), light))).toEqual([
      'enough',
      'short',
      'short',
      'too dark',
    ]);
    const own = { ...row('lemon'), light: undefined };
    expect([6, 4, 2, 0].map((sun) => leastLight({ ...own, sunHours: [sun, 10] }))).toEqual([18, 12, 6, 3]);
  });
});

describe('the limit', () => {
  const plant: Plant = { id: 'p', kind: 'plant', at: [6, 4], height: 1, spread: 0.8, plant: 'lemon' };
  const limitOn = (heatDate: string, planted?: string, moved?: string) => {
    const plan = yardPlan([plant], {
      journal: moved === undefined ? [] : [{ date: moved, what: 'moved', feature: 'p' }],
    });
    return limitOf(plan, { ...plant, planted }, row('lemon'), heatDate);
  };

  it('is the row’s, and 2 K lower within two weeks of a planting or a move', () => {
    expect(limitOn('2026-06-21')).toMatchObject({ celsius: 44, unhardened: false });
    expect(limitOn('2026-06-21', '2026-06-07')).toMatchObject({ celsius: 42, unhardened: true });
    expect(limitOn('2026-06-21', '2026-06-06').unhardened).toBe(false);
    expect(limitOn('2026-06-21', '2026').unhardened).toBe(false);
    expect(limitOn('2026-06-21', '2019', '2026-06-15').unhardened).toBe(true);
    expect(limitOn('2026-06-21', '2019', '2026-06-22').unhardened).toBe(false);
  });

  it('a plant is established from its third summer on; without a date it is not', () => {
    const planted = (date?: string) => isEstablished(yardPlan(), { ...plant, planted: date });
    expect([planted('2023-05-01'), planted('2023'), planted('2024'), planted()]).toEqual([true, true, false, false]);
  });
});

describe('a plant judged', () => {
  const lemon: Plant = {
    id: 'lemon',
    kind: 'plant',
    name: 'Lemon pot',
    at: [6, 4],
    height: 1.5,
    spread: 1,
    plant: 'lemon',
    container: true,
  };
  const judge = (plan: Plan): PlantLoad => valueOf(plantLoadsOf(plan)).at(-1) as PlantLoad;

  it('in mild air is fine, and the sentence says how warm its leaves get', () => {
    const plan = yardPlan([lemon], {
      climate: { hotAir: 35, heatwaveHigh: 26, months: [{ month: 6, high: 24, low: 12, humidity: 50, wind: 3 }] },
    });
    const judged = judge(plan);
    expect(judged.verdict).toBe('fine');
    expect(judged.when).toBeNull();
    expect(judged.from).toBeNull();
    expect(judged.scorchDose).toBe(0);
    expect(judged.sentence).toMatch(
      /^Lemon pot: fine; a thirsty leaf about \d\d °C \(± [23]\) on the heatwave day, a watered one \d\d, limit 44\./,
    );
  });

  it('thirsty is warmer than watered, and the worst side is one of its nine', () => {
    const judged = judge(yardPlan([lemon]));
    expect(judged.leaf?.thirsty).toBeGreaterThan((judged.leaf?.watered ?? 99) + 3);
    expect(judged.sides?.map(({ side }) => side)).toContain(judged.from);
    expect(judged.peak).toBe(Math.max(...(judged.sides ?? []).map(({ peak }) => peak ?? 0)));
    expect(judged.scorchDose).toBeCloseTo(
      (judged.sides ?? []).reduce((sum, { scorchDose }) => sum + (scorchDose ?? 0), 0) / 9,
      9,
    );
  });

  it('behind a high wall to the east burns from noon on, on the side of the afternoon sun', () => {
    const wall = {
      id: 'east',
      kind: 'wall',
      path: [
        [6.8, -40],
        [6.8, 40],
      ],
      height: 5,
      thickness: 0.2,
    } as const;
    const humid = {
      ...yardPlan().climate,
      heatwaveHigh: 42,
      months: [{ month: 6, high: 40, low: 27, humidity: 70, wind: 1 }],
    };
    const judged = judge(yardPlan([wall, lemon], { climate: humid }));
    expect(judged.verdict).toBe('will burn');
    expect(judged.from).toBe('top');
    expect(judged.when?.from).toMatch(/^1[12]:/);
    expect(judged.sentence).toMatch(
      /^Lemon pot: will burn at its top and on its south-west side, 1[12]:\d\d to 1[89]:\d\d, the sun with nothing in its way; a thirsty leaf about 5\d °C/,
    );
    expect(judged.sentence).toContain('Use cloth that stops 30 to 50 %.');
  });

  describe('a plant that stands under cloth already', () => {
    // A cloth that hangs there is no news: what is told is what is to be changed.
    const roof = (density: number, height = 2.2, length = 4): Feature => ({
      id: 'roof',
      kind: 'canopy',
      name: 'Roof',
      center: lemon.at,
      length,
      width: length,
      height,
      density,
    });
    const hot = { ...yardPlan().climate, heatwaveHigh: 46 };
    const told = (feature: Feature, plant: Feature = lemon) =>
      judge(yardPlan([plant, feature], { climate: hot })).sentence;

    it('is told of thicker cloth where its own is thinner than suits it, and of none where it is not', () => {
      expect(told(roof(0.1, 2.2, 12))).toMatch(/(Use|hang) cloth that stops 30 to 50 % in place of 10 %\./);
      const thick = told(roof(0.5, 2.2, 12));
      expect(thick).not.toMatch(/cloth that stops/);
      expect(thick).toMatch(/soak it before a heatwave/);
    });

    it('is told of a drop or a screen where the sun comes in under it', () => {
      const west: Feature = {
        id: 'east',
        kind: 'wall',
        path: [
          [6.2, -40],
          [6.2, 40],
        ],
        height: 8,
        thickness: 0.2,
      };
      const sentence = judge(yardPlan([lemon, roof(0.9, 3.2, 1.6), west], { climate: hot })).sentence;
      expect(sentence).toMatch(/coming in under the roof/);
      expect(sentence).toMatch(/[Hh]ang a drop or a screen on that side\./);
    });
  });

  it('names no plant: numbers, no verdict, and what to do', () => {
    const { plant: _, ...unnamed } = lemon;
    const judged = judge(yardPlan([unnamed]));
    expect(judged).toMatchObject({ leaf: null, scorchDose: null, peak: null, verdict: null, when: null, from: null });
    expect(judged.sentence).toContain('Say which plant it is');
    expect(judged.sides).toHaveLength(9);
  });

  it('speaks imperial where that is asked', () => {
    const judged = valueOf(plantLoadsOf(yardPlan([lemon]), { units: 'imperial' }))[0];
    expect(judged.sentence).toMatch(/about 1\d\d °F \(± [3-5]\)/);
    expect(judged.sentence).toContain('limit 111');
  });
});

describe('the demo yards', () => {
  const verdicts = (name: 'courtyard' | 'lane') =>
    valueOf(plantLoadsOf(demoPlan(name), { period: { kind: 'heatwave' } }));

  it('courtyard: the lemon pot burns in the afternoon, and its sentence says so', () => {
    const lemon = verdicts('courtyard').find(({ id }) => id === 'lemon');
    expect(lemon?.verdict).toBe('will burn');
    expect(lemon?.when).toEqual({ from: '13:30', to: '20:40' });
  });

  it('lane: no sentence speaks of a south side by rote: the sun stands in the north', () => {
    for (const { sentence, sides } of verdicts('lane')) {
      expect(sentence).not.toMatch(/undefined|NaN|null/);
      const dose = (bearing: number) => sides?.find(({ side }) => side === bearing)?.scorchDose ?? 0;
      if (sides) expect(dose(0) + dose(315)).toBeGreaterThan(dose(180) + dose(135));
    }
  });
});
