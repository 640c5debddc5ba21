import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import {
  addFeature,
  changeFeature,
  duplicateFeature,
  featureOf,
  freshId,
  middleOf,
  moveFeature,
  removeFeature,
  setHow,
  turnFeature,
} from '../../../../engine/plan/edit/edit-feature.ts';
import { area, distance } from '../../../../engine/plan/geometry/shapes.ts';
import type { Bed, Plan } from '../../../../engine/plan/types.ts';

const plan = demoPlan('courtyard');
const ids = [...plan.features.map(({ id }) => id), 'lemon-roof', 'lemon-screen'];
const anyId = fc.constantFrom(...ids);
const metres = fc.integer({ min: -300, max: 300 }).map((cm) => cm / 100);
const seed = 99;

describe('edits of things drawn', () => {
  it('share everything that did not change, and leave the plan before untouched', () => {
    const before = JSON.stringify(plan);
    fc.assert(
      fc.property(anyId, metres, metres, (id, x, y) => {
        const next = moveFeature(plan, id, [x + 0.005, y]);
        expect(next).not.toBe(plan);
        expect(next.site).toBe(plan.site);
        expect(next.climate).toBe(plan.climate);
        const moved = next.features.filter((feature, index) => feature !== plan.features[index]);
        const inOptions = (next.options ?? []).filter((option, index) => option !== plan.options?.[index]);
        expect(moved.length + inOptions.length).toBe(1);
      }),
      { seed },
    );
    expect(JSON.stringify(plan)).toBe(before);
  });

  it('nothing to change gives the very same plan', () => {
    expect(moveFeature(plan, 'nobody', [1, 1])).toBe(plan);
    expect(moveFeature(plan, 'lemon', [0, 0])).toBe(plan);
    expect(changeFeature(plan, 'lemon', { height: 1.7 })).toBe(plan);
    expect(turnFeature(plan, 'house', 720)).toBe(plan);
    expect(removeFeature(plan, 'nobody')).toBe(plan);
    expect(duplicateFeature(plan, 'nobody', 'x', [1, 1])).toBe(plan);
  });

  it('a move there and back, a turn there and back, and four quarter turns come home', () => {
    const near = (a: Plan, b: Plan, id: string) =>
      expect(distance(middleOf(featureOf(a, id)!), middleOf(featureOf(b, id)!))).toBeLessThan(2e-3);
    fc.assert(
      fc.property(anyId, metres, metres, fc.integer({ min: 1, max: 359 }), (id, x, y, turn) => {
        near(moveFeature(moveFeature(plan, id, [x, y]), id, [-x, -y]), plan, id);
        near(turnFeature(turnFeature(plan, id, turn, [x, y]), id, -turn, [x, y]), plan, id);
        near(
          [1, 2, 3, 4].reduce((p) => turnFeature(p, id, 90), plan),
          plan,
          id,
        );
      }),
      { seed },
    );
  });

  it('a turn is clockwise, keeps areas, and turns a canopy with it', () => {
    const next = turnFeature(plan, 'herbs', 30);
    expect(area((featureOf(next, 'herbs') as Bed).outline)).toBeCloseTo(4 * 0.8, 3);
    expect(featureOf(turnFeature(plan, 'south-wall', 90, [0, 0]), 'south-wall')).toMatchObject({
      path: [
        [0, 0],
        [0, -11],
      ],
    });
    expect(featureOf(turnFeature(plan, 'lemon-roof', -30), 'lemon-roof')).toMatchObject({
      turn: 330,
      center: [9.6, 6.4],
    });
  });

  it('a key set to undefined goes, and so does the last thing known of a number', () => {
    expect(featureOf(changeFeature(plan, 'house', { eaves: undefined }), 'house')).not.toHaveProperty('eaves');
    const taped = setHow(plan, 'house', 'height', undefined);
    expect(featureOf(taped, 'house')).not.toHaveProperty('how');
    expect(featureOf(setHow(taped, 'house', 'eaves', { by: 'guess', pm: 0.1 }), 'house')).toHaveProperty('how', {
      eaves: { by: 'guess', pm: 0.1 },
    });
  });

  it('what is taken out is also forgotten by the options, so the plan stays right', () => {
    const next = removeFeature(plan, 'lemon');
    expect(next.options?.find(({ id }) => id === 'C')?.moves).toEqual({});
    expect(checkPlan(next).filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(removeFeature(plan, 'lemon-screen').options?.[1].adds?.map(({ id }) => id)).toEqual(['lemon-low-roof']);
  });

  it('a copy has an id of its own', () => {
    const id = freshId(plan, 'lemon');
    expect(id).toBe('lemon-2');
    const next = duplicateFeature(plan, 'lemon', id, [-0.5, 0.25]);
    expect(featureOf(next, id)).toMatchObject({ at: [9.1, 6.65], height: 1.7 });
    expect(freshId(next, 'lemon')).toBe('lemon-3');
    expect(freshId(plan, 'wall')).toBe('wall');
    expect(addFeature(plan, featureOf(next, id)!).features).toHaveLength(plan.features.length + 1);
  });
});
