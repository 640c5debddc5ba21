import { describe, expect, it } from 'vitest';
import { dateOfDay, hottestMonth, seasonDates, seasonMonths } from '../../../../engine/sun/days/season.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { months, planAt } from '../plan-at.ts';

const south = planAt({ season: { year: 2026, from: '11-15', to: '03-10' } });

describe('the season', () => {
  it('has both its ends', () => {
    const dates = valueOf(seasonDates(planAt()));
    expect(dates).toHaveLength(107);
    expect([dates[0], dates.at(-1)]).toEqual(['2026-06-01', '2026-09-15']);
  });

  it('ends in the next year when its end comes before its beginning', () => {
    const dates = valueOf(seasonDates(south));
    expect([dates[0], dates.at(-1), dates.length]).toEqual(['2026-11-15', '2027-03-10', 116]);
  });

  it('may be one day', () => {
    expect(valueOf(seasonDates(planAt({ season: { from: '07-04', to: '07-04' } })))).toEqual(['2026-07-04']);
  });

  it('meets its months in order, each in a year', () => {
    expect(valueOf(seasonMonths(south))).toEqual([
      { month: 11, year: 2026 },
      { month: 12, year: 2026 },
      { month: 1, year: 2027 },
      { month: 2, year: 2027 },
      { month: 3, year: 2027 },
    ]);
  });

  it('cannot begin on a day that the year has not', () => {
    expect(seasonDates(planAt({ season: { from: '02-29' } }))).toEqual({
      ok: false,
      problems: [
        { pointer: '/season/from', message: 'There is no 02-29 in 2026, which is not a leap year.', severity: 'error' },
      ],
    });
    expect(seasonDates(planAt({ season: { to: '06-31' } }))).toMatchObject({
      ok: false,
      problems: [{ pointer: '/season/to' }],
    });
  });
});

describe('a day of the season', () => {
  it('is in its first year, outside it too', () => {
    expect(valueOf(dateOfDay(planAt(), '07-21'))).toBe('2026-07-21');
    expect(valueOf(dateOfDay(planAt(), '03-02'))).toBe('2026-03-02');
  });

  it('is in the second year when the season crosses New Year and the day comes before its beginning', () => {
    expect(valueOf(dateOfDay(south, '11-15'))).toBe('2026-11-15');
    expect(valueOf(dateOfDay(south, '11-14'))).toBe('2027-11-14');
    expect(valueOf(dateOfDay(south, '01-15'))).toBe('2027-01-15');
  });

  it('is 29 February in leap years only', () => {
    expect(valueOf(dateOfDay(planAt({ season: { year: 2027, from: '11-15', to: '03-10' } }), '02-29'))).toBe(
      '2028-02-29',
    );
    expect(dateOfDay(south, '02-29')).toMatchObject({
      ok: false,
      problems: [{ message: 'There is no 02-29 in 2027, which is not a leap year.' }],
    });
  });

  it('is refused when it is none', () => {
    expect(dateOfDay(planAt(), '21 July')).toMatchObject({
      ok: false,
      problems: [{ message: 'There is no day "21 July": a day is written MM-DD, as 07-21.' }],
    });
  });
});

describe('the hottest month', () => {
  const withHighs = (highs: Record<number, number>) =>
    Object.entries(highs).map(([month, high]) => ({ month: Number(month), high, low: 19 }));

  it('has the highest high, and the heatwave day is that much hotter', () => {
    const plan = planAt({ climate: { months: withHighs({ 6: 33, 7: 37.5, 8: 37, 9: 31 }) } });
    expect(valueOf(hottestMonth(plan))).toEqual({ month: 7, year: 2026, raise: 6.5 });
  });

  it('of equal ones is the first that the season meets, in its year', () => {
    const climate = { months: withHighs({ 1: 36, 2: 36, 3: 30, 11: 31, 12: 36 }) };
    expect(valueOf(hottestMonth(planAt({ season: south.season, climate })))).toMatchObject({ month: 12, year: 2026 });
    expect(valueOf(hottestMonth(planAt({ season: { from: '12-25', to: '02-20' }, climate })))).toMatchObject({
      month: 12,
      year: 2026,
    });
    expect(
      valueOf(
        hottestMonth(
          planAt({ season: { from: '12-25', to: '02-20' }, climate: { months: withHighs({ 1: 36, 2: 36, 12: 35 }) } }),
        ),
      ),
    ).toMatchObject({ month: 1, year: 2027 });
  });

  it('is as much cooler than the heatwave whatever the offset of the thermometer', () => {
    const climate = { months: withHighs({ 6: 33, 7: 37, 8: 36, 9: 31 }) };
    expect(valueOf(hottestMonth(planAt({ climate: { ...climate, offset: 2.5 } }))).raise).toBeCloseTo(7, 12);
  });

  it('cannot be told while a month of the season has no figures', () => {
    const result = hottestMonth(planAt({ climate: { months: months(6, 8) } }));
    expect(result).toMatchObject({
      ok: false,
      problems: [
        { pointer: '/climate/months', message: 'The climate has no figures for July (month 7), and they are needed.' },
        {
          pointer: '/climate/months',
          message: 'The climate has no figures for September (month 9), and they are needed.',
        },
      ],
    });
  });
});
