import { expect, test } from 'vitest';
import { hungFrom } from '../../../../../engine/advice/site/refine/hang.ts';
import { siteOf } from '../../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../../engine/advice/site/types.ts';
import { canopyEdge } from '../../../../../engine/plan/geometry/cloth-shapes.ts';
import { distanceToPath } from '../../../../../engine/plan/geometry/shapes.ts';
import type { Canopy, Feature, Plan } from '../../../../../engine/plan/types.ts';
import { valueOf } from '../../../../parts/outcome.ts';
import { yardPlan } from '../../../load/yard-plan.ts';
import { TENDER } from '../small-plans.ts';

const WALL: Feature = {
  id: 'wall',
  kind: 'wall',
  path: [
    [0.5, 0],
    [0.5, 8],
  ],
  height: 2.6,
  thickness: 0.2,
  holdsCloth: true,
};
const SHRUB: Feature = { id: 'shrub', kind: 'plant', at: [1.8, 4], height: 1.1, spread: 0.8, plant: 'tender' };
const ROOF: Canopy = {
  id: 'r',
  kind: 'canopy',
  center: [2, 4],
  length: 2.5,
  width: 2,
  turn: 30,
  height: 2.2,
  density: 0.5,
};
const YARD: Plan = yardPlan([WALL, SHRUB], { plants: [TENDER] });
const REQUEST: SiteRequest = {
  kinds: ['roof'],
  sizes: [{ length: 2.5, width: 2 }],
  heights: [2.2],
  densities: [0.5],
  step: 0.5,
  turnStep: 45,
  keepLight: false,
};

test('a roof near a wall that may hold it is hung either way round, its back a hand’s breadth off the face', () => {
  const hung = hungFrom(ROOF, YARD);
  expect(hung.map(({ length }) => length)).toEqual([2.5, 2]);
  for (const roof of hung) {
    for (const [x, y] of canopyEdge(roof, 'back')) {
      const gap = distanceToPath([x, y], WALL.kind === 'wall' ? WALL.path : []) - 0.1;
      expect(gap).toBeGreaterThanOrEqual(0.1);
      expect(gap).toBeLessThan(0.11);
    }
    expect(roof.onWall).toBe(true);
    expect(roof.center[0]).toBeGreaterThan(0.5);
  }
  const { holdsCloth: _, ...bare } = WALL as Extract<Feature, { kind: 'wall' }>;
  expect(hungFrom(ROOF, { ...YARD, features: [bare, SHRUB] })).toEqual([]);
  expect(hungFrom({ ...ROOF, center: [8, 4] }, YARD)).toEqual([]);
});

test('the search offers it for less money than the same on posts, only where the plan says that a wall may hold it', () => {
  const isHung = (plan: Plan) =>
    valueOf(siteOf(plan, REQUEST)).options.filter(({ features }) =>
      features.some((cloth) => cloth.kind === 'canopy' && cloth.onWall === true),
    );
  const [hung] = isHung(YARD);
  expect(hung.cost).not.toBeNull();
  expect(hung.spared).toBeGreaterThan(0);
  const bare = {
    ...YARD,
    features: YARD.features.map((one) => (one.id === 'wall' ? { ...one, holdsCloth: undefined } : one)),
  };
  expect(isHung(bare as Plan)).toEqual([]);
  const onPosts = valueOf(siteOf(bare as Plan, REQUEST)).options;
  expect(hung.cost ?? Infinity).toBeLessThan(Math.max(...onPosts.map(({ cost }) => cost ?? 0)));
});
