import { describe, expect, test } from 'vitest';
import { yearsAgainst } from '../../../../engine/advice/review/year-against-year.ts';
import { appendJournal, startNextYear } from '../../../../engine/plan/edit/plan.ts';
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

/** 2026 bare; in 2027 a roof over the lemon and every temperature shifted. */
function twoYears(scores: Readonly<Record<string, readonly [number, number]>>, warmer = 0): Plan {
  let plan = base;
  for (const [feature, [amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2026-07-20', what: 'damage', feature, amount });
  plan = startNextYear(plan);
  const months = plan.climate.months.map((row) => ({ ...row, high: row.high + warmer, low: row.low + warmer }));
  plan = {
    ...plan,
    features: [...plan.features, roof],
    climate: { ...plan.climate, months, heatwaveHigh: plan.climate.heatwaveHigh + warmer },
  };
  for (const [feature, [, amount]] of Object.entries(scores))
    plan = appendJournal(plan, { date: '2027-07-22', what: 'damage', feature, amount });
  return plan;
}

const lemonOf = (plan: Plan) => yearsAgainst(plan).find(({ plant }) => plant === 'lemon')!;

describe('year against year', () => {
  test('as hot a summer, damage from 3 to 1 under the new roof, partner unchanged: better than the heat explains', () => {
    const lemons = lemonOf(twoYears({ lemon: [3, 1], partner: [3, 3] }));
    expect(lemons).toMatchObject({ years: [2026, 2027], damage: [3, 1], verdict: 'better than the heat explains' });
    expect(lemons.expected).toBeCloseTo(3, 9);
    expect(lemons.control).toBeCloseTo(0, 9);
    expect(lemons.sentence).toContain('One plant, one year proves little.');
  });

  test('the same fall in a much cooler summer is what the heat does by itself', () => {
    const lemons = lemonOf(twoYears({ lemon: [3, 1], partner: [3, 1] }, -5));
    expect(lemons.dose![1]).toBeLessThan(0.7 * lemons.dose![0]);
    expect(lemons.verdict).toBe('not distinguishable');
  });

  test('where the uncovered partner fell as much, the roof gets no credit', () => {
    expect(lemonOf(twoYears({ lemon: [3, 1], partner: [3, 1] })).verdict).toBe('not distinguishable');
  });

  test('the same damage after a much cooler summer is worse', () => {
    expect(lemonOf(twoYears({ lemon: [3, 4] }, -5))).toMatchObject({
      verdict: 'worse than the heat explains',
      control: null,
    });
  });

  test('the covered plant is no control for the other', () => {
    const other = yearsAgainst(twoYears({ lemon: [3, 1], partner: [3, 3] })).find(({ plant }) => plant === 'partner')!;
    expect(other.control).toBeNull();
  });

  test('one score says nothing; two without last year’s plan cannot be told', () => {
    expect(
      yearsAgainst(appendJournal(base, { date: '2026-07-20', what: 'damage', feature: 'lemon', amount: 3 })),
    ).toEqual([]);
    const { past: _, ...forgetful } = twoYears({ lemon: [3, 1] });
    expect(lemonOf(forgetful)).toMatchObject({ verdict: 'cannot tell', dose: null });
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
