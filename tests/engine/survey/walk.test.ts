import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../engine/plan/geometry/shapes.ts';
import { closeWalk, type Leg, parseWalk } from '../../../engine/survey/walk.ts';
import { valueOf } from '../../parts/outcome.ts';
import { reasonOf } from './places-for-tests.ts';

const quarter = (length: number): Leg => ({ length, turn: 90 });

describe('a walk round the fence', () => {
  test('a rectangle walked without error closes and keeps its corners', () => {
    const { gap, corrected, perimeter } = valueOf(closeWalk([12.4, 6.1, 12.4, 6.1].map(quarter), [2, 3]));
    expect(gap).toBeLessThan(1e-9);
    expect(perimeter).toBeCloseTo(37, 9);
    const corners = [
      [2, 3],
      [2, 15.4],
      [8.1, 15.4],
      [8.1, 3],
    ];
    corrected?.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(corners[i][0], 9);
      expect(y).toBeCloseTo(corners[i][1], 9);
    });
  });

  test('the gap is shared out in proportion to the length walked', () => {
    // 0.4 m too far on the first leg: it ends 0.4 m up.
    const finding = closeWalk([10.4, 5, 10, 5].map(quarter));
    const { gap, corrected } = valueOf(finding);
    expect(gap).toBeCloseTo(0.4, 9);
    expect(finding.ok && finding.notes[0]).toBe('Walking round, you end 0.40 m from where you began (1.3 % of 30 m).');
    expect(corrected?.[1][1]).toBeCloseTo(10.4 - (0.4 * 10.4) / 30.4, 9);
    expect(corrected?.[2][1]).toBeCloseTo(10.4 - (0.4 * 15.4) / 30.4, 9);
    expect(corrected?.[3][0]).toBeCloseTo(5, 9);
  });

  test('walking the corrected corners closes, for any walk whose gap is small', () => {
    let corrected = 0;
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 2, max: 20, noNaN: true }), { minLength: 3, maxLength: 9 }),
        fc.double({ min: -0.02, max: 0.02, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (radii, slip, direction) => {
          // A ring of corners at growing angles about the middle; its legs, one of them mismeasured.
          const corners = radii.map((radius, i) => [
            radius * Math.sin((2 * Math.PI * i) / radii.length),
            radius * Math.cos((2 * Math.PI * i) / radii.length),
          ]);
          const heading = (i: number): number => {
            const [ax, ay] = corners[i % corners.length];
            const [bx, by] = corners[(i + 1) % corners.length];
            return (Math.atan2(bx - ax, by - ay) * 180) / Math.PI;
          };
          const legs = corners.map(([x, y], i): Leg => {
            const [bx, by] = corners[(i + 1) % corners.length];
            return { length: Math.hypot(bx - x, by - y) * (i === 1 ? 1 + slip : 1), turn: heading(i + 1) - heading(i) };
          });
          const walk = valueOf(closeWalk(legs, [1, 2], direction));
          if (walk.corrected === null) return;
          corrected += 1;
          expect(walk.corrected).toHaveLength(legs.length);
          expect(walk.corrected[0]).toEqual([1, 2]);
          // By the compass rule the last corner, carried on by its leg and its share, is the first again.
          const [lastX, lastY] = walk.corrected[legs.length - 1];
          const [fromX, fromY] = walk.walked[legs.length - 1];
          const [endX, endY] = walk.walked[legs.length];
          const share = legs[legs.length - 1].length / walk.perimeter;
          expect(lastX + (endX - fromX) - share * (endX - 1)).toBeCloseTo(1, 8);
          expect(lastY + (endY - fromY) - share * (endY - 2)).toBeCloseTo(2, 8);
        },
      ),
      { seed: 76, numRuns: 200 },
    );
    expect(corrected).toBeGreaterThan(150);
  });

  test('turning left instead of right mirrors the yard', () => {
    const right = valueOf(closeWalk([7, 4, 7, 4].map(quarter)));
    const left = valueOf(closeWalk([7, 4, 7, 4].map((length) => ({ length, turn: -90 }))));
    expect(signedArea(right.corrected ?? [])).toBeCloseTo(-28, 9);
    expect(signedArea(left.corrected ?? [])).toBeCloseTo(28, 9);
  });

  test('a gap over 5 % is not shared out; the legs along it are named', () => {
    const finding = closeWalk([12.4, 6.1, 8.4, 6.1].map(quarter));
    const walk = valueOf(finding);
    expect(walk.corrected).toBeNull();
    expect(walk.suspects).toEqual([1, 3]);
    expect(finding.ok && finding.notes.join(' ')).toContain(
      'leg 1 (12.40 m) or leg 3 (8.40 m); one of them being 4.00 m longer or shorter',
    );
  });

  test('where no leg runs along the gap a turn is suspected', () => {
    const finding = closeWalk(
      [
        { length: 8, turn: 120 },
        { length: 8, turn: 120 },
        { length: 8, turn: 0 },
      ].map((leg, i) => (i === 0 ? { ...leg, turn: 60 } : leg)),
    );
    expect(finding.ok && finding.value.corrected).toBeNull();
    expect(finding.ok && finding.notes.join(' ')).toMatch(/turn is more likely|Measure again/);
  });

  test('two legs enclose nothing, and a leg has a length', () => {
    expect(reasonOf(closeWalk([quarter(3), quarter(3)]))).toContain('at least three');
    expect(reasonOf(closeWalk([quarter(3), quarter(0), quarter(3)]))).toContain('Leg 2');
  });

  test('as typed', () => {
    expect(valueOf(parseWalk('12.4 right 6.1 right 12,4 right 6.1', 'metric'))).toEqual([
      quarter(12.4),
      quarter(6.1),
      quarter(12.4),
      { length: 6.1, turn: 0 },
    ]);
    expect(valueOf(parseWalk('3 m left 45° 2,5 r 30°  4 l', 'metric'))).toEqual([
      { length: 3, turn: -45 },
      { length: 2.5, turn: 30 },
      { length: 4, turn: -90 },
    ]);
    expect(valueOf(parseWalk('40 r 20 r', 'imperial'))[0].length).toBeCloseTo(12.192, 9);
    expect(reasonOf(parseWalk('right 3', 'metric'))).toContain('begins with');
    expect(reasonOf(parseWalk('3 up 4', 'metric'))).toContain('"up"');
  });
});
