import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Bearings } from '../../../engine/scene/bearings.ts';

const TURN = 2 * Math.PI;
/** How far left of a bearing another lies, once round at most. [rad] */
const leftOf = (right: number, bearing: number) => (((bearing - right) % TURN) + TURN) % TURN;
const bearing = fc.oneof(
  fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
  fc.constantFrom(-Math.PI, Math.PI, 0, -Math.PI / 2, Math.PI / 2, 1e-12 - Math.PI),
);

test('every direction between two bearings is found, wherever round the compass they lie, and none far beside', () => {
  fc.assert(
    fc.property(
      fc.array(bearing, { minLength: 1, maxLength: 40 }),
      bearing,
      fc.double({ min: 0, max: 3.1, noNaN: true }),
      (bearings, right, span) => {
        const ordered = new Bearings(
          Float64Array.from(bearings, (each) => Math.cos(each)),
          Float64Array.from(bearings, (each) => Math.sin(each)),
        );
        // As a side's corners tell it: each bearing by itself, from −π to π.
        const left = Math.atan2(Math.sin(right + span), Math.cos(right + span));
        ordered.find(right, left);
        const found = [...ordered.order.subarray(ordered.first, ordered.end)];
        const beside = 1e-8;
        bearings.forEach((each, ray) => {
          const off = leftOf(right, each);
          if (off <= span || off >= TURN - 1e-12) expect(found, `${each}`).toContain(ray);
          else if (off > span + beside && off < TURN - beside) expect(found).not.toContain(ray);
        });
        expect(new Set(found).size).toBe(found.length);
        ordered.findAll();
        expect(new Set(ordered.order.subarray(ordered.first, ordered.end)).size).toBe(bearings.length);
      },
    ),
    { seed: 5, numRuns: 500 },
  );
});
