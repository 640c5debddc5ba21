import { expect, test } from 'vitest';
import { pricedWords } from '../../../../engine/advice/site/advice-words.ts';
import { CLIMBERS } from '../../../../engine/advice/site/climbers.ts';
import { livingScreen } from '../../../../engine/advice/site/living-screen.ts';
import { movedAndCovered } from '../../../../engine/advice/site/moved-and-covered.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import type { Feature, Plan, PlanPoint } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { TENDER } from './small-plans.ts';

const POT: Feature = {
  id: 'pot',
  kind: 'plant',
  at: [1.5, 1.5],
  height: 1,
  spread: 0.6,
  plant: 'tender',
  container: true,
  move: 'carry',
};
const SHRUB: Feature = { id: 'shrub', kind: 'plant', at: [6.5, 4], height: 1.1, spread: 0.8, plant: 'tender' };
/** A house to the west, into whose shade a pot can be carried. */
const HOUSE: Feature = {
  id: 'house',
  kind: 'building',
  outline: [
    [-3, 0],
    [0, 0],
    [0, 8],
    [-3, 8],
  ],
  height: 6,
};
const YARD: Plan = yardPlan([POT, SHRUB, HOUSE], { plants: [TENDER] });
const REQUEST: SiteRequest = {
  sizes: [
    { length: 2, width: 2 },
    { length: 1.5, width: 1 },
  ],
  kinds: ['roof', 'screen'],
  heights: [2],
  densities: [0.5],
  step: 0.5,
  turnStep: 90,
  betweenSteps: false,
  keepLight: false,
};
const THERE: PlanPoint = [0.7, 4];

const found = valueOf(siteOf(YARD, REQUEST));

function weighedHarm(features: readonly Feature[], ids: readonly string[]): number {
  const harms = valueOf(harmOf({ ...YARD, features }));
  return harms.reduce((sum, { id, worth, harm }) => (ids.includes(id) ? sum + worth * harm : sum), 0);
}

test('a pot moved and a small cloth for what stays: its effect is what the yard drawn so loses of its harm', () => {
  const both = movedAndCovered(YARD, REQUEST, [{ plant: 'pot', at: THERE }], found);
  if (both === null) throw new Error('Nothing for the shrub.');
  const drawn = [{ ...POT, at: THERE }, SHRUB, HOUSE, ...both.option.features];
  const before = weighedHarm(YARD.features, ['pot', 'shrub']);
  expect(both.effect).toBeCloseTo(1 - weighedHarm(drawn, ['pot', 'shrub']) / before, 6);
  expect(both.effect).toBeGreaterThan(0.1);
  // The cloth is for the shrub: without it the shrub is no better off.
  expect(weighedHarm([{ ...POT, at: THERE }, SHRUB, HOUSE], ['shrub'])).toBeGreaterThan(weighedHarm(drawn, ['shrub']));
  expect(Math.max(...both.option.features.map((cloth) => (cloth.kind === 'canopy' ? cloth.length : 0)))).toBeLessThan(
    2.1,
  );
  expect(both.sentence).toMatch(
    /^Move the plant pot, and hang a small .* less heat damage to the plant pot and the plant shrub together/,
  );
});

test('nothing is told where no pot is carried, or where a cloth does as much for no more', () => {
  expect(movedAndCovered(YARD, REQUEST, [], found)).toBeNull();
  const [best] = found.options;
  const free = { ...found, options: [{ ...best, spared: Infinity, cost: 0 }] };
  expect(movedAndCovered(YARD, REQUEST, [{ plant: 'pot', at: THERE }], free)).toBeNull();
});

test('a trellis is told by years: each summer spares what the yard with a hedge so dense loses of its harm', () => {
  const living = livingScreen(YARD, REQUEST, found);
  if (living === null) throw new Error('No trellis.');
  const today = weighedHarm(YARD.features, living.served);
  for (const { summers } of living.climbers)
    for (const [k, { stops, effect }] of summers.entries()) {
      const drawn = { ...living.feature, openness: 1 - stops };
      expect(effect).toBeCloseTo(1 - weighedHarm([...YARD.features, drawn], living.served) / today, 6);
      if (k > 0) expect(stops).toBeGreaterThanOrEqual(summers[k - 1].stops);
    }
  expect(living.price?.from).toBeLessThan(living.price?.to ?? 0);
  expect(living.notes.join(' ')).toMatch(/storm/);
  expect(living.notes.join(' ')).not.toMatch(/paving/);
  expect(livingScreen(YARD, { ...REQUEST, kinds: ['roof'] }, found)).toBeNull();
});

// Common practice, no source: a climber wants soil.
test('a trellis on paving says where its roots go, in the person’s units; one for a pot that goes says so', () => {
  const paved: Plan = { ...YARD, site: { ...YARD.site, surface: 'paving' } };
  const [metric, imperial] = (['metric', 'imperial'] as const).map((units) =>
    livingScreen(paved, { ...REQUEST, units }, found, ['pot', 'shrub']),
  );
  expect(metric?.notes[0]).toMatch(/^It would stand on paving: .* 0\.5 m deep .* 50 L or more/);
  expect(imperial?.notes[0]).toMatch(/20 in deep .* 13 gal or more/);
  expect(metric?.sentence).toMatch(/^Or, if .* stays?, let it grow: a trellis/);
  const beside: Feature = { id: 'lawn', kind: 'ground', outline: paved.site.boundary, surface: 'lawn' };
  expect(livingScreen({ ...paved, features: [...paved.features, beside] }, REQUEST, found)?.notes[0]).not.toMatch(
    /paving/,
  );
});

test('on paving nobody is told to push a rod into soil', () => {
  const { options, pricedFor, ...rest } = valueOf(
    siteOf({ ...YARD, site: { ...YARD.site, surface: 'paving' } }, REQUEST),
  );
  expect(pricedFor).toMatchObject({ ground: 'paving', isSaid: false });
  expect(pricedWords({ options, pricedFor, ...rest }, 'metric').ground).toMatch(
    /^Anchored as on paving, for so the ground/,
  );
  expect(found.pricedFor.ground).toBe('garden');
});

test('grown leaves let through no less and no more than was measured on climbers', () => {
  // Pérez et al. (2011), Applied Energy 88:4854: 0.15 Virginia creeper to 0.41 clematis (from memory).
  for (const { id, stops } of CLIMBERS.filter((climber) => climber.id !== 'annual')) {
    expect(stops[3], id).toBeLessThanOrEqual(1 - 0.15);
    expect(stops[3], id).toBeGreaterThanOrEqual(1 - 0.41);
  }
});
