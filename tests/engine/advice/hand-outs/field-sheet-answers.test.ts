import { describe, expect, test } from 'vitest';
import { withAnswers } from '../../../../engine/advice/hand-outs/field-sheet-answers.ts';
import { blanksOf } from '../../../../engine/advice/hand-outs/field-sheet.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { featureOf } from '../../../../engine/plan/edit/edit-feature.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

const LANE = demoPlan('lane');
const COURTYARD = demoPlan('courtyard');

describe('answers of the field sheet', () => {
  test('a taped height replaces the guess and its blank is gone', () => {
    const { plan, problems } = withAnswers(
      COURTYARD,
      { 'house/height': '6,45', 'east-house/height': '' },
      '2026-05-02',
    );
    expect(problems).toEqual([]);
    expect(featureOf(plan, 'house')).toMatchObject({ height: 6.45 });
    const ids = blanksOf(plan).map(({ id }) => id);
    expect(ids).not.toContain('house/height');
    expect(ids).toContain('east-house/height');
    expect(checkPlan(plan).filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('a height may be its shadow and the minute, the crown minded', () => {
    const { plan } = withAnswers(LANE, { 'gum/height': 'shadow 17.95 at 9:00' }, '2027-01-10');
    const gum = featureOf(plan, 'gum');
    expect(gum?.kind === 'tree' && gum.height).toBeCloseTo(11, 1);
    expect(gum?.how?.height).toMatchObject({ by: 'shadow' });
    expect(gum?.how?.height?.pm).toBeLessThan(0.5);
  });

  test('the three numbers of a rough climate move its months, and are not asked again', () => {
    const { plan } = withAnswers(
      LANE,
      { 'climate/high': '34', 'climate/low': '60 F', 'climate/heatwaveHigh': '47.5 °C' },
      '2027-01-10',
    );
    const [december, january] = plan.climate.months;
    expect(january.high).toBeCloseTo(34, 9);
    expect(january.low).toBeCloseTo(15.5556, 3);
    expect(december.high).toBeCloseTo(31.5, 9);
    expect(plan.climate.heatwaveHigh).toBe(47.5);
    expect(
      blanksOf(plan)
        .map(({ id }) => id)
        .filter((id) => id.startsWith('climate/') && id !== 'climate/gust'),
    ).toEqual([]);
  });

  test('shares, kinds, places and north', () => {
    const bare: Plan = {
      ...LANE,
      site: { ...LANE.site, upBearing: undefined, how: undefined },
      features: [
        { id: 'pot', kind: 'plant', at: [2, 3], height: 1, spread: 0.6, how: { at: { by: 'guess' } } },
        {
          id: 'tree',
          kind: 'tree',
          at: [5, 6],
          height: 4,
          crownWidth: 3,
          crownBase: 1,
          openness: 0.3,
          how: { openness: { by: 'guess' } },
        },
      ],
    };
    const { plan, problems } = withAnswers(
      bare,
      { 'pot/plant': 'Lemon', 'pot/at': '2,4; 3,1', 'tree/openness': '15 %', 'site/upBearing': '-8°' },
      '2027-01-10',
    );
    expect(problems).toEqual([]);
    expect(featureOf(plan, 'pot')).toMatchObject({ plant: 'lemon', at: [2.4, 3.1] });
    expect(featureOf(plan, 'tree')).toMatchObject({ openness: 0.15 });
    expect(plan.site.upBearing).toBe(352);
    expect(blanksOf(plan).some(({ feature }) => feature !== null)).toBe(false);
  });

  test('what cannot be read is said with the blank’s number, and the rest is kept', () => {
    const { plan, problems } = withAnswers(
      LANE,
      { 'gum/height': 'very tall', 'climate/high': '36', 'gone/height': '3' },
      '2027-01-10',
    );
    expect(problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(
        /^\d+\. .*height: "very tall" is no length: write 2\.4, 6 ft 2, or "shadow 5\.2 at 10:00"\.$/,
      ),
      'gone/height: This blank is not on the sheet any more: was it answered already?',
    ]);
    expect(plan.climate.months[1].high).toBe(36);
  });

  test('a shadow that cannot be is refused with its reason', () => {
    const { problems, plan } = withAnswers(LANE, { 'gum/height': 'shadow 3 at 9:00' }, '2027-01-10');
    expect(problems[0].message).toContain('too short for that crown');
    expect(plan).toBe(LANE);
    expect(withAnswers(LANE, { 'gum/height': 'shadow 3 at 23:00' }, '2027-01-10').problems[0].message).toContain(
      'below the horizon',
    );
  });

  test('a low over its high, and a hottest day cooler than a usual one, are refused; both together may be right', () => {
    const low = withAnswers(LANE, { 'climate/low': '33' }, '2027-01-10');
    expect(low.plan).toBe(LANE);
    expect(low.problems[0].message).toContain('a low of 33 °C is not below the high of 32 °C');
    expect(withAnswers(LANE, { 'climate/low': '33', 'climate/high': '41' }, '2027-01-10').problems).toEqual([]);
    expect(withAnswers(LANE, { 'climate/heatwaveHigh': '31' }, '2027-01-10').problems[0].message).toContain(
      'cannot be cooler',
    );
  });

  test('numbers beyond anything on earth are refused', () => {
    const { problems } = withAnswers(
      { ...LANE, climate: { ...LANE.climate, gust: undefined } },
      { 'climate/gust': '400 km/h', 'climate/high': '80' },
      '2027-01-10',
    );
    expect(problems).toHaveLength(2);
  });
});
