/** Gates: gaps that were left between the ends of walls and hedges. */

import type { Plan, PlanPoint } from '../types.ts';
import { distance, distanceToSegment, isClosed, pointInRing } from './shapes.ts';

/** A gap between the ends of walls or hedges is a gate from this to this wide. Our choice. [m] */
const GATE_FROM = 0.6;
const GATE_TO = 3.5;

/** A person with a can needs this much to walk by. Common practice, no source. [m] */
export const PATH_WIDTH = 0.9;

export interface Gate {
  readonly ends: readonly [PlanPoint, PlanPoint];
  /** [m] */
  readonly width: number;
}

/** In the order in which the walls were drawn. */
export function gatesOf(plan: Plan): Gate[] {
  const ends = plan.features.flatMap((feature) => {
    if ((feature.kind !== 'wall' && feature.kind !== 'hedge') || isClosed(feature.path)) return [];
    return [feature.path[0], feature.path[feature.path.length - 1]];
  });
  const gates: Gate[] = [];
  ends.forEach((a, k) => {
    for (const b of ends.slice(k + 1)) {
      const width = distance(a, b);
      if (width >= GATE_FROM && width <= GATE_TO && !isFilled(plan, a, b)) gates.push({ ends: [a, b], width });
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
