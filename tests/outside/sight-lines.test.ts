/**
 * Sight lines over a wall against the similar triangles of any surveying primer (closed form): an eye e high, D before
 * a wall w high, sees over it, d behind it, what stands above z = e + (w − e)(D + d)/D.
 */

import { describe, expect, test } from 'vitest';
import { hiddenHeightAt, seenAbove, sightLinesOf } from '../../engine/advice/sight/hidden-height.ts';
import { demoPlan } from '../../engine/plan/demos/index.ts';
import { yardPlan } from '../engine/load/yard-plan.ts';

/** A wall along x = 0 from −100 to 100 and an eye `before` it. */
function overWall(eye: number, before: number, wall: number) {
  return sightLinesOf(
    yardPlan([
      {
        id: 'wall',
        kind: 'wall',
        path: [
          [0, -100],
          [0, 100],
        ],
        height: wall,
        thickness: 0.01,
      },
      { id: 'walker', kind: 'eye', path: [[-before, 3]], height: eye },
    ]),
  );
}

describe('a line over a wall’s top', () => {
  // e, D, w, d, canopy's edge, z, part seen (0: hidden); worked by hand from the closed form.
  test.each([
    [1.6, 3, 1.8, 2, 2.2, 1.9333, 0.2667],
    [1.7, 2, 1.8, 1, 2.2, 1.85, 0.35],
    [1.5, 6, 1.8, 4, 2.2, 2.0, 0.2],
    [1.55, 4, 2.0, 3, 2.2, 2.3375, 0],
    [1.7, 10, 1.5, 2.5, 2.0, 1.45, 0.55],
    [1.7, 3, 1.7, 5, 1.9, 1.7, 0.2],
  ])('eye %f m, %f m before a wall of %f m: %f m behind it an edge at %f m', (e, D, w, d, edge, z, seen) => {
    const sight = overWall(e, D, w);
    expect(Math.abs(hiddenHeightAt(sight, [d, 3]).height - z)).toBeLessThan(0.01);
    expect(Math.abs(Math.max(0, seenAbove(sight, 0, [d, 3], edge)) - seen)).toBeLessThan(0.01);
  });

  test('wall 1.8 m, eye 1.6 m at 8 m: 1.80 m + 0.025 for each metre behind it', () => {
    const sight = overWall(1.6, 8, 1.8);
    for (const d of [0.5, 1, 5, 8, 14])
      expect(Math.abs(hiddenHeightAt(sight, [d, 3]).height - (1.8 + 0.025 * d))).toBeLessThan(0.01);
  });
});

test('in the lane yard a thing 4.5 m from the fence may be 2.10 m high; from upstairs 0.28 m at y = 15', () => {
  const lane = demoPlan('lane');
  const only = (id: string) =>
    sightLinesOf({ ...lane, features: lane.features.filter((feature) => feature.kind !== 'eye' || feature.id === id) });
  expect(Math.abs(hiddenHeightAt(only('lane'), [4.5, 15]).height - 2.1)).toBeLessThan(0.01);
  // The fence is 6 cm thick and its far face decides; the closed form has it without thickness.
  expect(Math.abs(hiddenHeightAt(only('upstairs'), [8, 15]).height - (4.4 - (2.6 / 12) * 19))).toBeLessThan(0.011);
  expect(hiddenHeightAt(sightLinesOf(lane), [4.5, 15]).eye).toBe('upstairs');
});
