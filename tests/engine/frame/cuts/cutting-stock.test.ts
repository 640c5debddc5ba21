import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutStock } from '../../../../engine/frame/cuts/cutting-stock.ts';
import type { CuttingJob } from '../../../../engine/frame/cuts/cutting-stock.ts';

const SEED = 20260601;

/**
 * Up to ten pieces of up to five lengths, tubes of one or two lengths, kerf from none to wide, many exact fits among
 * them.
 */
const smallJob: fc.Arbitrary<CuttingJob> = fc
  .record({
    kerf: fc.constantFrom(0, 0, 1, 2, 5),
    pieces: fc.array(fc.record({ length: fc.integer({ min: 7, max: 60 }), count: fc.integer({ min: 1, max: 3 }) }), {
      minLength: 1,
      maxLength: 5,
    }),
    tubes: fc.array(fc.record({ length: fc.constantFrom(60, 66, 72, 90, 120), cost: fc.integer({ min: 3, max: 9 }) }), {
      minLength: 1,
      maxLength: 2,
    }),
  })
  .filter((job) => job.pieces.reduce((sum, piece) => sum + piece.count, 0) <= 10);

describe('the cheapest way of cutting', () => {
  test(`equals brute force on 500 random jobs (seed ${SEED})`, () => {
    fc.assert(
      fc.property(smallJob, (job) => {
        const result = cutStock(job);
        if (!result.ok) throw new Error('every piece fits');
        expect(result.proven).toBe(true);
        expect(result.cost).toBe(bruteForce(job));
        expect(result.bound).toBe(result.cost);
        expect(result.uses.reduce((sum, use) => sum + use.times * job.tubes[use.tube].cost, 0)).toBe(result.cost);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test('cuts exactly the pieces asked for, and pieces, kerfs and left-over make up the tubes', () => {
    fc.assert(
      fc.property(smallJob, (job) => {
        const result = cutStock(job);
        if (!result.ok) throw new Error('every piece fits');
        const cut = result.uses.flatMap((use) => Array.from({ length: use.times }, () => use.pieces).flat());
        const wanted = job.pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
        expect(cut.toSorted((a, b) => a - b)).toEqual(wanted.toSorted((a, b) => a - b));
        for (const { tube, pieces, left } of result.uses) {
          const lost = job.tubes[tube].length - left - pieces.reduce((sum, piece) => sum + piece, 0);
          expect(lost).toBeGreaterThanOrEqual((pieces.length - 1) * job.kerf);
          expect(lost).toBeLessThanOrEqual(pieces.length * job.kerf);
        }
      }),
      { seed: SEED + 1, numRuns: 300 },
    );
  });

  test('never costs more with a thinner blade, or with one more length for sale', () => {
    fc.assert(
      fc.property(smallJob, fc.integer({ min: 60, max: 130 }), (job, length) => {
        const cost = (tried: CuttingJob): number => {
          const result = cutStock(tried);
          return result.ok ? result.cost : Infinity;
        };
        expect(cost({ ...job, kerf: 0 })).toBeLessThanOrEqual(cost(job));
        expect(cost({ ...job, tubes: [...job.tubes, { length, cost: 4 }] })).toBeLessThanOrEqual(cost(job));
      }),
      { seed: SEED + 2, numRuns: 200 },
    );
  });

  test('a piece longer than every tube is named', () => {
    expect(
      cutStock({
        kerf: 2,
        pieces: [
          { length: 3100, count: 2 },
          { length: 900, count: 1 },
        ],
        tubes: [{ length: 3000, cost: 1 }],
      }),
    ).toEqual({ ok: false, unfit: [3100] });
  });

  test('a piece of no length is named: a tube would give endlessly many', () => {
    for (const length of [0, -20])
      expect(cutStock({ kerf: 0, pieces: [{ length, count: 2 }], tubes: [{ length: 3000, cost: 1 }] })).toEqual({
        ok: false,
        unfit: [length],
      });
  });

  test('of many different lengths every piece is still cut, and none too much', () => {
    for (const kinds of [12, 16, 17, 40]) {
      const pieces = Array.from({ length: kinds }, (_, k) => ({ length: 401 + 23 * k, count: 1 + (k % 3) }));
      const result = cutStock({ kerf: 2, pieces, tubes: [{ length: 3000, cost: 1 }] });
      if (!result.ok) throw new Error('cannot be cut');
      const cut = result.uses.flatMap(({ pieces: of, times }) => Array.from({ length: times }, () => of).flat());
      const wanted = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
      expect(cut.toSorted((a, b) => a - b)).toEqual(wanted);
      expect(result.bound).toBeLessThanOrEqual(result.cost);
      expect(result.bound).toBeGreaterThanOrEqual(wanted.reduce((sum, length) => sum + length, 0) / 3002);
      expect(result.cost).toBeLessThanOrEqual(1.3 * result.bound);
    }
  });

  test('a piece as long as the tube needs no cut', () => {
    expect(
      cutStock({ kerf: 2, pieces: [{ length: 3000, count: 1 }], tubes: [{ length: 3000, cost: 1 }] }),
    ).toMatchObject({ cost: 1, uses: [{ left: 0, pieces: [3000] }] });
  });

  test('among equal ways it takes few patterns: six rails and six posts are cut alike', () => {
    const result = cutStock({
      kerf: 2,
      pieces: [
        { length: 1800, count: 6 },
        { length: 1100, count: 6 },
      ],
      tubes: [{ length: 3000, cost: 1 }],
    });
    expect(result).toMatchObject({ cost: 6, uses: [{ pieces: [1800, 1100], times: 6, left: 96 }] });
  });
});

/** Cheapest cost by trying every set of pieces for every tube. */
function bruteForce(job: CuttingJob): number {
  const pieces = job.pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  const everything = 2 ** pieces.length - 1;
  const cheapestTube = Array.from({ length: everything + 1 }, (_, set) => {
    const inside = pieces.filter((_piece, i) => (set >> i) & 1);
    const need = inside.reduce((sum, piece) => sum + piece, 0) + (inside.length - 1) * job.kerf;
    return Math.min(...job.tubes.map((tube) => (need <= tube.length ? tube.cost : Infinity)));
  });
  const best = new Float64Array(everything + 1).fill(Infinity);
  best[0] = 0;
  for (let set = 1; set <= everything; set++) {
    const one = set & -set;
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (part & one) best[set] = Math.min(best[set], cheapestTube[part] + best[set ^ part]);
    }
  }
  return best[everything];
}
