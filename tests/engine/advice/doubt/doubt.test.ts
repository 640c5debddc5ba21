import { describe, expect, test } from 'vitest';
import { doubtOf } from '../../../../engine/advice/doubt/doubt.ts';
import { createRayYard } from '../../../../engine/advice/doubt/rays.ts';
import type { DoubtResult } from '../../../../engine/advice/doubt/types.ts';
import { clothInput } from '../../../../engine/advice/doubt/unsaid.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import * as planted from '../planted.ts';
import { TOMATO } from '../planted.ts';

const LEMON: Feature = { ...planted.LEMON, container: true, worth: 3 };
/** West of the lemon, so near that its height decides over the afternoon; the far one decides over nothing. */
const NEAR: Feature = {
  id: 'near',
  kind: 'wall',
  name: 'Near wall',
  path: [
    [4.9, 2.5],
    [4.9, 5.5],
  ],
  height: 2.1,
  thickness: 0.2,
  colour: 'light',
  how: { height: { by: 'guess', pm: 0.7 } },
};
const FAR: Feature = {
  id: 'far',
  kind: 'wall',
  name: 'Far wall',
  path: [
    [0.2, 0.5],
    [0.2, 1.5],
  ],
  height: 0.6,
  thickness: 0.2,
  colour: 'light',
  how: { height: { by: 'paced', pm: 0.1 } },
};
const ROOF: Feature = {
  id: 'roof',
  kind: 'canopy',
  center: [6.2, 4.1],
  length: 3.1,
  width: 2.7,
  height: 2.3,
  density: 0.5,
  how: { density: { by: 'guess', pm: 0.15 } },
};
/** What shelters it and how bright its walls are is said. */
const YARD = yardPlan([NEAR, FAR, LEMON, TOMATO], { site: { ...yardPlan().site, shelter: 'open' } });
const TAPED: Plan = { ...YARD, features: YARD.features.map((feature) => ({ ...feature, how: undefined })) };

const doubted = (plan: Plan): DoubtResult => valueOf(doubtOf(plan));
const bar = ({ inputs }: DoubtResult, key: string) => inputs.find((each) => each.key === key)!;

