import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { seenFrom, topPoints } from '../../../../engine/advice/compare/seen.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy } from '../../../../engine/plan/types.ts';

/** To the millimetre, and even: doubles drawn by their bits are nearly all next to nothing. */
const between = (min: number, max: number) => fc.integer({ min: 1000 * min, max: 1000 * max }).map((n) => n / 1000);

const roofs = fc.record<Canopy>({
  id: fc.constant('roof'),
  kind: fc.constant('canopy'),
  center: fc.tuple(between(-9, 9), between(-9, 9)),
  // Whole quarters of a metre are where a rounding of the edge's length changes how many points it takes.
  length: fc.integer({ min: 1, max: 24 }).map((n) => n / 4),
  width: fc.integer({ min: 1, max: 24 }).map((n) => n / 4),
  turn: between(0, 360),
  height: between(1, 4),
  rise: between(-0.5, 0.5),
  density: fc.constant(0.5),
});

it('every roof has points over all of it, whatever its size and turn', () => {
  fc.assert(
    fc.property(roofs, (roof) => {
      const points = topPoints(roof);
      const corners = points.filter(
        ([x, y]) =>
          Math.abs(Math.hypot(x - roof.center[0], y - roof.center[1]) - Math.hypot(roof.length, roof.width) / 2) < 1e-6,
      );
      expect(corners).toHaveLength(4);
      // At most a quarter of a metre apart both ways, a rounding aside.
      expect(points.length).toBeGreaterThanOrEqual((4 * roof.length + 1) * (4 * roof.width + 1));
      expect(points.length).toBeLessThanOrEqual((4 * roof.length + 2) * (4 * roof.width + 2));
    }),
    { seed: 20260721, numRuns: 2000 },
  );
});

it('who sees it can be told of every roof', () => {
  const plan = demoPlan('lane');
  fc.assert(
    fc.property(roofs, (roof) => {
      for (const { shows } of seenFrom(plan, [roof])) expect(shows).toBeGreaterThanOrEqual(0);
    }),
    { seed: 20260722, numRuns: 200 },
  );
});
