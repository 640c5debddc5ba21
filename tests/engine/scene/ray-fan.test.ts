import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RayFan } from '../../../engine/scene/ray-fan.ts';

const TURN = 2 * Math.PI;
/** How far left of a bearing another lies, once round at most. [rad] */
const leftOf = (right: number, bearing: number) => (((bearing - right) % TURN) + TURN) % TURN;
const bearing = fc.oneof(
  fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
  fc.constantFrom(-Math.PI, Math.PI, 0, -Math.PI / 2, Math.PI / 2, 1e-12 - Math.PI),
);

test('a fan finds every ray between two bearings, wherever round the compass they lie, and none far beside', () => {
  fc.assert(
    fc.property(
      fc.array(bearing, { minLength: 1, maxLength: 40 }),
      bearing,
      fc.double({ min: 0, max: 3.1, noNaN: true }),
      (bearings, right, span) => {
        const fan = new RayFan(Float64Array.from(bearings.flatMap((each) => [Math.cos(each), Math.sin(each), 0.1])));
        // As a side's corners tell it: each bearing by itself, from −π to π.
        const left = Math.atan2(Math.sin(right + span), Math.cos(right + span));
        fan.find(right, left);
        const found = [...fan.order.subarray(fan.first, fan.end)];
        const beside = 1e-8;
        bearings.forEach((each, ray) => {
          const off = leftOf(right, each);
          if (off <= span || off >= TURN - 1e-12) expect(found, `${each}`).toContain(ray);
          else if (off > span + beside && off < TURN - beside) expect(found).not.toContain(ray);
        });
        expect(new Set(found).size).toBe(found.length);
      },
    ),
    { seed: 5, numRuns: 500 },
  );
});
