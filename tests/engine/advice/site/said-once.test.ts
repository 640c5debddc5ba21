import { expect, test } from 'vitest';
import { compareOptions } from '../../../../engine/advice/compare/compare.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import { sheetSections } from '../../../../engine/output/sheet/sections.ts';
import { setClimate, setSite, setStock } from '../../../../engine/plan/edit/plan.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { mustBeOk, valueOf } from '../../../parts/outcome.ts';
import { smallPlan } from './small-plans.ts';

const REQUEST = {
  kinds: ['roof'],
  sizes: [{ length: 2, width: 1.5 }],
  heights: [2.2],
  densities: [0.5],
  step: 0.5,
  turnStep: 90,
  betweenSteps: false,
} as const;

/** The found cloth as an option, priced by the comparison and by its build sheet. */
function pricesOf(plan: Plan): { found: number | null; compared: number | null; built: number | null; told: string } {
  const [best] = valueOf(siteOf(plan, REQUEST)).options;
  const yard: Plan = { ...plan, options: [{ id: 'A', adds: best.features }] };
  const [choice] = valueOf(compareOptions(yard)).choices;
  const tried = withOptions(yard, ['A']);
  if (!tried.ok) throw new Error('No such option.');
  const made = sheetOf(tried.plan, best.features[0].id);
  mustBeOk(made);
  return {
    found: best.cost,
    compared: choice.cost.total,
    built: made.sheet.cost.total,
    told: JSON.stringify([choice.sentences, sheetSections(made.sheet, 'metric').slice(0, 1)]),
  };
}

test('ground and gust said once of the yard hold for the search, the comparison and the sheet alike', () => {
  const plan = { ...smallPlan(4), options: [] };
  const costs = new Set<number | null>();
  for (const [soil, gust] of [
    ['garden', 20],
    ['loose', 30],
    ['paving', 30],
  ] as const) {
    const { found, compared, built } = pricesOf(setClimate(setSite(plan, { soil }), { gust }));
    expect(compared).toBeCloseTo(found ?? 0, 6);
    expect(built).toBeCloseTo(found ?? 0, 6);
    costs.add(found);
  }
  expect(costs.size).toBe(3);
});

test('the yard’s own budget binds the search, and what costs more is told so wherever its price is', () => {
  const plan = setSite({ ...smallPlan(4), options: [] }, { soil: 'loose' });
  const { found, told } = pricesOf(plan);
  expect(told).not.toContain('over your budget');
  const poor = setStock(plan, { budget: (found ?? 0) - 1 });
  for (const { cost } of valueOf(siteOf(poor, REQUEST)).options) expect(cost).toBeLessThan(found ?? 0);
  const [best] = valueOf(siteOf(plan, REQUEST)).options;
  const yard: Plan = { ...poor, options: [{ id: 'A', adds: best.features }] };
  const [choice] = valueOf(compareOptions(yard)).choices;
  expect(choice.sentences.join(' ')).toMatch(/That is 1 \w{3} over your budget of \d+\./);
  const tried = withOptions(yard, ['A']);
  const made = tried.ok ? sheetOf(tried.plan, best.features[0].id) : null;
  expect(made?.ok ? made.sheet.overBudget : null).toMatch(/over your budget/);
});
