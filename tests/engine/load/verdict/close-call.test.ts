import { expect, test } from 'vitest';
import { compareOptions } from '../../../../engine/advice/compare/compare.ts';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import type { PlantLoad } from '../../../../engine/load/types.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const LIMITS = Array.from({ length: 15 }, (_, n) => 38 + 1.7 * n);
/** Just less than the 2 K that make a close call. [K] */
const ALMOST = 2 - 1e-6;

/** Lemons that differ in nothing but what their leaves bear, far apart, and one roof over them all. */
function orchard(change: number): Plan {
  const lemon = plantRowOf({}, 'lemon')!;
  const trees = LIMITS.map((_, n): Feature => ({
    id: `tree-${n}`,
    kind: 'plant',
    at: [6, 4 + 20 * n],
    height: 1.5,
    spread: 1,
    plant: `row-${n}`,
  }));
  return {
    ...yardPlan(trees, {
      plants: LIMITS.map((limit, n) => ({ ...lemon, id: `row-${n}`, name: `row ${n}`, heatLimit: limit + change })),
    }),
    options: [
      {
        id: 'roofs',
        adds: LIMITS.map((_, n) => ({
          id: `roof-${n}`,
          kind: 'canopy',
          center: [6, 4 + 20 * n],
          length: 4,
          width: 4,
          height: 2.4,
          density: 0.4,
        })),
      },
    ],
  };
}

const loadsOf = (change: number, units?: 'imperial'): PlantLoad[] => valueOf(plantLoadsOf(orchard(change), { units }));
const [asTold, cooler, warmer] = [loadsOf(0), loadsOf(ALMOST), loadsOf(-ALMOST)];
const wouldChange = asTold.map(({ verdict }, n) => cooler[n].verdict !== verdict || warmer[n].verdict !== verdict);

test('a close call is where a limit less than 2 K higher or lower gives another verdict, and nowhere else', () => {
  expect(asTold.map(({ close }) => close)).toEqual(wouldChange);
  expect(new Set(wouldChange).size).toBe(2);
  expect(new Set(asTold.map(({ verdict }) => verdict)).size).toBe(3);
});

test('its sentence says so there alone, in the units asked for', () => {
  const said = (loads: readonly PlantLoad[], words: string) => loads.map(({ sentence }) => sentence.includes(words));
  expect(said(asTold, 'A close call: 2 °C more or less would change this.')).toEqual(wouldChange);
  expect(said(loadsOf(0, 'imperial'), 'A close call: 4 °F more or less would change this.')).toEqual(wouldChange);
});

test('compared, an option says it of those whom it changes and whose verdict under it is one', () => {
  const [choice] = valueOf(compareOptions(orchard(0))).choices;
  const under = (change: number) => {
    const built = withOptions(orchard(change), ['roofs']);
    if (!built.ok) throw new Error('the option is there');
    return valueOf(plantLoadsOf(built.plan)).map(({ verdict }) => verdict);
  };
  const [told, higher, lower] = [under(0), under(ALMOST), under(-ALMOST)];
  const close = told.map((verdict, n) => higher[n] !== verdict || lower[n] !== verdict);
  expect(choice.plants.map(({ after }) => after?.close)).toEqual(close);
  const sentence = choice.sentences.find((each) => each.startsWith('A close call: 2 °C more or less')) ?? '';
  expect(choice.plants.map(({ name }) => new RegExp(`${name}(?![0-9])`, 'i').test(sentence))).toEqual(
    choice.plants.map(({ before, after }, n) => close[n] && before?.harm !== after?.harm),
  );
  expect(sentence).not.toBe('');
});
