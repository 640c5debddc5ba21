import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareOptions } from '../../../../engine/advice/compare/compare.ts';
import { clothArea } from '../../../../engine/advice/compare/cost.ts';
import type { ComparedChoice, CompareResult } from '../../../../engine/advice/compare/types.ts';
import { seenFrom } from '../../../../engine/advice/sight/seen.ts';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import { heatDaysOf } from '../../../../engine/load/leaf/heat-day.ts';
import { judgeLeaf } from '../../../../engine/load/leaf/judge.ts';
import { surroundingsAt } from '../../../../engine/load/leaf/surroundings-at.ts';
import { skyViewerOf } from '../../../../engine/load/light/sky-viewer.ts';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { plantPoints } from '../../../../engine/load/verdict/plant-points.ts';
import { plantFeatures, rowOf } from '../../../../engine/load/verdict/planted.ts';
import { worthOf } from '../../../../engine/plan/defaults.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { setSite } from '../../../../engine/plan/edit/plan.ts';
import type { Canopy, Feature, Plan, YardOption } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { sceneOf } from '../../../../engine/scene/scene-of.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import * as planted from '../planted.ts';
import { TOMATO } from '../planted.ts';

const ROOF: Canopy = {
  id: 'roof',
  kind: 'canopy',
  center: [6.2, 4.1],
  length: 3.1,
  width: 2.7,
  height: 2.3,
  density: 0.5,
};
const LEMON: Feature = { ...planted.LEMON, container: true, worth: 2 };
const OPTIONS: readonly YardOption[] = [
  { id: 'roof', adds: [ROOF] },
  { id: 'nothing', adds: [{ ...ROOF, id: 'clear', density: 0 }] },
  { id: 'black', adds: [{ ...ROOF, id: 'lid', density: 0.95 }] },
  { id: 'away', moves: { lemon: [1, 4.3] } },
];
const WALL: Feature = {
  id: 'west',
  kind: 'wall',
  path: [
    [0, 0],
    [0, 8],
  ],
  height: 2.4,
  thickness: 0.2,
};
const YARD: Plan = { ...yardPlan([WALL, LEMON, TOMATO]), options: OPTIONS };

const compared = (plan: Plan, ...choices: string[][]): CompareResult =>
  valueOf(compareOptions(plan, choices.length === 0 ? {} : { choices }));
const only = ({ choices }: CompareResult): ComparedChoice => choices[0];

