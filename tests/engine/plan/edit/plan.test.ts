import { expect, it } from 'vitest';
import { CATALOGUE } from '../../../../engine/plan/catalogue/plants.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import {
  appendJournal,
  removeJournalEntry,
  setClimate,
  setClimateMonth,
  setPartHow,
  setPlan,
  setPlantRow,
  setSite,
  setStock,
  startNextYear,
} from '../../../../engine/plan/edit/plan.ts';

const plan = demoPlan('courtyard');

it('a value that stays the same gives the very same plan', () => {
  expect(setSite(plan, { latitude: 37.88 })).toBe(plan);
  expect(setClimateMonth(plan, 7, { high: 36.2 })).toBe(plan);
  expect(setPlan(plan, { units: 'metric' })).toBe(plan);
});

it('site, climate, name and units change alone', () => {
  const next = setPlan(setClimate(setSite(plan, { elevation: 135, hose: undefined }), { offset: 1.5 }), {
    units: 'imperial',
  });
  expect(next.site).toMatchObject({ elevation: 135, latitude: 37.88 });
  expect(next.site).not.toHaveProperty('hose');
  expect(next.climate.offset).toBe(1.5);
  expect(next.units).toBe('imperial');
  expect(next.features).toBe(plan.features);
});

it('a month changes, or is added when it comes with its high and low', () => {
  expect(setClimateMonth(plan, 7, { sunshine: 0.9 }).climate.months[2]).toMatchObject({
    month: 7,
    high: 36.2,
    sunshine: 0.9,
  });
  expect(setClimateMonth(plan, 4, { high: 23.1, low: 9.4 }).climate.months.at(-1)).toEqual({
    month: 4,
    high: 23.1,
    low: 9.4,
  });
  expect(setClimateMonth(plan, 4, { high: 23.1 })).toBe(plan);
});

it('how a number of the site or the climate is known can be said and unsaid', () => {
  const known = setPartHow(plan, 'site', 'latitude', { by: 'guess', pm: 0.2 });
  expect(known.site.how).toEqual({ upBearing: { by: 'shadow', pm: 1.5 }, latitude: { by: 'guess', pm: 0.2 } });
  expect(setPartHow(plan, 'climate', 'gust', undefined).climate).not.toHaveProperty('how');
});

it('own plants, the stock list and the journal grow and shrink', () => {
  const row = { ...CATALOGUE[3], id: 'mine' };
  const own = setPlantRow(setPlantRow(plan, row), { ...row, heatLimit: 45.5 });
  expect(own.plants).toEqual([{ ...row, heatLimit: 45.5 }]);
  expect(setStock(plan, { kerf: 0.003 }).stock).toEqual({ kerf: 0.003 });
  const noted = appendJournal(plan, { date: '2026-07-02', what: 'note', text: 'New hose' });
  expect(noted.journal).toHaveLength(2);
  expect(removeJournalEntry(noted, 1)).toEqual(plan);
  expect(removeJournalEntry(plan, 5)).toBe(plan);
});

it('the next year starts with this one frozen, without its picture and without the years before inside it', () => {
  const traced = setSite(plan, { underlay: { image: 'data:image/png;base64,AAAA', at: [0, 0], width: 11 } });
  const later = startNextYear(startNextYear(traced));
  expect(later.season.year).toBe(2028);
  expect(later.past?.map(({ year }) => year)).toEqual([2026, 2027]);
  expect(later.past?.[0].plan).toEqual(plan);
  expect(later.past?.[1].plan).not.toHaveProperty('past');
  expect(later.site.underlay).toBe(traced.site.underlay);
  expect(later.features).toBe(plan.features);
  expect(checkPlan(later)).toEqual([]);
});
