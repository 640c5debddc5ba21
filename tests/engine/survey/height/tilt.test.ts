import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heightFromTilt } from '../../../../engine/survey/height/tilt.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { reasonOf } from '../places-for-tests.ts';

const away = (value: number) => ({ value, pm: 0 });

test('ten metres off, 45° up and level to the foot: ten metres high, ± 0.35 m for a degree each', () => {
  const { value, pm } = valueOf(heightFromTilt(away(10), 45, 0));
  expect(value).toBeCloseTo(10, 9);
  // d(10·tan a) at 45° is 20, at 0° 10, times π/180 each.
  expect(pm).toBeCloseTo(Math.hypot(20, 10) * (Math.PI / 180), 2);
});

test('the eye’s height and the fall of the ground cancel out (law)', () => {
  const metres = fc.double({ min: 2, max: 20, noNaN: true });
  fc.assert(
    fc.property(metres, metres, fc.double({ min: -1, max: 3, noNaN: true }), (distance, height, eye) => {
      const angle = (rise: number) => (Math.atan(rise / distance) * 180) / Math.PI;
      const [top, foot] = [angle(height - eye), angle(-eye)];
      fc.pre(Math.max(Math.abs(top), Math.abs(foot)) <= 65);
      expect(valueOf(heightFromTilt(away(distance), top, foot)).value).toBeCloseTo(height, 6);
    }),
    { seed: 1 },
  );
});

test('too near, upside down and no distance are refused in a sentence', () => {
  expect(reasonOf(heightFromTilt(away(1), 80, -10))).toContain('further away');
  expect(reasonOf(heightFromTilt(away(5), -10, 20))).toContain('the top is higher');
  expect(reasonOf(heightFromTilt(away(0), 20, 0))).toContain('more than 0 m');
});
