import { describe, expect, test } from 'vitest';
import { demoPlan } from '../../../../engine/index.ts';
import type { Feature, FeatureOf, Plan } from '../../../../engine/index.ts';
import { YARD_EDGE, gripsOf, takeGrip } from '../../../../web/map/drawing/grips.ts';
import type { Grip } from '../../../../web/map/drawing/grips.ts';

const yard: Plan = {
  ...demoPlan('courtyard'),
  options: [],
  features: [
    {
      id: 'wall',
      kind: 'wall',
      path: [
        [0, 0],
        [0, 8],
      ],
      height: 1.8,
      thickness: 0.2,
    },
    {
      id: 'bed',
      kind: 'bed',
      outline: [
        [2, 2],
        [6, 2],
        [6, 5],
        [2, 5],
      ],
      plantHeight: 0.5,
    },
    { id: 'tree', kind: 'tree', at: [5, 6], height: 5, crownWidth: 4, crownBase: 1.5, openness: 0.2 },
    { id: 'roof', kind: 'canopy', center: [4, 5], length: 3, width: 2, turn: 90, height: 2.2, density: 0.5 },
  ],
};

const feature = <K extends Feature['kind']>(plan: Plan, kind: K) =>
  plan.features.find((each) => each.kind === kind) as FeatureOf<K>;
const grip = (id: string, part: Grip['part'], index?: number): Grip =>
  gripsOf(
    yard.features.find((each) => each.id === id)!,
    0.1,
    true,
  ).find((each) => each.part === part && (index === undefined || ('index' in each && each.index === index)))!;

describe('taking a grip somewhere', () => {
  test('by a corner moves that corner alone, and shares all other features with the plan before', () => {
    const next = takeGrip(yard, 'bed', grip('bed', 'corner', 2), [7, 5.5]);
    expect(feature(next, 'bed').outline).toEqual([
      [2, 2],
      [6, 2],
      [7, 5.5],
      [2, 5],
    ]);
    expect(next.features[0]).toBe(yard.features[0]);
  });

  test('by the middle of a side makes a corner there', () => {
    const next = takeGrip(yard, 'wall', grip('wall', 'new corner'), [1, 4]);
    expect(feature(next, 'wall').path).toEqual([
      [0, 0],
      [1, 4],
      [0, 8],
    ]);
  });

  test('by its body moves the whole', () => {
    const next = takeGrip(yard, 'bed', { part: 'whole', at: [6, 5] }, [7.25, 4.5]);
    expect(feature(next, 'bed').outline).toEqual([
      [3.25, 1.5],
      [7.25, 1.5],
      [7.25, 4.5],
      [3.25, 4.5],
    ]);
  });

  test('by the grip beside a crown makes it as wide as twice the way from the trunk, less how far the grip stands off', () => {
    const { at, crownWidth } = feature(yard, 'tree');
    const beside = grip('tree', 'width');
    expect(beside.at[0] - at[0] - crownWidth / 2).toBeCloseTo(0.2, 9);
    expect(feature(takeGrip(yard, 'tree', beside, [at[0] + 1.7, at[1]]), 'tree').crownWidth).toBe(3);
  });

  test('a round thing has no grip until its size is to be changed: a finger on it moves it', () => {
    expect(gripsOf(feature(yard, 'tree'), 0.1, false)).toEqual([]);
  });

  test('by a roof’s corner leaves the opposite corner where it was', () => {
    const corners = gripsOf(feature(yard, 'canopy'), 0.1, false).filter(({ part }) => part === 'roof corner');
    const [first, , opposite] = corners;
    const to = [first!.at[0] + 0.5, first!.at[1] + 0.25] as const;
    const next = takeGrip(yard, 'roof', first!, to);
    const after = gripsOf(feature(next, 'canopy'), 0.1, false).filter(({ part }) => part === 'roof corner');
    const near = (p: readonly [number, number]) =>
      after.some(({ at }) => Math.hypot(at[0] - p[0], at[1] - p[1]) < 0.002);
    expect(near(opposite!.at)).toBe(true);
    expect(near(to)).toBe(true);
    expect(feature(next, 'canopy').turn).toBe(90);
  });

  test('by the grip of its height hangs a roof as much higher as it is drawn up the paper, and never underground', () => {
    const height = grip('roof', 'height');
    expect(feature(takeGrip(yard, 'roof', height, [height.at[0] + 2, height.at[1] + 0.4]), 'canopy')).toMatchObject({
      height: 2.6,
      center: [4, 5],
    });
    expect(feature(takeGrip(yard, 'roof', height, [height.at[0], height.at[1] - 9]), 'canopy').height).toBeGreaterThan(
      0,
    );
  });

  test('by the grip of its tilt lifts the front edge alone', () => {
    const rise = grip('roof', 'rise');
    expect(feature(takeGrip(yard, 'roof', rise, [rise.at[0], rise.at[1] + 0.3]), 'canopy')).toMatchObject({
      height: 2.2,
      rise: 0.3,
    });
  });

  test('by an edge hangs a drop as deep as it is drawn outwards, no deeper than the ground; drawn back it is gone', () => {
    const front = gripsOf(feature(yard, 'canopy'), 0.1, false).find(
      (each) => each.part === 'drop' && each.side === 'front',
    )!;
    // Turned by 90°, the front edge faces along +x, 1.5 m from the middle.
    expect(front.at[0]).toBeCloseTo(5.5, 9);
    const hung = takeGrip(yard, 'roof', front, [5.5 + 0.9, 5.7]);
    expect(feature(hung, 'canopy').drops).toEqual([{ side: 'front', depth: 0.9, density: 0.5 }]);
    expect(feature(takeGrip(yard, 'roof', front, [12, 5]), 'canopy').drops?.[0]?.depth).toBeLessThanOrEqual(2.2);
    expect(feature(takeGrip(hung, 'roof', front, [5.5, 5]), 'canopy').drops).toBeUndefined();
  });

  test('by the turning grip turns clockwise by whole degrees, drawn to every fifteenth', () => {
    const turn = grip('roof', 'turn');
    expect(feature(takeGrip(yard, 'roof', turn, [4 + 3, 5 + 0.05]), 'canopy').turn).toBe(180);
    const quarter = feature(takeGrip(yard, 'bed', grip('bed', 'turn'), [9, 3.5]), 'bed').outline;
    expect(quarter[0]![0]).toBeCloseTo(2.5, 9);
    expect(quarter[0]![1]).toBeCloseTo(5.5, 9);
  });

  test('of the yard’s edge moves its corner', () => {
    const next = takeGrip(yard, YARD_EDGE, { part: 'corner', index: 1, at: yard.site.boundary[1]! }, [12, 0.5]);
    expect(next.site.boundary[1]).toEqual([12, 0.5]);
    expect(next.features).toBe(yard.features);
  });

  test('to where it is changes nothing', () => {
    expect(takeGrip(yard, 'bed', { part: 'whole', at: [6, 5] }, [6, 5])).toBe(yard);
  });
});