describe('today against options', () => {
  const result = compared(YARD);
  const [roof, nothing, black, away] = result.choices;

  test('spared is Σ worth × harm before less after, as harm is defined', () => {
    const changed = withOptions(YARD, ['roof']);
    if (!changed.ok) throw new Error('the option is there');
    const sum = (plan: Plan) => valueOf(harmOf(plan)).reduce((total, { worth, harm }) => total + worth * harm, 0);
    expect(roof.spared).toBeCloseTo(sum(YARD) - sum(changed.plan), 9);
    expect(roof.spared).toBeGreaterThan(0);
    expect(roof.sparedShare).toBeCloseTo(roof.spared / sum(YARD), 9);
    expect(result.today.harm).toBeCloseTo(sum(YARD), 9);
  });

  test('cloth that stops nothing spares nothing and is as good as today; the denser roof spares more', () => {
    expect(nothing.spared).toBeCloseTo(0, 9);
    expect(nothing.asGoodAs).toContain('today');
    expect(black.spared).toBeGreaterThan(roof.spared);
    expect(result.ranked[0]).toBe('black');
  });

  test('a post in the path to a door is told with the best choice, as the build sheet tells it, and beats nothing', () => {
    const door: Feature = {
      id: 'door',
      kind: 'keepout',
      name: 'Path to the door',
      outline: [
        [7.2, 5],
        [8, 5],
        [8, 6.2],
        [7.2, 6.2],
      ],
      blocks: ['posts'],
    };
    const { choices, sentence } = compared({
      ...YARD,
      features: [...YARD.features, door],
      options: [OPTIONS[0], { id: 'aside', adds: [{ ...ROOF, id: 'aside-roof', center: [6.2, 3.2], density: 0.1 }] }],
    });
    const [inPath, aside] = choices;
    expect(inPath.inTheWay).toEqual([
      'Post P6 would stand in Path to the door: move the frame, or that, before you build.',
    ]);
    expect(inPath.sentences[0]).toBe(inPath.inTheWay[0]);
    expect(aside.inTheWay).toEqual([]);
    expect(aside.beatenBy).toBeNull();
    expect(sentence).toContain('Post P6 would stand in Path to the door');
  });

  test('cost is the build sheet’s, payoff is what is spared for each m² and each unit of money', () => {
    // Nobody says what it stands in: it is priced for the usual ground, as the search prices it.
    const built = sheetOf(setSite({ ...YARD, features: [...YARD.features, ROOF] }, { soil: 'garden' }), 'roof');
    if (!built.ok) throw new Error('the roof can be built');
    const { sheet } = built;
    expect(roof.cost.total).toBe(sheet.cost.total);
    expect(roof.cost.hours).toEqual(sheet.work.hours);
    expect(away.cost.hours).toEqual({ low: 0, high: 0 });
    expect(roof.clothArea).toBeCloseTo(3.1 * 2.7, 9);
    expect(roof.payoff.perSquareMetre).toBeCloseTo(roof.spared / (3.1 * 2.7), 9);
    expect(roof.payoff.perMoney).toBeCloseTo(roof.spared / (sheet.cost.total ?? NaN), 9);
  });

  test('a moved pot costs nothing and has no payoff for each m²; what it no longer shades is as if it were not there', () => {
    expect(away.cost.total).toBe(0);
    expect(away.payoff).toEqual({ perSquareMetre: null, perMoney: null });
    const tomato = away.plants.find(({ id }) => id === 'tomato')?.after?.harm ?? NaN;
    expect(Math.abs(tomato / (result.today.plants[1].before?.harm ?? NaN) - 1)).toBeLessThan(0.001);
  });

  test('too dark is said even of the choice that spares most', () => {
    expect(result.ranked[0]).toBe('black');
    expect(black.newlyTooDark).toEqual(['lemon']);
    expect(black.sentences.some((sentence) => sentence.startsWith('Too dark for Lemon:'))).toBe(true);
  });

  test('what costs as much and spares nothing is beaten, and says by which', () => {
    expect(nothing.beatenBy).not.toBeNull();
    expect(nothing.sentences.at(-1)).toContain(`In all, ${nothing.beatenBy} does as well or better for no more money`);
    expect(roof.beatenBy).toBeNull();
  });

  test('what it takes off is told of the plants that the choices serve, never of all that is planted', () => {
    expect(result.served).toContain('lemon');
    const off = (ids: readonly string[]): number => {
      const sum = (of: 'before' | 'after') =>
        roof.plants.reduce(
          (all, plant) => all + (ids.includes(plant.id) ? plant.worth * (plant[of]?.harm ?? 0) : 0),
          0,
        );
      return 1 - sum('after') / sum('before');
    };
    const own = roof.effect.plants.map(({ id }) => id);
    expect(own).toContain('lemon');
    expect(roof.effect.share).toBeCloseTo(off(own), 9);
    for (const { id, share } of roof.effect.plants) expect(share).toBeCloseTo(off([id]), 9);
    expect(roof.together?.share).toBeCloseTo(off(result.served), 9);
    expect(result.sentence).toMatch(/^black helps most.*: \d+ % less heat damage to the lemon.*, for about \d+ /);
    expect(result.choices.flatMap(({ sentences }) => sentences).join(' ')).not.toMatch(/K·h|\bharm\b|spares/);
  });

  test('every plant has its sides before and after', () => {
    const lemon = roof.plants.find(({ id }) => id === 'lemon');
    expect(lemon?.before?.sides.map(({ side }) => side)).toEqual(['top', 0, 45, 90, 135, 180, 225, 270, 315]);
    expect(lemon?.after?.sides[0].scorchDose ?? NaN).toBeLessThan(lemon?.before?.sides[0].scorchDose ?? NaN);
  });

  test('the plants’ weights come first', () =>
    expect(result.weights).toBe('What a plant counts: Lemon 2 times, every other once.'));
});

