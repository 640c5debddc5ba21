import { describe, expect, test } from 'vitest';
import { yearsAgainst } from '../../../../engine/advice/review/year-against-year.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { changeFeature } from '../../../../engine/plan/edit/edit-feature.ts';
import { appendJournal, setSummerMonth } from '../../../../engine/plan/edit/plan.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { base, cooler, JULY, twoYears, TWO_SUMMERS } from './two-summers.ts';

const lemonOf = (plan: Plan) => yearsAgainst(plan).find(({ plant }) => plant === 'lemon')!;

describe('year against year', () => {
  test('the table has twenty cases', () => expect(TWO_SUMMERS).toHaveLength(20));

  test.each(TWO_SUMMERS)('%s: %s', (_, finding, says, entered) => {
    const lemons = lemonOf(twoYears(entered));
    expect(lemons).toMatchObject({ years: [2026, 2027], damage: entered.scores.lemon, finding });
    expect(lemons.sentence).toMatch(says);
    expect(lemons.sentence).toContain(finding === 'too little to tell' ? 'Type' : 'One plant, one year proves little.');
    // A score is a whole number: what is expected of one is told by whole ones.
    expect(lemons.sentence).not.toMatch(/made it [^;]*\d\.\d/);
    if (lemons.sentence.includes('made it')) expect(lemons.sentence).toMatch(/made it (about \d|\d to \d) of 5/);
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

  test('of a plant left as it was nobody is told that none such stands beside it', () => {
    for (const [told, , , entered] of TWO_SUMMERS)
      for (const { plant, sentence, leftAlone } of yearsAgainst(twoYears(entered))) {
        expect(leftAlone, told).toBe(plant === 'partner');
        if (leftAlone) expect(sentence).toContain('Nothing was changed about it.');
        expect(/No plant left as it was|that nothing was changed about/.test(sentence) && leftAlone).toBe(false);
      }
  });

  test('a plant is spoken of in the number of its name, as partner too', () => {
    const plan = twoYears({ scores: { lemon: [3, 1], partner: [3, 3] }, july: [JULY, JULY] });
    const named = changeFeature(plan, 'partner', { name: 'Roses' });
    const said = yearsAgainst(named).map(({ sentence }) => sentence);
    expect(said.join(' ')).toContain('the roses were as bad in both (3 of 5)');
    expect(said.join(' ')).toContain('Nothing was changed about them.');
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
