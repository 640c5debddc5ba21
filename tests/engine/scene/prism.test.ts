import { describe, expect, test } from 'vitest';
import type { SpacePoint } from '../../../engine/plan/geometry/vectors.ts';
import { planDirection } from '../../../engine/scene/direction.ts';
import { prismCrossings } from '../../../engine/scene/prism.ts';
import type { Prism, Ring } from '../../../engine/scene/solids.ts';

const slab = (x: number, width: number): Ring => [
  [x, -5],
  [x + width, -5],
  [x + width, 5],
  [x, 5],
];
const prism = (...rings: Ring[]): Prism => ({ kind: 'prism', rings, height: 2, openness: 0.5, reflects: null });
/** A beam from the east, at an altitude. */
const crossings = (solid: Prism, point: SpacePoint, altitude = 5) =>
  prismCrossings(solid, point, planDirection(90, altitude, 0));

describe('prismCrossings', () => {
  test('stretches apart are crossings apart, as long as the beam is below the top', () => {
    const rows = prism(slab(1, 0.4), slab(3, 0.4), slab(6, 0.4));
    expect(crossings(rows, [0, 0, 1])).toBe(3);
    // At 20° it is 1 m higher after 2.75 m: before the second row.
    expect(crossings(rows, [0, 0, 1], 20)).toBe(1);
    expect(crossings(rows, [3.2, 0, 1])).toBe(2);
    expect(crossings(rows, [7, 0, 1])).toBe(0);
  });

  test('a gap of a millionth of a metre joins, one of a hundred-thousandth parts', () => {
    expect(crossings(prism(slab(1, 1), slab(2 + 0.9e-6, 1)), [0, 0, 0.5])).toBe(1);
    expect(crossings(prism(slab(1, 1), slab(2 + 1e-5, 1)), [0, 0, 0.5])).toBe(2);
  });

  test('less than a billionth of a metre inside is nothing', () => {
    expect(crossings(prism(slab(1, 1)), [2 - 5e-10, 0, 0.5])).toBe(0);
    expect(crossings(prism(slab(1, 1)), [2 - 5e-9, 0, 0.5])).toBe(1);
    expect(crossings(prism(slab(1, 1)), [1.5, 0, 2])).toBe(0);
  });

  test('a notch parts a bent outline in two', () => {
    const comb: Ring = [
      [0, 0],
      [5, 0],
      [5, 3],
      [4, 3],
      [4, 1],
      [1, 1],
      [1, 3],
      [0, 3],
    ];
    expect(crossings(prism(comb), [-1, 2, 0.5])).toBe(2);
    expect(crossings(prism(comb), [-1, 0.5, 0.5])).toBe(1);
  });

  test('straight up, a beam is inside or it is not', () => {
    expect(crossings(prism(slab(1, 1)), [1.3, 0, 0.5], 90)).toBe(1);
    expect(crossings(prism(slab(1, 1)), [2.3, 0, 0.5], 90)).toBe(0);
  });
});