test('options tried together are both there', () => {
  const both = only(compared(YARD, ['roof', 'away']));
  expect(both.name).toBe('roof + away');
  expect(both.clothArea).toBeGreaterThan(0);
  expect(both.plants[0].after?.light.sunHours).not.toBeCloseTo(both.plants[0].before?.light.sunHours ?? NaN, 3);
});

test('an option that is not there, and a plan without options, are refused in words', () => {
  const missing = compareOptions(YARD, { choices: [['D']] });
  expect(missing.ok ? '' : missing.problems[0].message).toContain('There is no option "D"');
  const none = compareOptions(yardPlan([LEMON]));
  expect(none.ok ? '' : none.problems[0].message).toContain('this plan has no options');
});

test(
  'the lane yard’s screen is hidden from the lane and seen from upstairs; a roof at 2.3 m shows over the ' +
    'fence by 20 cm',
  () => {
    const lane = demoPlan('lane');
    const screen = lane.options?.[1].adds?.[0];
    const roof = lane.options?.[0].adds?.[0];
    if (screen?.kind !== 'screen' || roof?.kind !== 'canopy') throw new Error('the demo has them');
    expect(seenFrom(lane, [screen]).map(({ eye, hidden }) => [eye, hidden])).toEqual([
      ['lane', true],
      ['upstairs', false],
    ]);
    // Its near edge is at x = 3.0: 1.6 m + (0.2/2.97)·6 = 2.004 m is hidden there.
    expect(seenFrom(lane, [{ ...roof, height: 2.3 }])[0].shows).toBeCloseTo(2.3 - (1.6 + (0.2 / 2.97) * 6), 2);
  },
);

test('cloth area: a sloped roof, its drop, a screen on two legs', () => {
  expect(clothArea({ ...ROOF, rise: 0.7, drops: [{ side: 'left', depth: 1.1, density: 0.6 }] })).toBeCloseTo(
    2.7 * Math.hypot(3.1, 0.7) + 1.1 * 3.1,
    9,
  );
  expect(
    clothArea({
      id: 's',
      kind: 'screen',
      path: [
        [1, 1],
        [1, 4],
        [3, 4],
      ],
      bottom: 0.3,
      height: 1.7,
      density: 0.6,
    }),
  ).toBeCloseTo(5 * 1.4, 9);
});

test('more density never spares less', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 0.9, noNaN: true }),
      fc.double({ min: 0.01, max: 0.1, noNaN: true }),
      (density, more) => {
        const roofs = [density, density + more].map((each, k): YardOption => ({
          id: `d${k}`,
          adds: [{ ...ROOF, density: each }],
        }));
        const [thin, dense] = compared({ ...yardPlan([LEMON]), options: roofs }).choices;
        expect(dense.spared).toBeGreaterThanOrEqual(thin.spared - 1e-9);
      },
    ),
    { seed: 72, numRuns: 4 },
  );
});

/** Σ worth × harm where the sun comes as in one yard, and the sky and what glows are hidden as in another. */
function harmUnder(sunny: Plan, hidden: Plan): number {
  const days = valueOf(heatDaysOf(sunny, sceneOf(sunny)));
  const sky = skyViewerOf(sceneOf(hidden));
  const plants = plantFeatures(sunny).flatMap((plant) => (plant.kind === 'bed' ? [] : [plant]));
  const doses = plants.flatMap((plant) => {
    const row = rowOf(sunny, plant)!;
    const { points, own } = plantPoints(sunny, plant);
    return points.flatMap(({ point }) =>
      days.map((day) => {
        const around = surroundingsAt(sky, day, point, own);
        const { dose } = judgeLeaf(day.leaves('thirsty', row), day.caster.sharesAt(point, own), around, row.heatLimit);
        return (worthOf(plant) * dose) / points.length / days.length;
      }),
    );
  });
  return doses.reduce((sum, dose) => sum + dose, 0);
}

