import type { YearFinding } from '../../../../engine/advice/review/year-finding.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { addFeature, changeFeature } from '../../../../engine/plan/edit/edit-feature.ts';
import { appendJournal, setSummerMonth, startNextYear } from '../../../../engine/plan/edit/plan.ts';
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
export const base: Plan = { ...demo, journal: [], options: [], features: [lemon, partner] };

/** What is typed on the page: last summer's scores, how warm both Julys were, the new year, its yard and its scores. */
export interface Case {
  readonly scores: Readonly<Record<string, readonly [number, number]>>;
  /** Mean highs of July 2026 and 2027, as typed beside the climate; absent: not typed. [°C] */
  readonly july?: readonly [number, number];
  /** What is new in 2027. */
  readonly change?: (plan: Plan) => Plan;
}

export const withRoof = (plan: Plan): Plan => addFeature(plan, roof);
const intoShade = (plan: Plan): Plan =>
  changeFeature(addFeature(plan, { ...roof, center: [14, 9] }), 'lemon', {
    at: [14, 9],
  });

export function twoYears({ scores, july, change = withRoof }: Case): Plan {
  let plan = base;
  for (const [feature, [amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2026-07-20', what: 'damage', feature, amount });
  plan = change(startNextYear(plan));
  for (const [feature, [, amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2027-07-22', what: 'damage', feature, amount });
  for (const [k, high] of (july ?? []).entries()) plan = setSummerMonth(plan, 2026 + k, 7, { high });
  return plan;
}

/** Usual for July in this yard's climate. [°C] */
export const JULY = base.climate.months.find(({ month }) => month === 7)!.high;
const alike = [JULY, JULY] as const;
export const cooler = [JULY, JULY - 2.5] as const;
const hotter = [JULY, JULY + 2.5] as const;

/**
 * Twenty pairs of summers and what a careful neighbour would say of each. The rule behind them is that of any trial
 * with a control: a plant left as it was tells what the summer did; without one, only the heat does (common practice,
 * no source).
 */
export const TWO_SUMMERS: readonly (readonly [told: string, finding: YearFinding, says: RegExp, entered: Case])[] = [
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
    /The two summers were equally warm/,
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
