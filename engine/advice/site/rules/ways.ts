import { distance, distanceToSegment, isClosed, openRing, pointInRing } from '../../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint } from '../../../plan/types.ts';
import { stripe } from '../../../plan/geometry/stripes.ts';

/** A gap between the ends of walls or hedges is a gate from this to this wide. Our choice. [m] */
const GATE_FROM = 0.6;
const GATE_TO = 3.5;
/** Kept free on both sides of a gate: the width of a path. [m] */
const PATH_WIDTH = 0.9;

/** Ground that people walk through: what no post may stand on, and the gates in the walls. Rings, counter-clockwise. */
export function waysOf(plan: Plan): PlanPoint[][] {
  const kept = plan.features.flatMap((feature) =>
    feature.kind === 'keepout' && feature.blocks.includes('posts') ? [openRing(feature.outline)] : [],
  );
  return [...kept, ...gatesOf(plan)];
}

function gatesOf(plan: Plan): PlanPoint[][] {
  const ends = plan.features.flatMap((feature) => {
    if ((feature.kind !== 'wall' && feature.kind !== 'hedge') || isClosed(feature.path)) return [];
    return [feature.path[0], feature.path[feature.path.length - 1]].map((at) => ({ id: feature.id, at }));
  });
  const gates: PlanPoint[][] = [];
  ends.forEach((a, k) => {
    for (const b of ends.slice(k + 1)) {
      const gap = distance(a.at, b.at);
      if (gap < GATE_FROM || gap > GATE_TO || isFilled(plan, a.at, b.at)) continue;
      gates.push([...stripe(a.at, b.at, PATH_WIDTH, 0, 0)]);
    }
  });
  return gates;
}

/** Whether something else stands in the gap between two ends. */
function isFilled(plan: Plan, a: PlanPoint, b: PlanPoint): boolean {
  const middle: PlanPoint = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return plan.features.some((feature) => {
    if (feature.kind === 'building') return pointInRing(middle, feature.outline);
    if (feature.kind !== 'wall' && feature.kind !== 'hedge') return false;
    return feature.path.some(
      (point, k) => k > 0 && distanceToSegment(middle, feature.path[k - 1], point) <= feature.thickness / 2,
    );
  });
}