test('cloth to the north takes no sun and hides cool sky: it harms, the more so the more of it, and is said not to help', () => {
  const beside = (reach: number): Feature => ({
    ...ROOF,
    id: 'beside',
    center: [6, 4.65 + reach / 2],
    length: reach,
    width: 0.9,
    height: 1.7,
    density: 0.95,
  });
  const ONE = yardPlan([LEMON]);
  const told = [0.6, 3].map((reach) => {
    const cloth = beside(reach);
    const result = compared({ ...ONE, options: [{ id: 'n', adds: [cloth] }] });
    const choice = only(result);
    // All that it does, it does by the sky.
    const bySky = harmUnder(ONE, { ...ONE, features: [...ONE.features, cloth] });
    expect(choice.harm).toBeCloseTo(bySky, 9);
    expect(result.sentence).toBe('None of them helps: no plant gets less heat damage.');
    return choice;
  });
  expect(told[0].spared).toBeLessThan(-1e-3);
  expect(told[1].spared).toBeLessThan(told[0].spared);
});

test('whatever its turn and size, an option is told: what is spared is within what harms today, and parts add up (law)', () => {
  const turned = fc.record({
    turn: fc.integer({ min: 0, max: 359 }),
    size: fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 60 })),
    at: fc.tuple(fc.integer({ min: 20, max: 100 }), fc.integer({ min: 20, max: 60 })),
    isScreen: fc.boolean(),
  });
  fc.assert(
    fc.property(turned, ({ turn, size: [a, b], at: [x, y], isScreen }) => {
      const [dx, dy] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
      const [u, v] = [x / 10, y / 10];
      const cloth: Feature = isScreen
        ? {
            id: 'cloth',
            kind: 'screen',
            path: [
              [u, v],
              [u + (a / 10) * dx, v + (a / 10) * dy],
            ],
            bottom: 0.2,
            height: 1 + b / 40,
            density: 0.5,
          }
        : { ...ROOF, id: 'cloth', center: [u, v], length: a / 10, width: b / 10, turn };
      const choice = only(compared({ ...YARD, options: [{ id: 'cloth', adds: [cloth] }] }));
      const harm = choice.plants.reduce((sum, { worth, before }) => sum + worth * (before?.harm ?? 0), 0);
      const left = choice.plants.reduce((sum, { worth, after }) => sum + worth * (after?.harm ?? 0), 0);
      expect(choice.spared).toBeCloseTo(harm - left, 9);
      expect(choice.harm).toBeCloseTo(left, 9);
      // Cloth hides cool sky as well: that alone can harm, and no share of today's harm bounds it.
      expect(left).toBeLessThanOrEqual(harmUnder(YARD, { ...YARD, features: [...YARD.features, cloth] }) + 1e-9);
      expect(choice.spared).toBeLessThanOrEqual(harm);
      expect(choice.clothArea).toBeCloseTo(isScreen ? (a / 10) * (0.8 + b / 40) : (a * b) / 100, 1);
      expect([...choice.sentences, choice.name].every((text) => !/NaN|undefined|Infinity/.test(text))).toBe(true);
    }),
    { numRuns: 12, seed: 20261129 },
  );
});

test('after one option was changed, all are told as in a yard that was never seen', () => {
  const plan: Plan = { ...YARD, name: 'Compared before' };
  compared(plan);
  const changed: Plan = {
    ...plan,
    options: OPTIONS.map((option) => (option.id === 'roof' ? { ...option, adds: [{ ...ROOF, height: 2.6 }] } : option)),
  };
  expect(compared(changed)).toEqual(compared({ ...changed, name: 'Never seen' }));
  expect(compared(changed).choices[0].spared).not.toBeCloseTo(compared(plan).choices[0].spared, 3);
  const lower: Plan = {
    ...plan,
    features: plan.features.map((one) => (one.id === 'west' ? { ...WALL, height: 1 } : one)),
  };
  expect(compared(lower).today.harm).toBeGreaterThan(compared(plan).today.harm);
});
