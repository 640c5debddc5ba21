import { describe, expect, test } from 'vitest';
import { yearsAgainst } from '../../../../engine/advice/review/year-against-year.ts';
import type { YearFinding } from '../../../../engine/advice/review/year-finding.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { addFeature, changeFeature } from '../../../../engine/plan/edit/edit-feature.ts';
import { appendJournal, setSummerMonth, startNextYear } from '../../../../engine/plan/edit/plan.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Plan, Plant } from '../../../../engine/plan/types.ts';

const demo = demoPlan('courtyard');
const lemon: Plant = {
  id: 'lemon',
  kind: 'plant',
  name: 'Lemon',
  at: [3, 4],
  height: 1.4,
  spread: 0.8,
  plant: 'lemon',
  container: true,
};
const partner: Plant = { ...lemon, id: 'partner', name: 'Partner', at: [9.5, 4] };
const roof: Canopy = {
  id: 'roof',
  kind: 'canopy',
  center: [3, 4],
  length: 4,
  width: 4,
  height: 2,
  density: 0.6,
  drops: [{ side: 'left', depth: 1, density: 0.6 }],
};
const base: Plan = { ...demo, journal: [], options: [], features: [lemon, partner] };

/** What is typed on the page: last summer's scores, how warm both Julys were, the new year, its yard and its scores. */
interface Case {
  readonly scores: Readonly<Record<string, readonly [number, number]>>;
  /** Mean highs of July 2026 and 2027, as typed beside the climate; absent: not typed. [°C] */
  readonly july?: readonly [number, number];
  /** What is new in 2027. */
  readonly change?: (plan: Plan) => Plan;
}

const withRoof = (plan: Plan): Plan => addFeature(plan, roof);
const intoShade = (plan: Plan): Plan =>
  changeFeature(addFeature(plan, { ...roof, center: [14, 9] }), 'lemon', {
    at: [14, 9],
  });

