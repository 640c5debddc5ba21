import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { MonthDay } from '../../plan/types.ts';
import { stateOf } from '../../scene/build.ts';
import { lidMeets, clothCosine, clothMeets, slantShare } from '../../scene/cloth-sheet.ts';
import { lengthInCrown } from '../../scene/crown.ts';
import { planDirection } from '../../scene/direction.ts';
import { shareInside } from '../../scene/fading.ts';
import { prismCrossings } from '../../scene/prism.ts';
import type { Occluder, Scene, Solid } from '../../scene/solids.ts';
import { lengthInStand } from '../../scene/stand.ts';
import { isDark } from '../passes.ts';

/** What one feature alone lets through of a beam: 0 to 1. */
interface Blocker {
  /** Feature id, or `skyline`. */
  readonly id: string;
  readonly transmittance: number;
}

export interface RayResult {
  /** Share of the beam that reaches the point, the product of the blockers' transmittances: 0 to 1. */
  readonly share: number;
  /** What takes something of the beam (`transmittance` < 1): the skyline first, then features in the plan's order. */
  readonly blockers: readonly Blocker[];
}

/**
 * The share of a beam that reaches a point, and what takes the rest: the reference, exact and plain.
 * @param point [x, y, z] on the plan. [m]
 * @param azimuth True bearing of the source. [°]
 * @param altitude Apparent altitude of the source. [°] At or below 0, or the skyline, the share is 0.
 * @param monthDay Day of the year, for leafless trees and taken-down cloth.
 */
export function castRay(
  scene: Scene,
  point: SpacePoint,
  azimuth: number,
  altitude: number,
  monthDay: MonthDay,
): RayResult {
  const blockers: Blocker[] = [];
  if (isDark(scene, azimuth, altitude)) blockers.push({ id: 'skyline', transmittance: 0 });
  if (altitude <= 0) return { share: 0, blockers };
  const direction = planDirection(azimuth, altitude, scene.upBearing);
  for (const occluder of scene.states[stateOf(scene, monthDay)]) {
    const transmittance = occluderShare(occluder, point, direction);
    if (transmittance < 1) blockers.push({ id: occluder.id, transmittance });
  }
  return { share: blockers.reduce((share, blocker) => share * blocker.transmittance, 1), blockers };
}

/** Share of a beam that one feature lets through. @param direction Unit vector towards the source; its z is above 0. */
function occluderShare(occluder: Occluder, point: SpacePoint, direction: SpacePoint): number {
  return occluder.solids.reduce((share, solid) => share * solidShare(solid, point, direction), 1);
}

function solidShare(solid: Solid, point: SpacePoint, direction: SpacePoint): number {
  switch (solid.kind) {
    case 'prism':
      return solid.openness ** prismCrossings(solid, point, direction);
    case 'cloth':
      return clothMeets(solid, point, direction) ? slantShare(solid.share, clothCosine(solid, direction)) : 1;
    case 'lid':
      return lidMeets(solid, point, direction) ? 0 : 1;
    case 'stand':
      return shareInside(solid.openness, solid.height, lengthInStand(solid, ...point, ...direction));
    default:
      return shareInside(solid.openness, solid.top - solid.base, lengthInCrown(solid, ...point, ...direction));
  }
}
