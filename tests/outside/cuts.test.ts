/**
 * The cut list against published instances of the cutting-stock problem, and against instances proved twice by
 * hand-made exhaustive packing.
 */

import { describe, expect, test } from 'vitest';
import { cutStock } from '../../engine/frame/cuts/cutting-stock.ts';
import type { CuttingJob } from '../../engine/frame/cuts/cutting-stock.ts';

interface Instance {
  readonly name: string;
  readonly source: string;
  readonly job: CuttingJob;
  readonly optimum: number;
  /** The linear relaxation as published; the round-up is no higher than the optimum. */
  readonly relaxation?: number;
}

const OWN = 'optimum proved by an integer programme over all patterns and by exhaustive packing with symmetry breaking';
const FOOT = 192; // sixteenths of an inch

const INSTANCES: readonly Instance[] = [
  {
    name: 'paper machine, 13 widths',
    source: 'Wikipedia, "Cutting stock problem": 73 rolls, 0.401 % waste',
    job: single(
      5600,
      0,
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ),
    optimum: 73,
    relaxation: 72.917,
  },
  {
    name: 'finals of 45, 36, 31 and 14 from raws of 100',
    source:
      'V. Chvátal, Linear Programming, Freeman 1983, ch. 13, as restated in a notebook (one reprint has 35 for 36)',
    job: single(100, 0, [45, 97], [36, 610], [31, 395], [14, 211]),
    optimum: 453,
    relaxation: 452.25,
  },
  {
    name: 'Woodco',
    source: 'W. Winston, Operations Research, as in lecture notes',
    job: single(17, 0, [9, 15], [5, 20], [3, 25]),
    optimum: 19,
    relaxation: 18.33,
  },
  {
    name: 'small model',
    source: 'MiniZinc benchmarks, cutstock.mzn, J. Puchinger 2007',
    job: single(10, 0, [7, 2], [5, 2], [3, 4]),
    optimum: 4,
    relaxation: 3.667,
  },
  {
    name: 'A: 10 × 10 × 8 ft, no bottom rails',
    source: OWN,
    job: single(10 * FOOT, 1, [10 * FOOT, 4], [8 * FOOT, 4]),
    optimum: 8,
  },
  {
    name: 'B: the same with bottom rails',
    source: OWN,
    job: single(10 * FOOT, 1, [10 * FOOT, 8], [8 * FOOT, 4]),
    optimum: 12,
  },
  {
    name: 'C0: 10 × 4 × 6 ft, no kerf',
    source: OWN,
    job: single(10 * FOOT, 0, [10 * FOOT, 4], [6 * FOOT, 4], [4 * FOOT, 4]),
    optimum: 8,
  },
  {
    name: 'C1: the same, kerf 1/16 in',
    source: OWN,
    job: single(10 * FOOT, 1, [10 * FOOT, 4], [6 * FOOT, 4], [4 * FOOT, 4]),
    optimum: 10,
  },
  {
    name: 'C1: the same, kerf 1/8 in',
    source: OWN,
    job: single(10 * FOOT, 2, [10 * FOOT, 4], [6 * FOOT, 4], [4 * FOOT, 4]),
    optimum: 10,
  },
  {
    name: 'C2: no bottom rails, no kerf',
    source: OWN,
    job: single(10 * FOOT, 0, [10 * FOOT, 2], [6 * FOOT, 4], [4 * FOOT, 2]),
    optimum: 6,
  },
  {
    name: 'C2: no bottom rails, kerf 1/16 in',
    source: OWN,
    job: single(10 * FOOT, 1, [10 * FOOT, 2], [6 * FOOT, 4], [4 * FOOT, 2]),
    optimum: 7,
  },
  { name: 'D: 3 m rails from 6 m tube, no kerf', source: OWN, job: single(6000, 0, [3000, 8], [2200, 4]), optimum: 6 },
  { name: 'D: the same, kerf 3 mm', source: OWN, job: single(6000, 3, [3000, 8], [2200, 4]), optimum: 8 },
  { name: 'D: rails 2 mm shorter, kerf 3 mm', source: OWN, job: single(6000, 3, [2998, 8], [2200, 4]), optimum: 6 },
  { name: 'E', source: OWN, job: single(6000, 3, [3600, 4], [2400, 4], [2100, 4]), optimum: 6 },
  { name: 'F: longest first needs 4', source: OWN, job: single(6000, 3, [2700, 2], [2200, 2], [1600, 4]), optimum: 3 },
  {
    name: 'G: longest first needs 7',
    source: OWN,
    job: single(1920, 1, [960, 5], [768, 2], [720, 3], [432, 5]),
    optimum: 6,
  },
  {
    name: 'H: longest first needs 5',
    source: OWN,
    job: single(1920, 1, [720, 4], [624, 2], [432, 3], [384, 5]),
    optimum: 4,
  },
  { name: 'I: no kerf', source: OWN, job: single(5800, 0, [2900, 2], [1930, 6], [1450, 8], [1160, 5]), optimum: 6 },
  {
    name: 'I: kerf 2 mm costs a tube',
    source: OWN,
    job: single(5800, 2, [2900, 2], [1930, 6], [1450, 8], [1160, 5]),
    optimum: 7,
  },
  {
    name: 'J: the rounded-up bound, 2, cannot be met',
    source: OWN,
    job: single(132, 0, [44, 2], [33, 3], [12, 6]),
    optimum: 3,
  },
  { name: 'K', source: OWN, job: single(3048, 2, [1829, 4], [1219, 6], [914, 5], [610, 7]), optimum: 9 },
  {
    name: 'M: two lengths for sale',
    source: OWN,
    job: {
      ...single(3000, 3, [2400, 6], [1750, 9]),
      tubes: [
        { length: 3000, cost: 900 },
        { length: 6000, cost: 1600 },
      ],
    },
    optimum: 8900,
  },
  {
    name: 'M: long tubes only',
    source: OWN,
    job: { ...single(6000, 3, [2400, 6], [1750, 9]), tubes: [{ length: 6000, cost: 1600 }] },
    optimum: 9600,
  },
  {
    name: 'M: short tubes only',
    source: OWN,
    job: { ...single(3000, 3, [2400, 6], [1750, 9]), tubes: [{ length: 3000, cost: 900 }] },
    optimum: 13500,
  },
];

