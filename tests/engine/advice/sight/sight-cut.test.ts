import { expect, test } from 'vitest';
import { sightCuts } from '../../../../engine/advice/sight/sight-cut.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Plan } from '../../../../engine/plan/types.ts';

const demo = demoPlan('courtyard');

/**
 * A wall 1.8 m high at x = 0, somebody 1.6 m tall 8 m before it, and a roof whose near edge is 1 m and whose far edge
 * is 3 m behind it.
 */
function yardWith(height: number): { readonly plan: Plan; readonly roof: Canopy } {
  const roof: Canopy = {
    id: 'roof',
    kind: 'canopy',
    center: [2, 5],
    length: 2,
    width: 2,
    turn: 0,
    height,
    density: 0.5,
  };
  const features: Plan['features'] = [
    {
      id: 'wall',
      kind: 'wall',
      path: [
        [0, 0],
        [0, 10],
      ],
      height: 1.8,
      thickness: 0.02,
    },
    { id: 'lane', kind: 'eye', path: [[-8, 5]], height: 1.6 },
    roof,
  ];
  return {
    plan: {
      ...demo,
      site: {
        ...demo.site,
        boundary: [
          [0, 0],
          [11, 0],
          [11, 10],
          [0, 10],
        ],
      },
      features,
      options: [],
    },
    roof,
  };
}

test('a roof shows by what stands above the line over the wall, and the line that shows most is the one drawn', () => {
  // By similar triangles: over the wall's top the line has risen 0.2 m in 8 m, so 1 m behind the wall it stands at
  // 1.825 m.
  const { plan, roof } = yardWith(2.3);
  const [cut] = sightCuts(plan, roof);
  expect(cut).toMatchObject({ eye: 'lane', eyeHeight: 1.6, top: 2.3, hidden: false });
  expect(cut.shows).toBeCloseTo(2.3 - (1.6 + (0.2 * 9) / 8), 2);
  expect(cut.lineAt).toBeCloseTo(1.6 + (0.2 * 9) / 8, 2);
  expect(cut.far).toBeCloseTo(9, 6);
  expect(cut.between[0].along).toBeCloseTo(8, 1);
  expect(cut.between.every(({ top }) => top === 1.8)).toBe(true);
});

test('a roof below the line over the wall is not visible', () => {
  const { plan, roof } = yardWith(1.8);
  expect(sightCuts(plan, roof)).toMatchObject([{ hidden: true, shows: 0 }]);
});

test('without onlookers there is nothing to draw', () => {
  const { plan, roof } = yardWith(2.3);
  expect(sightCuts({ ...plan, features: plan.features.filter(({ kind }) => kind !== 'eye') }, roof)).toEqual([]);
});

test('the wall that a roof hangs from stands behind it, not between it and who looks', () => {
  const { plan } = yardWith(2.3);
  const eye: Plan['features'][number] = { id: 'lane', kind: 'eye', path: [[-2, -4]], height: 1.6 };
  const house: Plan['features'][number] = {
    id: 'house',
    kind: 'building',
    outline: [
      [0, 7.3152],
      [9.144, 7.3152],
      [9.144, 12],
      [0, 12],
    ],
    height: 3.2,
  };
  // 8 ft deep, its higher edge along the house.
  const hung: Canopy = {
    id: 'roof',
    kind: 'canopy',
    center: [3.9, 7.3152 - 1.2192],
    length: 2.4384,
    width: 3.048,
    height: 2.5908,
    rise: -0.3048,
    turn: 180,
    density: 0.4,
    onWall: true,
  };
  const [cut] = sightCuts({ ...plan, features: [eye, house, hung] }, hung);
  expect(cut).toMatchObject({ hidden: false, top: 2.5908, between: [] });
});
