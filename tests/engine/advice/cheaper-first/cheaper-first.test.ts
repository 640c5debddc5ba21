import { describe, expect, test } from 'vitest';
import { cheaperFirst } from '../../../../engine/advice/cheaper-first/cheaper-first.ts';
import type { LadderStep } from '../../../../engine/advice/cheaper-first/step.ts';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { cheaperHeadline } from '../../../../engine/advice/words/cure-headlines.ts';
import { CLAY_ABSORPTANCE } from '../../../../engine/advice/year/clay/clay.ts';
import { heatDaysOf } from '../../../../engine/load/leaf/heat-day.ts';
import { surfaceTemperature, type Watering } from '../../../../engine/load/leaf/leaf.ts';
import { createSkyViewer } from '../../../../engine/load/light/sky-viewer.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { plantPoints } from '../../../../engine/load/verdict/plant-points.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { Feature, Plan, Plant } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { POT, TOWER } from '../planted.ts';

const LEMON: Plant = { ...POT, worth: 2 };
const YARD = yardPlan([TOWER, LEMON]);

const stepsOf = (plan: Plan) => valueOf(cheaperFirst(plan)).steps;
const step = (steps: readonly LadderStep[], id: LadderStep['id']) => steps.find((each) => each.id === id);

/** Harm to the lemon by the leaf's own balance, sample by sample. [K·h/day] */
function harmBy(watering: Watering, absorptance?: number): number {
  const scene = buildScene(YARD);
  const row = plantRowOf(YARD, 'lemon');
  if (!row) throw new Error('lemon is in the catalogue');
  const limit = valueOf(plantLoadsOf(YARD))[0].leaf?.limit ?? NaN;
  const sky = createSkyViewer(scene);
  const { points, own } = plantPoints(YARD, LEMON);
  const heats = valueOf(heatDaysOf(YARD, scene));
  let dose = 0;
  for (const { caster, moments, samples, state } of heats) {
    for (const { point } of points) {
      const shares = caster.sharesAt(point, own);
      const around = { sky: sky.at(point, state, own), groundRise: 18, walls: null };
      moments.forEach(
        (moment, k) =>
          (dose +=
            Math.max(0, surfaceTemperature(moment, row, watering, shares[k], around, absorptance) - limit) *
            samples.hours[k]),
      );
    }
  }
  return dose / points.length / heats.length;
}

