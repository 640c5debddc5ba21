/** Fruit months are common practice, no source; here every part that tells of fruit is held to go by them. */

import { describe, expect, test } from 'vitest';
import { whyBurnt } from '../../../../../engine/advice/why/why.ts';
import { bearsWhatBurns } from '../../../../../engine/advice/year/growth/fruit.ts';
import { hotDaysOf } from '../../../../../engine/advice/year/hot-days.ts';
import { tomorrowOf } from '../../../../../engine/advice/year/tomorrow/tomorrow.ts';
import { CATALOGUE } from '../../../../../engine/plan/catalogue/plants.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { PlantRow } from '../../../../../engine/plan/types.ts';
import { seasonMonths } from '../../../../../engine/sun/days/season.ts';
import { valueOf } from '../../../../parts/outcome.ts';

const row = (id: string): PlantRow => CATALOGUE.find((each) => each.id === id)!;
/** In the south, from December to March: a blueberry is picked by February. */
const lane = demoPlan('lane');

test('every kind whose fruit burns hangs through the hottest month of north and south, and not all year', () => {
  for (const each of CATALOGUE.filter(({ limitOf }) => limitOf === 'fruit')) {
    expect(bearsWhatBurns(each, 7, 38), each.id).toBe(true);
    expect(bearsWhatBurns(each, 1, -34), each.id).toBe(true);
    expect(bearsWhatBurns(each, 1, 38), each.id).toBe(false);
  }
  // Leaves are there; of a row of the person's own nobody knows.
  expect(bearsWhatBurns(row('lemon'), 1, 38)).toBe(true);
  expect(bearsWhatBurns({ ...row('grape'), id: 'own' }, 1, 38)).toBe(true);
});

describe('in a month in which no fruit hangs', () => {
  test('hot days date nothing for it, and all that they dated for leaves', () => {
    const { usual, heatwave } = valueOf(hotDaysOf(lane));
    const months = valueOf(seasonMonths(lane)).map(({ month }) => month);
    for (const harms of [usual, heatwave]) {
      const doses = (id: string) => harms.find((each) => each.id === id)!.byHeatDay;
      months.forEach((month, k) => {
        const hangs = bearsWhatBurns(row('blueberry'), month, lane.site.latitude);
        if (!hangs) expect(doses('blueberry')[k]).toBe(0);
      });
      expect(months.some((month) => !bearsWhatBurns(row('blueberry'), month, lane.site.latitude))).toBe(true);
      expect(doses('blueberry')[0]).toBeGreaterThan(0);
    }
    expect(heatwave.find(({ id }) => id === 'raspberries')!.byHeatDay.at(-1)).toBeGreaterThan(0);
  });

  test('the day’s list hangs no cloth for it', () => {
    const shaded = (date: string): boolean =>
      valueOf(tomorrowOf(lane, { date, high: 42 })).tasks.some(({ advice }) =>
        /the skin of any fruit/.test(advice.text),
      );
    expect(shaded('2027-01-22')).toBe(true);
    expect(shaded('2027-03-12')).toBe(false);
  });

  test('why says that none hangs: of burnt fruit it asks for the date', () => {
    const why = (part: 'fruit' | 'leaf', date: string) =>
      valueOf(whyBurnt(lane, { plant: 'blueberry', side: 0, part, date })).sentence;
    expect(why('fruit', '2027-03-10')).toContain('No fruit hangs on it in March as a rule: look whether the date');
    expect(why('leaf', '2027-03-10')).toContain('the limit is known for its fruit alone');
    expect(why('fruit', '2027-01-10')).not.toContain('No fruit hangs');
  });
});
