import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { riseOf } from '../../../../engine/plan/defaults.ts';
import { distance } from '../../../../engine/plan/geometry/shapes.ts';
import { anyFrame, built, roof, RUNS } from '../yard.ts';

describe('the sheet', () => {
  test('ties every cloth at its corners and posts, as far apart as it says', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { cloth, settingOut } = built(thing);
        for (const piece of cloth.pieces) {
          expect(Math.max(...piece.tieSpacing)).toBeLessThanOrEqual(cloth.tieSpacing + 1e-9);
          if (piece.kind !== 'roof' || thing.kind !== 'canopy') continue;
          const [along, across] = [Math.hypot(thing.length, riseOf(thing)), thing.width];
          expect(piece.ties).toBeCloseTo(2 * (along / piece.tieSpacing[0] + across / piece.tieSpacing[1]), 6);
          // From one post of a side to the next is a whole number of ties.
          const [first, next] = settingOut.posts;
          const ties = distance(first.at, next.at) / piece.tieSpacing[1];
          expect(ties).toBeCloseTo(Math.round(ties), 6);
        }
      }),
      RUNS,
    );
  });

  test('ties are as far apart as the list says, never more than it allows, one at every post', () => {
    fc.assert(
      fc.property(anyFrame, (thing) => {
        const { cloth } = built(thing);
        for (const { ties, tieSpacing, kind, finished, buy } of cloth.pieces) {
          for (const apart of tieSpacing) expect(apart).toBeLessThanOrEqual(cloth.tieSpacing + 1e-9);
          if (kind !== 'roof' || buy !== 'from the roll') continue;
          const [along, across] = finished.map((side, k) => (side + 2 * cloth.gap) / tieSpacing[k]);
          expect(along).toBeCloseTo(Math.round(along), 6);
          expect(across).toBeCloseTo(Math.round(across), 6);
          expect(ties).toBe(2 * (Math.round(along) + Math.round(across)));
        }
      }),
      RUNS,
    );
  });

  test('cloth hangs 50 mm inside the tubes on each side and is cut 50 mm larger all round for its hem', () => {
    const { cloth } = built({ ...roof, length: 3, width: 2.6, drops: [{ side: 'back', depth: 1, density: 0.4 }] });
    const [top, drop] = cloth.pieces;
    expect(top.finished.map((size) => Number(size.toFixed(3)))).toEqual([2.9, 2.5]);
    expect(top.cut.map((size) => Number(size.toFixed(3)))).toEqual([3, 2.6]);
    // A drop is tied along its top and its sides; its foot hangs at its full depth.
    expect(drop.finished.map((size) => Number(size.toFixed(3)))).toEqual([2.5, 0.95]);
    expect(drop.ties).toBe(5 + 2 * 2 + 1);
  });

  test('a ready-made panel is taken where one fits, a roll elsewhere', () => {
    const stock = {
      cloth: [
        { width: 2.5, length: 2.9, price: 31 },
        { width: 3, length: 50, price: 300 },
      ],
    };
    const fits = built({ ...roof, length: 3, width: 2.6 }, { stock });
    expect(fits.cloth.pieces[0]).toMatchObject({ buy: 'ready-made', finished: [2.9, 2.5], seams: 0 });
    expect(fits.cost.items.find((item) => item.id === 'cloth-1')).toMatchObject({
      price: 31,
      amount: 31,
      priceFrom: 'yours',
    });
    const rolled = built({ ...roof, length: 3.4, width: 3.2 }, { stock });
    // 3.1 m across from a roll of 3 m takes two strips; 300 for 150 m² is 2 a square metre.
    expect(rolled.cloth.pieces[0]).toMatchObject({ buy: 'from the roll', rollWidth: 3, strips: 2, seams: 1 });
    expect(rolled.cost.items.find((item) => item.id === 'cloth-1')).toMatchObject({ price: 2, priceFrom: 'yours' });
  });
});
