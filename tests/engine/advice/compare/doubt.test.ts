import { expect, test } from 'vitest';
import {
  differenceOf,
  type DoubtedYard,
  type HarmInDoubt,
  harmsInDoubt,
} from '../../../../engine/advice/compare/doubt.ts';
import { doubtInputs } from '../../../../engine/advice/doubt/inputs.ts';
import { createRayYard } from '../../../../engine/advice/doubt/rays.ts';
import { createSharedLeaves } from '../../../../engine/load/leaf/heat-day.ts';
import { weighedHarm } from '../../../../engine/load/verdict/harm-of.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../../load/yard-plan.ts';
import { LEMON, TOMATO } from '../planted.ts';

const FENCE: Feature = {
  id: 'fence',
  kind: 'wall',
  path: [
    [5, 0],
    [5, 8],
  ],
  height: 1.8,
  thickness: 0.1,
  how: { height: { by: 'guess', pm: 0.4 } },
};
const ROOF: Feature = {
  id: 'roof',
  kind: 'canopy',
  center: [6, 4],
  length: 3,
  width: 3,
  height: 2.3,
  density: 0.5,
  // As far off as that it would stand over the plant that it does not reach as drawn.
  how: { density: { by: 'guess', pm: 0.1 }, center: { by: 'guess', pm: 82 } },
};
/** So far to the south of the roof that it stands in the way of none of its rays. */
const FAR: Feature = { ...TOMATO, at: [6, -80] };

/** Everything judged again in every yard. */
function plainly({ plan, rays }: DoubtedYard): HarmInDoubt {
  const sums = doubtInputs(plan).map(({ key, feature, shifts }): [string, number[]] => [
    key,
    shifts.map((shift) => weighedHarm(valueOf(rays.under(shift, feature)))),
  ]);
  return { harm: weighedHarm(rays.base), shifted: new Map(sums) };
}

test.each([0, 25])(
  'plants in the light that they had are no part of what a difference may be off (compass ± %d°)',
  (pm) => {
    const drawn = yardPlan([FENCE, { ...LEMON, at: [6, 4] }, FAR]);
    const site = { ...drawn.site, how: { upBearing: { by: 'compass' as const, pm } } };
    const plan: Plan = { ...drawn, site, options: [{ id: 'A', adds: [ROOF] }] };
    const leaves = createSharedLeaves();
    const yards = [plan, valueOfPlan(withOptions(plan, ['A']))].map((each): DoubtedYard => ({
      plan: each,
      rays: valueOf(createRayYard(each, undefined, leaves)),
    }));
    const [today, roofed] = yards.map(({ rays }) => rays.light);
    expect(roofed.get(FAR.id)).toBe(today.get(FAR.id));
    expect(roofed.get(LEMON.id)).not.toBe(today.get(LEMON.id));
    const [a, b] = valueOf(harmsInDoubt(yards));
    const [inFullA, inFullB] = yards.map(plainly);
    const { difference, pm: off } = differenceOf(a, b);
    expect(off).toBeGreaterThan(1);
    expect(off).toBeCloseTo(differenceOf(inFullA, inFullB).pm, 9);
    expect(difference).toBeCloseTo(inFullA.harm - inFullB.harm, 9);
  },
);

function valueOfPlan(changed: ReturnType<typeof withOptions>): Plan {
  if (!changed.ok) throw new Error('The option is there.');
  return changed.plan;
}
