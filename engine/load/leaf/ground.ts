import { pointInRing } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { PlanPoint, Surface } from '../../plan/types.ts';
import type { Scene } from '../../scene/solids.ts';

/**
 * How far the ground's surface rises above the air under 1,000 W/m² of light: peaks of a one-dimensional heat flow, a
 * choice of this project, ± a third. [K]
 */
const RISES: Readonly<Record<Surface, number>> = { lawn: 6, soil: 26, paving: 18, mulch: 36, gravel: 22 };
/** Where nobody said what lies there. */
const USUAL_RISE = 18;
export const MOST_RISE = Math.max(...Object.values(RISES));

/** What lies under a point: the last area drawn that holds it, else the yard's; `null` where nobody said. */
export function surfaceUnder(
  scene: Pick<Scene, 'grounds' | 'surface'>,
  [x, y]: PlanPoint | SpacePoint,
): Surface | null {
  return scene.grounds.findLast(({ ring }) => pointInRing([x, y], ring))?.surface ?? scene.surface;
}

/** Rise of the ground under a point, by what lies there. [K] */
export function groundRise(scene: Scene, at: SpacePoint): number {
  const surface = surfaceUnder(scene, at);
  return surface === null ? USUAL_RISE : RISES[surface];
}
