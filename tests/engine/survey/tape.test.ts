import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance } from '../../../engine/plan/geometry/shapes.ts';
import { placeFromTapes } from '../../../engine/survey/tape.ts';
import { valueOf } from '../../parts/outcome.ts';
import { reasonOf } from './places-for-tests.ts';

const coordinate = fc.double({ min: -30, max: 30, noNaN: true });

describe('a place from two tape lengths', () => {
  test('3-4-5: both solutions, the left one first', () => {
    const [left, right] = valueOf(placeFromTapes([0, 0], 3, [5, 0], 4));
    expect(left.at[0]).toBeCloseTo(1.8, 9);
    expect(left.at[1]).toBeCloseTo(2.4, 9);
    expect(right.at[1]).toBeCloseTo(-2.4, 9);
    // The tapes meet at a right angle.
    expect(left.pm).toBeCloseTo(0.02 * Math.SQRT2, 6);
  });

  test('both solutions reproduce both lengths, wherever the points are', () => {
    let pairs = 0;
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, coordinate, coordinate, (ax, ay, bx, by, px, py) => {
        const fromA = Math.hypot(px - ax, py - ay);
        const fromB = Math.hypot(px - bx, py - by);
        fc.pre(Math.hypot(bx - ax, by - ay) > 0.5 && fromA > 0.1 && fromB > 0.1);
        const solutions = valueOf(placeFromTapes([ax, ay], fromA, [bx, by], fromB));
        if (solutions.length === 2) pairs += 1;
        // The root loses half the digits where the three are all but in a line.
        for (const { at } of solutions) {
          expect(distance(at, [ax, ay])).toBeCloseTo(fromA, 5);
          expect(distance(at, [bx, by])).toBeCloseTo(fromB, 5);
        }
        expect(Math.min(...solutions.map(({ at }) => distance(at, [px, py])))).toBeLessThan(1e-5);
      }),
      { seed: 75, numRuns: 400 },
    );
    expect(pairs).toBeGreaterThan(250);
  });

  test('tapes that do not meet are refused with the numbers', () => {
    expect(reasonOf(placeFromTapes([0, 0], 2.1, [5.6, 0], 3))).toBe("2.1 m + 3.0 m can't reach across 5.6 m.");
    expect(reasonOf(placeFromTapes([0, 0], 7.5, [2, 0], 3))).toContain("don't meet");
    expect(reasonOf(placeFromTapes([1, 1], 2, [1, 1], 2))).toContain('the same');
    expect(reasonOf(placeFromTapes([0, 0], 0, [2, 0], 2))).toContain('longer than 0 m');
  });

  test('tapes that miss by less than their ± meet on the line, and a flat triangle is warned of', () => {
    const finding = placeFromTapes([0, 0], 2.6, [5.6, 0], 2.98);
    const [only, ...others] = valueOf(finding);
    expect(others).toEqual([]);
    expect(only.at[1]).toBe(0);
    expect(finding.ok && finding.notes.join()).toContain('flat triangle');
    expect(only.pm).toBeLessThan(0.6);
  });
});
