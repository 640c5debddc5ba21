import { gatesOf, PATH_WIDTH } from '../../../plan/geometry/gates.ts';
import { openRing } from '../../../plan/geometry/shapes.ts';
import { stripe } from '../../../plan/geometry/stripes.ts';
import type { Plan, PlanPoint } from '../../../plan/types.ts';

/** Ground that people walk through: what no post may stand on, and the gates in the walls. Rings, counter-clockwise. */
export function waysOf(plan: Plan): PlanPoint[][] {
  const kept = plan.features.flatMap((feature) =>
    feature.kind === 'keepout' && feature.blocks.includes('posts') ? [openRing(feature.outline)] : [],
  );
  // A path's width is kept free on both sides of a gate.
  return [...kept, ...gatesOf(plan).map(({ ends: [a, b] }) => [...stripe(a, b, PATH_WIDTH, 0, 0)])];
}
