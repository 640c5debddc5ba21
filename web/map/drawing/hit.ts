import { area, distanceToPath, pointInRing } from '../../../engine/index.ts';
import type { Feature, PlanPoint } from '../../../engine/index.ts';
import { centreLine, footprint } from './outline.ts';

/**
 * The feature a person means by pointing at `at`: of all whose footprint holds the point or whose line is within
 * `reach`, the one that covers least paper, so that a pot on a bed under a tree can be had; of equals the one drawn
 * last. [m]
 */
export function featureAt(features: readonly Feature[], at: PlanPoint, reach: number): Feature | undefined {
  let best: Feature | undefined;
  let bestCovered = Infinity;
  for (const feature of features) {
    const rings = footprint(feature);
    const hit = rings.some((ring) => pointInRing(at, ring)) || distanceToPath(at, centreLine(feature)) <= reach;
    if (!hit) continue;
    const covered = rings.reduce((sum, ring) => sum + area(ring), 0);
    if (covered <= bestCovered) {
      best = feature;
      bestCovered = covered;
    }
  }
  return best;
}
