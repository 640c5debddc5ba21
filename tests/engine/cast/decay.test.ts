import { expect, test } from 'vitest';
import { decay } from '../../../engine/cast/decay.ts';

test('is e^−x within 1e-11 everywhere, and exactly 1 at 0', () => {
  let worst = 0;
  for (let x = 0; x < 40; x += 0.000_37) worst = Math.max(worst, Math.abs(decay(x) - Math.exp(-x)));
  expect(worst).toBeLessThan(1e-11);
  expect(decay(0)).toBe(1);
  expect(decay(Infinity)).toBe(0);
});
