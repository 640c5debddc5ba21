import { distanceToPath, lineRound, openRing, distanceToEdge } from '../../../../engine/index.ts';
import type { Feature, FeatureOf, PlanPoint } from '../../../../engine/index.ts';

/** Farther off, the colour of a wall is not asked. [m] */
const ASKED_WITHIN = 2;

/** Whether something planted stands so near a wall or building that its colour matters to the leaves. */
export function hasPlantsBefore(side: FeatureOf<'wall' | 'building'>, features: readonly Feature[]): boolean {
  const line = side.kind === 'wall' ? side.path : lineRound(side.outline);
  const within = ASKED_WITHIN + (side.kind === 'wall' ? side.thickness / 2 : 0);
  const isNear = (at: PlanPoint): boolean => distanceToPath(at, line) <= within;
  return features.some((feature) => {
    if (feature.kind === 'plant' || feature.kind === 'tree') return isNear(feature.at);
    if (feature.kind !== 'bed') return false;
    const bed = openRing(feature.outline);
    return bed.some(isNear) || line.some((corner) => distanceToEdge(corner, bed) <= within);
  });
}