describe('cheaper cures', () => {
  const steps = stepsOf(YARD);
  const harm = harmBy('thirsty');

  test('stand in the order of their price, each with what it does', () => {
    expect(steps.map(({ id }) => id)).toEqual(['move', 'wrap', 'water', 'clay']);
    for (const { effect, sentence } of steps) expect(`${effect} ${sentence}`).not.toMatch(/not computed|undefined|NaN/);
  });

  test('moving spares what the best place for the pot spares, and costs nothing', () => {
    const [best] = valueOf(placeOf(YARD, { plant: 'pot' })).spots;
    const moved = step(steps, 'move');
    expect(moved?.spared).toBeCloseTo(2 * best.spared, 0);
    expect(moved?.spared).toBeGreaterThan(0);
    expect(moved?.cost).toBe(0);
    expect(moved?.moves).toEqual([{ plant: 'pot', at: best.at }]);
    expect(moved?.sentence).toContain(`The lemon ${best.where}, `);
  });

  test('of many pots the six that burn most are carried, and it says so', () => {
    const pots = Array.from({ length: 8 }, (_, k): Plant => ({
      ...POT,
      id: `pot-${k}`,
      at: [4.5 + 1.2 * (k % 4), k < 4 ? 3 : 6],
      worth: k === 3 || k === 6 ? 1 : 3,
    }));
    const moved = step(stepsOf(yardPlan([TOWER, ...pots])), 'move');
    const carried = moved?.moves?.map(({ plant }) => plant) ?? [];
    expect(carried.length).toBeGreaterThan(0);
    for (const id of ['pot-3', 'pot-6']) expect(carried).not.toContain(id);
    expect(moved?.sentence).toContain('Of 8 pots that burn these burn most');
  });

  test('water and clay spare what the leaf’s own balance says', () => {
    expect(step(steps, 'water')?.spared).toBeCloseTo(2 * (harm - harmBy('watered')), 0);
    expect(step(steps, 'clay')?.spared).toBeCloseTo(2 * (harm - harmBy('thirsty', CLAY_ABSORPTANCE)), 0);
  });

  // UC IPM on sunburn of fruit, from memory: fruit is cooled by no water; its own leaves shade it.
  test('water is told for leaves alone: of fruit its leaves are left on, and no share is told', () => {
    const grape: Feature = { ...LEMON, id: 'vine', plant: 'grape', container: false } as Feature;
    const alone = step(stepsOf(yardPlan([grape])), 'water');
    expect(alone).toMatchObject({ name: 'Leave the leaves over the fruit', spared: null, sparedShare: null });
    expect(alone?.sentence).toMatch(/^Water does not cool the fruit of .*: leave every leaf that hangs over it\.$/);
    const both = step(stepsOf(yardPlan([grape, { ...LEMON, container: false } as Feature])), 'water');
    expect(both?.serves).toEqual([LEMON.id]);
    expect(both?.sentence).toContain('Water does not cool the fruit of');
    expect(cheaperHeadline(yardPlan([grape]), stepsOf(yardPlan([grape])))).toMatch(
      /^Leave the leaves over the fruit; then cloth/,
    );
  });

  test('leaves that are eaten are not sprayed, and a fruit’s surface has no number for clay', () => {
    const other = (plant: string) =>
      step(stepsOf(yardPlan([{ ...LEMON, plant, container: false } as Feature])), 'clay');
    expect(other('lettuce')).toMatchObject({ spared: null, effect: 'not for these plants' });
    expect(other('blueberry')).toMatchObject({ spared: null, effect: 'no number for fruit' });
  });

  test('a wrap is told in the degrees that it takes off the roots', () => {
    const { pot } = valueOf(plantLoadsOf(YARD))[0];
    const wrap = step(steps, 'wrap');
    const [white] = wrap?.roots?.[0].helps ?? [];
    expect(white).toEqual({ id: 'white', cooler: pot?.roots.help?.cooler });
    expect(wrap?.sentence).toContain(`in white ${white.cooler.toFixed(0)} °C less`);
    expect(wrap).toMatchObject({ spared: null, sparedShare: null });
  });

  test('without pots they begin with water; where nothing is harmed there are none', () => {
    expect(stepsOf(yardPlan([{ ...LEMON, container: false } as Feature])).map(({ id }) => id)).toEqual([
      'water',
      'clay',
    ]);
    const roof: Feature = {
      id: 'roof',
      kind: 'building',
      outline: [
        [-9, -9],
        [29, -9],
        [29, 29],
        [-9, 29],
      ],
      height: 1,
    };
    const hardy = {
      ...YARD,
      features: [{ ...LEMON, plant: 'tough' } as Feature, roof],
      plants: [{ ...plantRowOf(YARD, 'lemon')!, id: 'tough', name: 'Tough', heatLimit: 90 }],
    };
    // What its leaves bear does not save its roots.
    expect(stepsOf(hardy).map(({ id }) => id)).toEqual(['wrap']);
    const [pot, ...rest] = hardy.features;
    expect(stepsOf({ ...hardy, features: [{ ...pot, container: false } as Feature, ...rest] })).toEqual([]);
  });

  test('two pots never go to the same place', () => {
    const moved = step(
      stepsOf(yardPlan([TOWER, LEMON, { ...LEMON, id: 'second', name: 'Second', at: [9, 4] } as Feature])),
      'move',
    );
    const places = (moved?.moves ?? []).map(({ at }) => at);
    expect(places).toHaveLength(2);
    expect(Math.hypot(places[0][0] - places[1][0], places[0][1] - places[1][1])).toBeGreaterThanOrEqual(1 - 1e-9);
  });
});