describe('every instance comes out at its optimum, proved', () => {
  test.each(INSTANCES)('$name ($source)', ({ job, optimum, relaxation }) => {
    const result = cutStock(job);
    if (!result.ok) throw new Error(`cannot be cut: ${result.unfit}`);
    expect(result.cost).toBe(optimum);
    expect(result.bound).toBe(optimum);
    expect(result.proven).toBe(true);
    if (relaxation !== undefined) expect(Math.ceil(relaxation)).toBeLessThanOrEqual(result.bound);
    expect(result.uses.reduce((sum, use) => sum + use.times * job.tubes[use.tube].cost, 0)).toBe(optimum);
    expectCutsOut(job, result.uses);
  });
});

/** All pieces asked for and no other, each tube long enough with its kerfs. */
function expectCutsOut(
  job: CuttingJob,
  uses: readonly { tube: number; pieces: readonly number[]; times: number; left: number }[],
): void {
  for (const { length, count } of job.pieces) {
    expect(uses.reduce((sum, use) => sum + use.times * use.pieces.filter((piece) => piece === length).length, 0)).toBe(
      count,
    );
  }
  for (const { tube, pieces, left } of uses) {
    const sum = pieces.reduce((total, piece) => total + piece, 0);
    const room = job.tubes[tube].length - sum;
    expect(room).toBeGreaterThanOrEqual((pieces.length - 1) * job.kerf);
    expect(left).toBe(Math.max(0, room - pieces.length * job.kerf));
  }
}

function single(length: number, kerf: number, ...pieces: readonly (readonly [number, number])[]): CuttingJob {
  return { kerf, pieces: pieces.map(([piece, count]) => ({ length: piece, count })), tubes: [{ length, cost: 1 }] };
}
