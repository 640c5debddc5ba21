import { describe, expect, it } from 'vitest';
import { cameBy, cameByWords } from '../../../../engine/load/verdict/came-by.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { compassWord } from '../../../../engine/plan/words/compass-word.ts';
import { namedInside } from '../../../../engine/plan/words/names.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { yardPlan } from '../yard-plan.ts';

const FEATURES: readonly Feature[] = [
  {
    id: 'wall',
    kind: 'wall',
    name: 'Low wall',
    path: [
      [0, -30],
      [0, 30],
    ],
    height: 2,
    thickness: 0.2,
  },
  { id: 'roof', kind: 'canopy', name: 'My roof', center: [9, 4], length: 4, width: 4, height: 2.5, density: 0.5 },
  {
    id: 'thin',
    kind: 'hedge',
    name: 'Ana’s hedge',
    path: [
      [4, -30],
      [4, 1],
    ],
    height: 9,
    thickness: 0.5,
    openness: 0.4,
  },
];

function came(
  features: readonly Feature[],
  point: readonly [number, number, number],
  azimuth: number,
  altitude: number,
) {
  const plan = yardPlan(features);
  const found = cameBy(buildScene(plan), plan, point, azimuth, altitude, '06-21');
  return [found, cameByWords(plan, found)] as const;
}

describe('how the sun reaches a point', () => {
  it('over a wall that stands lower than it', () => {
    // The wall’s top stands at atan(1.5/2.9) = 27°.
    expect(came(FEATURES, [3, 10, 0.5], 270, 40)).toEqual([{ how: 'over', id: 'wall' }, 'coming over the low wall']);
  });

  it('not over a wall far below it', () => {
    expect(came(FEATURES, [3, 10, 0.5], 270, 75)[1]).toBe('with nothing in its way');
  });

  it('in under a roof', () => {
    expect(came(FEATURES, [9, 4, 0.8], 270, 30)).toEqual([{ how: 'under', id: 'roof' }, 'coming in under my roof']);
  });

  it('thinned through a hedge', () => {
    expect(came(FEATURES, [6, -5, 0.5], 270, 30)).toEqual([
      { how: 'through', id: 'thin' },
      'coming thinned through Ana’s hedge',
    ]);
  });

  it('through the thing that takes most of it, where it comes through two', () => {
    const hedge = (id: string, x: number, openness: number): Feature => ({
      id,
      kind: 'hedge',
      path: [
        [x, -30],
        [x, 30],
      ],
      height: 9,
      thickness: 0.5,
      openness,
    });
    // Drawn in either order, near or far: the thicker is named.
    for (const order of [0, 1]) {
      for (const [near, far] of [
        [0.4, 0.7],
        [0.7, 0.4],
      ]) {
        const both = [hedge(`passes ${near}`, 4, near), hedge(`passes ${far}`, 2, far)];
        expect(came(order === 0 ? both : both.toReversed(), [6, 4, 0.5], 270, 30)[0]).toEqual({
          how: 'through',
          id: 'passes 0.4',
        });
      }
    }
  });

  it('past the end of a wall', () => {
    const short: Feature = {
      id: 'short',
      kind: 'wall',
      name: 'Garage',
      path: [
        [0, 6],
        [0, 20],
      ],
      height: 9,
      thickness: 0.2,
    };
    expect(came([short], [5, 5.5, 0.5], 270, 30)).toEqual([{ how: 'past', id: 'short' }, 'coming past the garage']);
  });
});

describe('names in a sentence', () => {
  const named = (name?: string) =>
    namedInside(
      yardPlan([
        {
          id: 'x7',
          kind: 'wall',
          name,
          path: [
            [0, 0],
            [1, 0],
          ],
          height: 1,
          thickness: 0.1,
        },
      ]),
      'x7',
    );

  it('stand as people would say them', () => {
    expect(named('Steel fence on the lane')).toBe('the steel fence on the lane');
    expect(named('The old wall')).toBe('the old wall');
    expect(named('Wall to Maria')).toBe('the Wall to Maria');
    expect(named()).toBe('the wall x7');
  });

  it('bearings become the nearest of eight words, all the way round', () => {
    expect([0, 22, 23, 180, 337, 338, 360, -90].map(compassWord)).toEqual([
      'north',
      'north',
      'north-east',
      'south',
      'north-west',
      'north',
      'north',
      'west',
    ]);
  });
});