describe('what hangs on which number', () => {
  const result = doubted(YARD);

  test('with everything taped only climate, shelter and limits are in doubt, and there is nothing to measure', () => {
    const taped = doubted(TAPED);
    expect(taped.inputs.map(({ key }) => key).toSorted()).toEqual(['climate.heatwaveHigh', 'limits', 'site.shelter']);
    expect(taped.measureNext).toBeNull();
    expect(taped.sentence).toMatch(
      /^Every number of the yard is measured; the (plants’ heat limits|heatwave’s high|shelter from the wind) \(± ([\d.]+ °C|one class)\) weighs? more/,
    );
  });

  test('a bar is Σ worth × |change of harm| at the worse of its two ends', () => {
    const harmWith = (height: number) =>
      valueOf(
        harmOf({
          ...YARD,
          features: YARD.features.map((each) => (each.id === 'near' ? { ...each, height } : each)) as Feature[],
        }),
      );
    const [as, up, down] = [harmWith(2.1), harmWith(2.8), harmWith(1.4)];
    const change = (harms: typeof as) =>
      harms.reduce((sum, { worth, harm }, k) => sum + worth * Math.abs(harm - as[k].harm), 0);
    const { moves } = bar(result, 'near.height');
    expect(moves).toBeGreaterThan(1);
    expect(Math.abs(moves - Math.max(change(up), change(down)))).toBeLessThan(0.02 * moves);
  });

  test('bars that turn most verdicts come first, of equals the longest; a wall that shades no plant moves nothing', () => {
    const rank = result.inputs.map(({ verdicts, moves }) => 1e6 * verdicts.length + moves);
    expect(rank).toEqual(rank.toSorted((a, b) => b - a));
    expect(bar(result, 'far.height').moves).toBe(0);
  });

  test('the next thing to measure is the longest that a tape can reach; what weighs more is said', () => {
    expect(result.measureNext).toBe('near.height');
    // Whoever is told to measure wants to know what for: this one turns no verdict.
    expect(bar(result, 'near.height').advice).toBe('');
    expect(result.sentence).toContain(
      'No measurement in the yard would change a verdict: what moves its heat ' +
        'damage most, the height of the near ' +
        'wall (guessed, ± 0.70 m; a tape',
    );
    const rest = Math.max(...result.inputs.filter(({ measurable }) => !measurable).map(({ moves }) => moves));
    expect(result.sentence.includes('no tape betters that')).toBe(rest > bar(result, 'near.height').moves);
  });

  test('where even that moves next to nothing, the yard is said to be measured well enough', () => {
    const how = { height: { by: 'tape', pm: 0.03 } } as const;
    const nearly = doubted({
      ...YARD,
      features: YARD.features.map((each) => (each.id === 'near' ? { ...NEAR, how } : each)) as Feature[],
    });
    expect(nearly.measureNext).toBe('near.height');
    expect(nearly.sentence).toMatch(
      /^The yard is measured well enough: what moves its heat damage most, .* by (under 1|1) % at most/,
    );
  });

  test('a height that decides what the roof spares stands above one that only moves harm, and says how', () => {
    const tall: Feature = { ...NEAR, height: 2.3, how: { height: { by: 'guess', pm: 1.5 } } };
    const pot = { ...LEMON, how: { height: { by: 'guess', pm: 0.05 } } } as Feature;
    const plan: Plan = {
      ...YARD,
      features: [tall, pot],
      options: [{ id: 'R', name: 'A roof', adds: [{ ...ROOF, how: undefined, measuredDensity: 0.5 }] }],
    };
    const { inputs, measureNext } = doubted(plan);
    const fence = inputs.find(({ key }) => key === 'near.height')!;
    expect(fence.effect).toMatchObject({ option: 'R' });
    const { from, to, shift } = fence.effect!;
    // What the yard drawn so would spare, by the search of doubt's own means.
    const drawn = (height: number, option: string | null) => {
      const features = [{ ...tall, height }, pot, ...(option === null ? [] : (plan.options![0].adds ?? []))];
      return valueOf(createRayYard({ ...plan, features, options: [] })).base[0].harm;
    };
    const sparesAt = (height: number) => 1 - drawn(height, 'R') / drawn(height, null);
    expect(from).toBeCloseTo(sparesAt(2.3), 3);
    expect(to).toBeCloseTo(sparesAt(shift === 0 ? 3.8 : 0.8), 2);
    expect(fence.advice === '' || fence.verdicts.length > 0 || fence.advice.includes('% off the heat damage')).toBe(
      true,
    );
    expect(inputs.findIndex(({ key }) => key === 'lemon.height')).toBeGreaterThan(inputs.indexOf(fence));
    expect(measureNext).toBe('near.height');
  });

  test('a shelter that nobody said, or a wall’s colour, is found out by looking; a step of it moves harm', () => {
    const { shelter: _, ...site } = YARD.site;
    const colourless = YARD.features.map((each) => ({ ...each, colour: undefined }) as Feature);
    const guessed = doubted({ ...YARD, site, features: colourless });
    expect(bar(guessed, 'site.shelter')).toMatchObject({ by: 'guess', measurable: true, pmText: 'one class' });
    expect(bar(guessed, 'site.shelter').moves).toBeGreaterThan(1);
    expect(bar(guessed, 'near.colour')).toMatchObject({ kind: 'colour', measurable: true, pmText: 'one shade' });
    expect(bar(guessed, 'near.colour').moves).toBeGreaterThan(0);
    expect(guessed.inputs.some(({ key }) => key === 'far.colour')).toBe(false);
    expect(bar(result, 'site.shelter')).toMatchObject({ by: null, measurable: false });
    expect(result.inputs.some(({ key }) => key === 'near.colour')).toBe(false);
  });

  test('cloth may stop 8 points more or less than it is sold as, drops too, until it is measured', () => {
    const sold: Feature = { ...ROOF, how: undefined, drops: [{ side: 'left', depth: 1, density: 0.5 }] } as Feature;
    const [input] = clothInput(YARD, sold);
    expect(input).toMatchObject({ key: 'roof.density', by: 'catalogue', pm: 0.08 });
    const under = clothInput({ ...YARD, features: [sold] }, sold)[0].shifts.map(({ features: [roof] }) => roof);
    expect(under).toMatchObject([0.58, 0.42].map((density) => ({ density, drops: [{ density }] })));
    expect(clothInput(YARD, { ...sold, measuredDensity: 0.47 } as Feature)).toEqual([]);
    expect(clothInput(YARD, ROOF)).toEqual([]);
    expect(bar(doubted({ ...YARD, features: [...YARD.features, sold] }), 'roof.density').moves).toBeGreaterThan(0.1);
  });

  test('more worth makes the same bar longer; a wider ± never a shorter one', () => {
    const with_ = (change: (feature: Feature) => Feature) => doubted({ ...YARD, features: YARD.features.map(change) });
    const worthy = with_((each) => (each.id === 'lemon' ? { ...LEMON, worth: 6 } : each) as Feature);
    const wide = with_(
      (each) => (each.id === 'near' ? { ...NEAR, how: { height: { by: 'guess', pm: 1 } } } : each) as Feature,
    );
    expect(bar(worthy, 'near.height').moves).toBeGreaterThan(bar(result, 'near.height').moves);
    expect(bar(wide, 'near.height').moves).toBeGreaterThanOrEqual(bar(result, 'near.height').moves);
  });

  test('every plant says that its verdict stays, or what it may become and by which number', () => {
    for (const { may, verdict, sentence, name } of result.plants) {
      expect(sentence).toMatch(new RegExp(`^${name}: ${verdict}(, whichever number is off|; may become )`));
      for (const { verdict: other, inputs } of may) {
        expect(other).not.toBe(verdict);
        for (const key of inputs)
          expect(bar(result, key).verdicts.some(({ may: verdicts }) => verdicts.includes(other))).toBe(true);
      }
    }
    expect(result.plants.some(({ may }) => may.length > 0)).toBe(true);
  });

  test('inputs of an option’s own cloth count, and the order of the options is told', () => {
    const tried = doubted({
      ...YARD,
      options: [
        { id: 'R', name: 'A roof', adds: [ROOF] },
        { id: 'S', name: 'A thinner roof', adds: [{ ...ROOF, density: 0.45 } as Feature] },
      ],
    });
    expect(tried.order).toEqual(['R', 'S', 'today']);
    expect(bar(tried, 'roof.density')).toMatchObject({ kind: 'thickness of shade', moves: 0, pmText: '15 %' });
    expect(tried.notes.at(-1)).toMatch(/^Not asked: whether a search would find another best place/);
    expect(tried.notes.at(-2)).toContain('Least heat damage first: R (A roof), S (A thinner roof), today');
  });

  test('the courtyard: its guessed heights and its compass are in the list, limits outweigh them', () => {
    const courtyard = doubted(demoPlan('courtyard'));
    expect(courtyard.inputs.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['site.upBearing', 'house.height', 'east-house.height', 'orange.openness']),
    );
    expect(courtyard.inputs[0].key).toBe('limits');
    expect(courtyard.measureNext).not.toBeNull();
    expect(bar(courtyard, courtyard.measureNext ?? '').advice).not.toBe('');
    expect(courtyard.sentence).toMatch(/^Measure next /);
    expect(courtyard.sentence).not.toMatch(/undefined|NaN|south side/);
  });

  test('the harm it starts from is the harm told everywhere, of beds too', () => {
    const lane = demoPlan('lane');
    const told = valueOf(harmOf(lane));
    const { harm, plants } = doubted(lane);
    plants.forEach((plant, k) => expect(plant.harm, plant.id).toBeCloseTo(told[k].harm, 9));
    expect(harm).toBeCloseTo(
      told.reduce((sum, each) => sum + each.worth * each.harm, 0),
      9,
    );
  });

  test('a yard without plants has the climate in doubt alone, and moves nothing', () => {
    const bare = doubted(yardPlan([FAR]));
    expect(bare.plants).toEqual([]);
    expect(bare.harm).toBe(0);
    expect(bare.sentence).toBe(
      'No number that could be measured in the yard moves the heat damage, and neither climate nor limits do.',
    );
  });

  test('an option that cannot be applied is refused in one sentence', () => {
    const outcome = doubtOf({ ...YARD, options: [{ id: 'X', removes: ['nobody'] }] });
    expect(outcome.ok).toBe(false);
  });
});
