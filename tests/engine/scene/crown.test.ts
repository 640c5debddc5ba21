import { describe, expect, test } from 'vitest';
import { lengthInCrown } from '../../../engine/scene/crown.ts';
import { planDirection } from '../../../engine/scene/direction.ts';
import { shareInside } from '../../../engine/scene/fading.ts';
import type { Crown } from '../../../engine/scene/solids.ts';
import { randomFrom } from '../../parts/random.ts';

const crown: Crown = { kind: 'round', x: 1.2, y: -0.7, radius: 1.7, base: 1.1, top: 5.3, openness: 0.35 };

/** Whether a point lies inside, from the crown's definition. */
function isInside({ kind, x, y, radius, base, top }: Crown, px: number, py: number, pz: number): boolean {
  const out = Math.hypot(px - x, py - y) / radius;
  if (pz <= base || pz >= top) return false;
  if (kind === 'column') return out < 1;
  if (kind === 'cone') return out < (top - pz) / (top - base);
  return out ** 2 + ((pz - (top + base) / 2) / ((top - base) / 2)) ** 2 < 1;
}

describe('lengthInCrown', () => {
  test.each(['round', 'cone', 'column'] as const)(
    '%s: is the length of the beam’s points that lie inside (2 mm steps, 150 beams)',
    (kind) => {
      const random = randomFrom(12);
      const solid = { ...crown, kind };
      let met = 0;
      for (let n = 0; n < 150; n++) {
        const [x, y, z] = [1.2 + 6 * random() - 3, -0.7 + 6 * random() - 3, 6 * random()];
        const [dx, dy, dz] = planDirection(360 * random(), 2 + 86 * random(), 0);
        let inside = 0;
        for (let t = 0.001; t < 14; t += 0.002)
          if (isInside(solid, x + t * dx, y + t * dy, z + t * dz)) inside += 0.002;
        const length = lengthInCrown(solid, x, y, z, dx, dy, dz);
        if (length > 0.1) met++;
        expect(Math.abs(length - inside)).toBeLessThan(0.005);
      }
      expect(met).toBeGreaterThan(15);
    },
  );

  test('from 10 km away it loses no digits', () => {
    const [dx, dy, dz] = planDirection(0, 0.02, 0);
    const reach = 10_000;
    // Aimed at the middle from far off: the chord is the crown's level width, but for the slope.
    const length = lengthInCrown(
      { ...crown, kind: 'round' },
      1.2 - reach * dx,
      -0.7 - reach * dy,
      3.2 - reach * dz,
      dx,
      dy,
      dz,
    );
    expect(length).toBeCloseTo(2 / Math.hypot(Math.hypot(dx, dy) / 1.7, dz / 2.1), 9);
  });

  test('a beam as steep as a cone’s flank meets the other flank only', () => {
    const cone: Crown = { ...crown, kind: 'cone', x: 0, y: 0, radius: 4.2 };
    const [dx, dy, dz] = planDirection(0, 45, 0);
    // From the foot, 2 m before the axis, to where z = 3.1 + y meets the flank y = 5.3 − z: at y = 1.1.
    expect(lengthInCrown(cone, 0, -2, 1.1, dx, dy, dz)).toBeCloseTo(3.1 * Math.SQRT2, 9);
  });
});

test('share: openness to the power of length over depth; openness 0 stops any length, openness 1 none', () => {
  expect(shareInside(0.35, 4.2, 2.1)).toBeCloseTo(Math.sqrt(0.35), 12);
  expect(shareInside(0.35, 4.2, 0)).toBe(1);
  expect(shareInside(0, 4.2, 1e-8)).toBe(0);
  expect(shareInside(0, 4.2, 1e-10)).toBe(1);
  expect(shareInside(1, 4.2, 3)).toBe(1);
});
