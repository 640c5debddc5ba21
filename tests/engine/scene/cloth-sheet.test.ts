import { describe, expect, test } from 'vitest';
import { lidMeets, clothMeets } from '../../../engine/scene/cloth-sheet.ts';
import { planDirection } from '../../../engine/scene/direction.ts';
import type { Lid, ClothSheet } from '../../../engine/scene/solids.ts';

const upright: ClothSheet = { kind: 'cloth', corner: [-2, 1, 0.5], u: [4, 0, 0], v: [0, 0, 1.5], share: 0.4 };

describe('clothMeets', () => {
  test('within both spans, edges included, and only ahead', () => {
    const north = planDirection(0, 45, 0);
    // One metre off and as much up.
    expect(clothMeets(upright, [0, 0, 0.99], north)).toBe(true);
    expect(clothMeets(upright, [0, 0, 1.01], north)).toBe(false);
    expect(clothMeets(upright, [1.99, 0, 0.2], north)).toBe(true);
    expect(clothMeets(upright, [2.01, 0, 0.2], north)).toBe(false);
    expect(clothMeets(upright, [0, 2, 0.2], north)).toBe(false);
    expect(clothMeets(upright, [0, 1.5, 0.2], planDirection(180, 45, 0))).toBe(true);
  });

  test('not a beam along its own plane, nor one that starts on it', () => {
    expect(clothMeets(upright, [-3, 1, 0.6], planDirection(90, 10, 0))).toBe(false);
    expect(clothMeets(upright, [0, 1, 1], planDirection(0, 30, 0))).toBe(false);
    expect(clothMeets(upright, [0, 1 - 1e-8, 1], planDirection(0, 30, 0))).toBe(true);
  });

  test('a sloped parallelogram, from below and from its side', () => {
    const sloped: ClothSheet = { kind: 'cloth', corner: [0, 0, 2], u: [3, 0, 0.9], v: [1, 2, 0], share: 0 };
    // Straight up over (2, 1): s = 0.5, t = 0.5, 2.45 m high.
    expect(clothMeets(sloped, [2, 1, 2.44], planDirection(0, 90, 0))).toBe(true);
    expect(clothMeets(sloped, [2, 1, 2.46], planDirection(0, 90, 0))).toBe(false);
    expect(clothMeets(sloped, [0.4, 1, 0], planDirection(0, 90, 0))).toBe(false);
  });
});

test('a lid is met where the beam reaches its height over any of its rings', () => {
  const lid: Lid = {
    kind: 'lid',
    rings: [
      [
        [0, 0],
        [2, 0],
        [2, 1],
        [0, 1],
      ],
      [
        [5, 0],
        [6, 0],
        [6, 1],
        [5, 1],
      ],
    ],
    height: 3,
    reflects: null,
  };
  const east = planDirection(90, 45, 0);
  expect([-1.5, -0.5, 2.5, 4.2].map((x) => lidMeets(lid, [x, 0.5, 1], east))).toEqual([true, true, false, false]);
  expect([3.5, 4.5].map((x) => lidMeets(lid, [x, 0.5, 1], east))).toEqual([true, false]);
  expect(lidMeets(lid, [1, 0.5, 3], east)).toBe(false);
});
