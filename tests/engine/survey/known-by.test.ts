import { describe, expect, test } from 'vitest';
import { spreadOf } from '../../../engine/survey/estimate.ts';
import { defaultPm } from '../../../engine/survey/known-by.ts';

describe('how far a number may be off', () => {
  test('a taped length by 2 cm whatever it is, a paced one and one by its shadow by 5 %, a guess by 20 %', () => {
    expect(defaultPm('tape', 12)).toBe(0.02);
    expect(defaultPm('shadow', 6)).toBeCloseTo(0.3, 9);
    expect(defaultPm('paced', -12)).toBeCloseTo(0.6, 9);
    expect(defaultPm('guess', 1.8)).toBeCloseTo(0.36, 9);
  });

  test('a bearing’s ± does not depend on the bearing', () => {
    expect(defaultPm('compass', 0, 'bearing')).toBe(defaultPm('compass', 350, 'bearing'));
    expect(defaultPm('guess', 0, 'bearing')).toBeGreaterThan(defaultPm('shadow', 0, 'bearing'));
  });

  test('a share told by eye is never better than a tenth', () => {
    expect(defaultPm('guess', 0.12, 'share')).toBe(0.1);
    expect(defaultPm('guess', 0.8, 'share')).toBeCloseTo(0.16, 9);
    expect(defaultPm('tape', 0.6, 'share')).toBe(0);
  });

  test('independent errors add as squares: of a product, relatively', () => {
    const pm = spreadOf(
      ([a, b]) => a * b,
      [
        { value: 4, pm: 0.04 },
        { value: 5, pm: 0.1 },
      ],
    );
    expect(pm).toBeCloseTo(20 * Math.hypot(0.01, 0.02), 9);
  });
});
