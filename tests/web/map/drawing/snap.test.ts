import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onGrid, snap } from '../../../../web/map/drawing/snap.ts';
import type { SnapTo } from '../../../../web/map/drawing/snap.ts';

const nothing: SnapTo = { lines: [], drawn: [], reach: 0.2 };
const fence = {
  lines: [
    [
      [1, 2],
      [1, 9],
      [6, 9],
    ],
  ],
  drawn: [],
  reach: 0.2,
} as const;

describe('where a drawn point lands', () => {
  test('on open ground: on the 5 cm grid', () => {
    expect(snap([3.412, 7.089], nothing)).toEqual({ at: [3.4, 7.1], kind: 'grid' });
  });

  test('near a corner: on the corner, even off the grid', () => {
    const odd = {
      ...nothing,
      lines: [
        [
          [2.337, 4.123],
          [5, 4.123],
        ],
      ],
    } as const;
    expect(snap([2.4, 4.2], odd)).toEqual({ at: [2.337, 4.123], kind: 'corner' });
  });

  test('near an edge: on it, 5 cm by 5 cm from its end', () => {
    expect(snap([1.13, 5.52], fence)).toMatchObject({ at: [1, 5.5], kind: 'edge' });
  });

  test('the first point of the thing being drawn draws the last one to itself', () => {
    expect(
      snap([0.1, -0.1], {
        ...nothing,
        drawn: [
          [0, 0],
          [4, 0],
          [4, 3],
        ],
      }),
    ).toEqual({ at: [0, 0], kind: 'corner' });
  });

  test('nearly across or up from the last point: exactly so', () => {
    expect(snap([7.03, 2.11], { ...nothing, drawn: [[1, 2]] })).toMatchObject({ at: [7.05, 2], kind: 'right angle' });
    expect(snap([0.9, -3.48], { ...nothing, drawn: [[1, 2]] })).toMatchObject({ at: [1, -3.5], kind: 'right angle' });
  });

  test('nearly square to a slanting leg: exactly square, its length on the grid', () => {
    const { at, kind } = snap([0.95, 7.05], {
      ...nothing,
      drawn: [
        [0, 0],
        [4, 3],
      ],
    });
    expect(kind).toBe('right angle');
    expect((at[0] - 4) * 4 + (at[1] - 3) * 3).toBeCloseTo(0, 2);
    expect(Math.hypot(at[0] - 4, at[1] - 3)).toBeCloseTo(5.05, 3);
  });

  test('a point never lands farther off than the reach or half a diagonal of the grid', () => {
    const near = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(near, near, fc.double({ min: 0.05, max: 0.6, noNaN: true }), (x, y, reach) => {
        const { at } = snap([x, y], {
          ...fence,
          drawn: [
            [-3, 4],
            [2, 5],
          ],
          reach,
        });
        expect(Math.hypot(at[0] - x, at[1] - y)).toBeLessThanOrEqual(Math.hypot(reach, 0.026) + 0.036);
      }),
      { seed: 7 },
    );
  });

  test('the grid keeps no noise of binary fractions', () => {
    expect(onGrid([0.30000000000000004, -1e-9])).toEqual([0.3, 0]);
  });
});
