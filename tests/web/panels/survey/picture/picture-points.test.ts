import fc from 'fast-check';
import { expect, test } from 'vitest';
import { turned } from '../../../../../engine/index.ts';
import type { PlanPoint, Underlay } from '../../../../../engine/index.ts';
import { pixelAt } from '../../../../../web/panels/survey/picture/picture-points.ts';

const SIZE = { width: 1600, height: 1000 };
const underlay = (turn: number): Underlay => ({ image: '', at: [2, 3], width: 16, turn, opacity: 1 });

test('a picture of 100 pixels a metre: its lower left corner, a point up and right, a point beside it', () => {
  expect(pixelAt(underlay(0), SIZE, [2, 3])).toEqual([0, 1000]);
  expect(pixelAt(underlay(0), SIZE, [5, 7])).toEqual([300, 600]);
  expect(pixelAt(underlay(0), SIZE, [1.9, 7])).toBe(null);
});

test('turned a quarter clockwise about its lower left corner, its foot runs down and its left side to the right', () => {
  // A metre along the foot is a metre down the plan, a metre up the picture a metre right.
  expect(pixelAt(underlay(90), SIZE, [2 + 4, 3 - 3])).toEqual([300, 600]);
});

test('however it is turned, a pixel is found again where it was laid', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1600 }),
      fc.integer({ min: 0, max: 1000 }),
      fc.integer({ min: -180, max: 180 }),
      (x, y, turn) => {
        const lies: PlanPoint = [2 + x / 100, 3 + (1000 - y) / 100];
        expect(pixelAt(underlay(turn), SIZE, turned(lies, [2, 3], turn))).toEqual([x, y]);
      },
    ),
  );
});
