import { describe, expect, test } from 'vitest';
import { directionsOf } from '../../../../engine/cast/passes.ts';
import { passesToward, viewOfDisc, viewOfOutline, windingOf } from '../../../../engine/cast/points/view.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { emptyPlan } from '../random-plans.ts';

const directions = directionsOf(buildScene(emptyPlan()), {
  count: 6,
  azimuth: Float64Array.of(0, 44, 46, 134, 136, 270),
  altitude: new Float64Array(6).fill(30),
  state: new Uint16Array(6),
});
const toward = (
  view: Parameters<typeof passesToward>[0],
  shares = new Float64Array(6).fill(1),
  stands: Uint8Array | null = null,
) => {
  const into = new Int32Array(6);
  return [...into.subarray(0, passesToward(view, directions, stands, shares, into))].sort((a, b) => a - b);
};
/** A square of 2 m whose nearer corners stand at 45° and 135°, 2 m east. */
const square = Float64Array.of(2, -2, 6, -2, 6, -2, 6, 2, 6, 2, 2, 2, 2, 2, 2, -2);

describe('what a point sees of a solid', () => {
  test('passes in its window', () => {
    expect(toward(viewOfOutline(square, 0, 0, 0, 100))).toEqual([2, 3]);
    // A disc of 3 m, its middle √18 m east: 45° to either side.
    expect(toward(viewOfDisc(Math.SQRT2 * 3, 0, 3, 0, 100))).toEqual([2, 3]);
  });

  test('none over its top where it is nearest, none under its foot where it is farthest', () => {
    const up = Math.tan(Math.PI / 6);
    expect(toward(viewOfOutline(square, 0, 0, 0, 2 * up - 0.01))).toEqual([]);
    expect(toward(viewOfOutline(square, 0, 0, 0, 2 * up + 0.01))).toEqual([2, 3]);
    expect(toward(viewOfOutline(square, 0, 0, Math.hypot(6, 2) * up + 0.01, 100))).toEqual([]);
    expect(toward(viewOfOutline(square, 0, 0, Math.hypot(6, 2) * up - 0.01, 100))).toEqual([2, 3]);
  });

  test('all of them from inside or from under it', () => {
    expect(toward(viewOfOutline(square, 3, 0, 0, 1))).toEqual([0, 1, 2, 3, 4, 5]);
    expect(toward(viewOfDisc(0.5, 0.2, 3, -1, 1))).toEqual([0, 1, 2, 3, 4, 5]);
  });

  test('none already dark, none in which it does not stand, none when it is all below', () => {
    const all = viewOfDisc(0, 0, 3, -1, 1);
    expect(toward(all, Float64Array.of(1, 0, 1, 0.2, 0, 1))).toEqual([0, 2, 3, 5]);
    expect(toward(all, undefined, Uint8Array.of(0, 1, 1, 0, 0, 0))).toEqual([1, 2]);
    expect(toward(viewOfDisc(0, 0, 3, -2, 0))).toEqual([]);
  });
});

test('an edge to the right counts up where it rises, down where it falls', () => {
  expect([windingOf(1, -1, 1, 1), windingOf(1, 1, 1, -1), windingOf(-1, -1, -1, 1), windingOf(1, 1, 1, 2)]).toEqual([
    1, -1, 0, 0,
  ]);
});
