import { describe, expect, it } from 'vitest';
import { PLANT_SOURCES } from '../../../../engine/plan/catalogue/plant-sources.ts';
import { CATALOGUE, nearestPlantIds, plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';

const plan = demoPlan('courtyard');

describe('the catalogue', () => {
  it('every row passes the check that a person’s own row must pass', () => {
    expect(checkPlan({ ...plan, plants: CATALOGUE })).toEqual([]);
  });

  it('every row names its sources, and every source has its citation', () => {
    expect(CATALOGUE.length).toBeGreaterThan(100);
    for (const row of CATALOGUE) {
      expect(row.sources?.length, row.id).toBeGreaterThan(0);
      for (const source of row.sources ?? [])
        expect(PLANT_SOURCES.get(source)?.citation, `${row.id}: ${source}`).toMatch(/\S/);
    }
  });

  it('every id is there once', () => {
    expect(new Set(CATALOGUE.map((row) => row.id)).size).toBe(CATALOGUE.length);
  });

  // Schrader, Zhang, Duplaga (2001), Plant Health Progress, doi:10.1094/PHP-2001-1004-01-RS: browning of apple skin
  // from 46 °C on.
  it('the apple burns on its fruit, from 46 °C', () => {
    expect(plantRowOf(plan, 'apple')).toMatchObject({ heatLimit: 46, limitOf: 'fruit', limitBasis: 'measured' });
  });
});

describe('the person’s own rows', () => {
  it('win over the catalogue’s', () => {
    const own = { ...CATALOGUE[0], id: 'lemon', heatLimit: 47.5 };
    expect(plantRowOf({ ...plan, plants: [own] }, 'lemon')?.heatLimit).toBe(47.5);
    expect(plantRowOf(plan, 'lemon')?.heatLimit).toBe(44);
    expect(plantRowOf(plan, 'triffid')).toBeUndefined();
  });

  it('a word spelt badly finds its row, own ones too, and nonsense finds none', () => {
    expect(nearestPlantIds(plan, 'Tomatoe')[0]).toBe('tomato');
    expect(
      nearestPlantIds({ ...plan, plants: [{ ...CATALOGUE[0], id: 'quandong', name: 'Quandong' }] }, 'quandon'),
    ).toContain('quandong');
    expect(nearestPlantIds(plan, 'xxxxxxxxxxxxxxxx')).toEqual([]);
  });
});
