import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CrownShape } from '../../../../engine/plan/types.ts';
import { rimTip, shadowTip, topFromTip } from '../../../../engine/survey/height/crown-shadow.ts';

const crowns = fc.record({
  shape: fc.constantFrom<CrownShape>('round', 'cone', 'column'),
  width: fc.double({ min: 0.5, max: 14, noNaN: true }),
  base: fc.double({ min: 0, max: 5, noNaN: true }),
});
const tops = fc.double({ min: 0.3, max: 20, noNaN: true });
const tangents = fc.double({ min: Math.tan(0.1), max: Math.tan(1.3), noNaN: true });

describe('the shadow of a crown', () => {
  test('no point of a round crown is thrown farther than its tip, and some point as far', () => {
    fc.assert(
      fc.property(crowns, tops, tangents, (crown, above, t) => {
        const top = crown.base + above;
        const r = crown.width / 2;
        let farthest = 0;
        for (let step = 0; step <= 2000; step++) {
          const angle = (step / 2000) * Math.PI - Math.PI / 2;
          // The outline of the crown's section through the sun: reach from the trunk, height.
          const [reach, z] =
            crown.shape === 'round'
              ? [r * Math.cos(angle), (top + crown.base) / 2 + (above / 2) * Math.sin(angle)]
              : crown.shape === 'cone'
                ? [(r * (2000 - step)) / 2000, crown.base + (above * step) / 2000]
                : [r, crown.base + (above * step) / 2000];
          farthest = Math.max(farthest, reach + z / t);
        }
        const tip = shadowTip(crown, top, t);
        expect(farthest).toBeLessThanOrEqual(tip * (1 + 1e-9));
        expect(farthest).toBeGreaterThan(tip * (1 - 1e-4));
      }),
      { seed: 73, numRuns: 150 },
    );
  });

  test('the height comes back from the tip of the shadow that the crown itself throws', () => {
    let told = 0;
    let rims = 0;
    fc.assert(
      fc.property(crowns, tops, tangents, (crown, above, t) => {
        const top = crown.base + above;
        const tip = shadowTip(crown, top, t);
        const found = topFromTip(crown, tip, t);
        if (crown.shape === 'cone' && tip <= rimTip(crown, t)) {
          rims += 1;
          expect(found).toBeNaN();
          return;
        }
        told += 1;
        expect(found).toBeCloseTo(top, 6);
      }),
      { seed: 74, numRuns: 600 },
    );
    expect(told).toBeGreaterThan(300);
    expect(rims).toBeGreaterThan(5);
  });

  test('a tip nearer than the lowest ring’s belongs to no crown', () => {
    expect(topFromTip({ shape: 'round', width: 4, base: 1.8 }, 1.8 + 2 - 0.01, 1)).toBeNaN();
    expect(topFromTip({ shape: 'column', width: 4, base: 1.8 }, 3.7, 1)).toBeNaN();
  });
});
