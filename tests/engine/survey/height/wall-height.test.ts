import { describe, expect, test } from 'vitest';
import { heightByCourses, heightFromOtherSide, levelNotes } from '../../../../engine/survey/height/wall-height.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

describe('the height of a wall', () => {
  test('nine courses of 0.2 m and a coping of 0.05 m', () => {
    const { value, pm } = valueOf(heightByCourses(9, 0.2, 0.05));
    expect(value).toBeCloseTo(1.85, 9);
    expect(pm).toBeCloseTo(Math.hypot(0.018, 0.02), 9);
    expect(reasonOf(heightByCourses(9.5, 0.2))).toContain('whole rows');
    expect(reasonOf(heightByCourses(9, 20))).toContain('not likely');
  });

  test('measured from the other side, where the ground is higher, it is higher here', () => {
    expect(valueOf(heightFromOtherSide({ value: 1.5, pm: 0.03 }, { value: 0.4, pm: 0.04 }))).toEqual({
      value: 1.9,
      pm: 0.05,
    });
    expect(reasonOf(heightFromOtherSide({ value: 0.5, pm: 0 }, { value: -0.6, pm: 0 }))).toContain(
      'which ground is higher',
    );
  });

  test('a fall of a hand’s width goes unmentioned, 0.4 m does not', () => {
    expect(levelNotes(0.1)).toEqual([]);
    expect(levelNotes(-0.4).join()).toContain('0.4 m');
  });
});
