import { describe, expect, test } from 'vitest';
import type { Feature } from '../../../engine/plan/types.ts';
import { buildScene, stateOf } from '../../../engine/scene/build.ts';
import { emptyPlan } from '../cast/random-plans.ts';

describe('buildScene', () => {
  test('walls, hedges, buildings, trees, canopies, screens and what grows 0.6 m high cast, in the plan’s order', () => {
    const features: Feature[] = [
      {
        id: 'bed',
        kind: 'bed',
        outline: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        plantHeight: 0.5,
      },
      {
        id: 'screen',
        kind: 'screen',
        path: [
          [0, 0],
          [1, 0],
        ],
        height: 2,
        density: 0.5,
      },
      { id: 'pot', kind: 'plant', at: [0, 0], height: 1, spread: 1, container: true },
      { id: 'canopy', kind: 'canopy', center: [0, 0], length: 2, width: 3, height: 2, density: 0.5 },
      {
        id: 'keep',
        kind: 'keepout',
        outline: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        blocks: ['posts'],
      },
      { id: 'tree', kind: 'tree', at: [0, 0], height: 4, crownWidth: 3, crownBase: 1, openness: 0.2 },
      { id: 'eye', kind: 'eye', path: [[0, 0]], height: 1.6 },
      {
        id: 'house',
        kind: 'building',
        outline: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        height: 3,
      },
      { id: 'reading', kind: 'reading', at: [0, 0], when: '2026-07-01T15:00' },
      {
        id: 'hedge',
        kind: 'hedge',
        path: [
          [0, 0],
          [1, 0],
        ],
        height: 1,
        thickness: 0.5,
      },
      {
        id: 'wall',
        kind: 'wall',
        path: [
          [0, 0],
          [1, 0],
        ],
        height: 1,
        thickness: 0.2,
      },
    ];
    const { states } = buildScene(emptyPlan(features));
    expect(states.map((occluders) => occluders.map(({ id }) => id))).toEqual([
      ['screen', 'pot', 'canopy', 'tree', 'house', 'hedge', 'wall'],
    ]);
    expect(states[0].map(({ solids }) => solids.map(({ kind }) => kind))).toEqual([
      ['cloth'],
      ['round'],
      ['cloth'],
      ['round', 'column'],
      ['prism'],
      ['prism'],
      ['prism'],
    ]);
  });

  test('walls are opaque and hedges pass 5 % unless they say otherwise', () => {
    const opennessOf = (feature: Feature) => {
      const [solid] = buildScene(emptyPlan([feature])).states[0][0].solids;
      return solid.kind === 'prism' ? solid.openness : null;
    };
    const hedge: Feature = {
      id: 'h',
      kind: 'hedge',
      path: [
        [0, 0],
        [1, 0],
      ],
      height: 1,
      thickness: 0.5,
    };
    expect(opennessOf(hedge)).toBe(0.05);
    expect(opennessOf({ ...hedge, openness: 0.3 })).toBe(0.3);
    expect(opennessOf({ ...hedge, kind: 'wall' })).toBe(0);
    expect(opennessOf({ ...hedge, kind: 'wall', openness: 0.4 })).toBe(0.4);
  });
});

describe('yearly states', () => {
  const tree: Feature = {
    id: 't',
    kind: 'tree',
    at: [0, 0],
    height: 4,
    crownWidth: 3,
    crownBase: 1,
    openness: 0.2,
    leafless: { from: '12-01', to: '03-01', openness: 0.7 },
  };
  const canopy: Feature = {
    id: 'c',
    kind: 'canopy',
    center: [0, 0],
    length: 2,
    width: 3,
    height: 2,
    density: 0.5,
    up: { from: '06-10', to: '08-31' },
  };
  const screen: Feature = {
    id: 's',
    kind: 'screen',
    path: [
      [0, 0],
      [1, 0],
    ],
    height: 2,
    density: 0.5,
  };
  const scene = buildScene(emptyPlan([tree, canopy, screen]));

  test('days with the same trees bare and the same cloth up share a state', () => {
    expect(scene.states).toHaveLength(3);
    const days = ['12-01', '02-29', '03-01', '03-02', '06-09', '06-10', '08-31', '09-01', '11-30'];
    expect(days.map((day) => stateOf(scene, day))).toEqual([0, 0, 0, 1, 1, 2, 2, 1, 1]);
  });

  test('a state holds what stands then; what does not change is the same object in all', () => {
    const [winter, spring, summer] = scene.states;
    expect([winter, spring, summer].map((occluders) => occluders.map(({ id }) => id))).toEqual([
      ['t', 's'],
      ['t', 's'],
      ['t', 'c', 's'],
    ]);
    const opennesses = scene.states.map(
      ([
        {
          solids: [crown, trunk],
        },
      ]) => [crown, trunk].map((solid) => ('openness' in solid ? solid.openness : null)),
    );
    expect(opennesses).toEqual([
      [0.7, 0],
      [0.2, 0],
      [0.2, 0],
    ]);
    expect(winter[1]).toBe(summer[2]);
    expect(spring[0]).toBe(summer[0]);
  });

  test('a day that is none is refused by name', () => {
    expect(() => stateOf(scene, '02-30')).toThrow('"02-30"');
  });
});