function twoYears({ scores, july, change = withRoof }: Case): Plan {
  let plan = base;
  for (const [feature, [amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2026-07-20', what: 'damage', feature, amount });
  plan = change(startNextYear(plan));
  for (const [feature, [, amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2027-07-22', what: 'damage', feature, amount });
  for (const [k, high] of (july ?? []).entries()) plan = setSummerMonth(plan, 2026 + k, 7, { high });
  return plan;
}

const lemonOf = (plan: Plan) => yearsAgainst(plan).find(({ plant }) => plant === 'lemon')!;

/** Usual for July in this yard's climate. [°C] */
const JULY = base.climate.months.find(({ month }) => month === 7)!.high;
const alike = [JULY, JULY] as const;
const cooler = [JULY, JULY - 2.5] as const;
const hotter = [JULY, JULY + 2.5] as const;

/**
 * Twenty pairs of summers and what a careful neighbour would say of each. The rule behind them is that of any trial
 * with a control: a plant left as it was tells what the summer did; without one, only the heat does (common practice,
 * no source).
 */
const TABLE: readonly (readonly [told: string, finding: YearFinding, says: RegExp, entered: Case])[] = [
  [
    'a partner as bad in both years',
    'the change made the difference',
    /^Lemon: better: the cover made the difference\./,
    { scores: { lemon: [3, 1], partner: [3, 3] }, july: alike },
  ],
  [
    'the same, and nobody knows how warm it was',
    'the change made the difference',
    /partner was as bad in both \(3 of 5\)/,
    { scores: { lemon: [3, 1], partner: [3, 3] } },
  ],
  [
    'a partner as bad although the summer was cooler',
    'the change made the difference',
    /2\.5 (K|°C) cooler/,
    { scores: { lemon: [3, 1], partner: [3, 3] }, july: cooler },
  ],
  [
    'a partner that got worse while the lemon stayed',
    'the change made the difference',
    /^Lemon: spared: the cover/,
    { scores: { lemon: [2, 2], partner: [2, 4] }, july: hotter },
  ],
  [
    'moved into another roof’s shade',
    'the change made the difference',
    /the (cover|new place) made the difference/,
    { scores: { lemon: [4, 1], partner: [3, 3] }, july: alike, change: intoShade },
  ],
  [
    'a partner that fell as much',
    'better, but so was what stayed as it was',
    /the summer did it/,
    { scores: { lemon: [3, 1], partner: [3, 1] }, july: alike },
  ],
  [
    'a partner that fell in proportion',
    'better, but so was what stayed as it was',
    /went from 2 to 1/,
    { scores: { lemon: [4, 2], partner: [2, 1] }, july: cooler },
  ],
  [
    'a partner that rose as much',
    'worse, but so was what stayed as it was',
    /worse, but so was/,
    { scores: { lemon: [2, 4], partner: [2, 4] }, july: hotter },
  ],
  [
    'worse beside a partner that stayed',
    'worse than the heat explains',
    /another cause/,
    { scores: { lemon: [1, 3], partner: [2, 2] }, july: alike },
  ],
  [
    'the same beside a partner that got better',
    'worse than the heat explains',
    /worse/,
    { scores: { lemon: [3, 3], partner: [3, 1] }, july: cooler },
  ],
  [
    'the same, the partner too',
    'the same',
    /^Lemon: the same\./,
    { scores: { lemon: [2, 2], partner: [3, 3] }, july: alike },
  ],
  ['no damage in either year', 'the same', /0 of 5 in 2026, 0 in 2027/, { scores: { lemon: [0, 0] }, july: alike }],
  [
    'less damage, July 2.5 °C cooler, no partner',
    'better, but the cooler summer may explain it',
    /^Lemon: better, but the cooler summer may explain it\./,
    { scores: { lemon: [3, 1] }, july: cooler },
  ],
  [
    'a little less damage in a cooler summer',
    'better, but the cooler summer may explain it',
    /may explain/,
    { scores: { lemon: [2, 1] }, july: cooler },
  ],
  [
    'less damage in a summer as warm',
    'better than the heat explains',
    /Both summers were as warm/,
    { scores: { lemon: [3, 1] }, july: alike },
  ],
  [
    'less damage in a hotter summer',
    'better than the heat explains',
    /2\.5 (K|°C) hotter/,
    { scores: { lemon: [4, 2] }, july: hotter },
  ],
  [
    'more damage in a hotter summer',
    'worse, but the hotter summer may explain it',
    /hotter summer may explain/,
    { scores: { lemon: [2, 4] }, july: hotter },
  ],
  [
    'more damage in a cooler summer',
    'worse than the heat explains',
    /look for another cause/,
    { scores: { lemon: [2, 4] }, july: cooler },
  ],
  [
    'less damage, but nobody typed the summers and nothing was left as it was',
    'too little to tell',
    /Type how warm both summers were/,
    { scores: { lemon: [3, 1] } },
  ],
  [
    'a partner that was never hurt is none',
    'too little to tell',
    /too little to tell/,
    { scores: { lemon: [3, 1], partner: [0, 0] } },
  ],
];

describe('year against year', () => {
  test('the table has twenty cases', () => expect(TABLE).toHaveLength(20));

  test.each(TABLE)('%s: %s', (_, finding, says, entered) => {
    const lemons = lemonOf(twoYears(entered));
    expect(lemons).toMatchObject({ years: [2026, 2027], damage: entered.scores.lemon, finding });
    expect(lemons.sentence).toMatch(says);
    expect(lemons.sentence).toContain(finding === 'too little to tell' ? 'Type' : 'One plant, one year proves little.');
  });

  test('what is typed of a summer is not the climate: nothing else is reckoned by it', () => {
    const typed = setSummerMonth(base, 2026, 7, { high: JULY - 2.5 });
    expect(typed.climate).toBe(base.climate);
    expect(harmOf(typed)).toEqual(harmOf(base));
    expect(setSummerMonth(typed, 2026, 7, undefined).summers).toEqual([]);
  });

  test('a cooler July makes all its summer’s months cooler where they are not typed, and the dose less', () => {
    const { dose, warmer, expected } = lemonOf(twoYears({ scores: { lemon: [3, 1] }, july: cooler }));
    expect(warmer).toBeCloseTo(-2.5, 9);
    expect(dose![1]).toBeLessThan(0.9 * dose![0]);
    expect(expected).toBeCloseTo((3 * dose![1]) / dose![0], 9);
    const other = twoYears({ scores: { lemon: [3, 1] }, july: cooler });
    const august = base.climate.months.find(({ month }) => month === 8)!.high;
    const told = lemonOf(setSummerMonth(other, 2027, 8, { high: august - 2.5 }));
    expect(told.dose![1]).toBeCloseTo(dose![1], 9);
  });

  test('in a file of old, where each year’s climate held its summer, the two climates count', () => {
    const plan = twoYears({ scores: { lemon: [3, 1] } });
    const months = plan.climate.months.map((row) => ({ ...row, high: row.high - 2.5, low: row.low - 2.5 }));
    const old = { ...plan, climate: { ...plan.climate, months, heatwaveHigh: plan.climate.heatwaveHigh - 2.5 } };
    expect(lemonOf(old).finding).toBe('better, but the cooler summer may explain it');
    expect(lemonOf({ ...old, climate: { ...old.climate, from: 'rough' } }).finding).toBe('too little to tell');
  });

  test('one summer typed is not two', () => {
    const plan = twoYears({ scores: { lemon: [3, 1] }, july: [JULY] as unknown as [number, number] });
    expect(lemonOf(plan)).toMatchObject({ finding: 'too little to tell', warmer: null });
  });

  test('the covered plant is no control for the other', () => {
    const plan = twoYears({ scores: { lemon: [3, 1], partner: [3, 3] } });
    expect(yearsAgainst(plan).find(({ plant }) => plant === 'partner')!.partners).toEqual([]);
  });

  test('one score says nothing; two without last year’s plan cannot be told', () => {
    expect(
      yearsAgainst(appendJournal(base, { date: '2026-07-20', what: 'damage', feature: 'lemon', amount: 3 })),
    ).toEqual([]);
    const { past: _, ...forgetful } = twoYears({ scores: { lemon: [3, 1] } });
    expect(lemonOf(forgetful)).toMatchObject({ finding: 'too little to tell', dose: null });
  });

  test('two scores of one southern summer, before and after New Year, are one score', () => {
    const lane = demoPlan('lane');
    const scored = [
      { date: '2026-12-28', amount: 2 },
      { date: '2027-01-25', amount: 4 },
    ].reduce((plan, { date, amount }) => appendJournal(plan, { date, what: 'damage', feature: 'blueberry', amount }), {
      ...lane,
      journal: [],
    } as Plan);
    expect(yearsAgainst(scored)).toEqual([]);
  });
});
