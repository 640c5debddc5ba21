import type { MonthDay } from '../plan/types.ts';
import type { Scene, SpacePoint } from '../scene/solids.ts';

/** What one feature alone lets through of a beam: 0 to 1. */
export interface Blocker {
  /** Feature id, or `skyline`. */
  readonly id: string;
  readonly passes: number;
}

export interface RayResult {
  /** Share of the beam that reaches the point, the product of what the blockers pass: 0 to 1. */
  readonly share: number;
  /** Features that take something of the beam (`passes` < 1), in the plan's order, the skyline first. */
  readonly blockers: readonly Blocker[];
}

/**
 * The share of a beam that reaches a point, and what takes the rest: the reference, exact and plain.
 * @param point [x, y, z] on the plan. [m]
 * @param azimuth True bearing of the source. [°]
 * @param altitude Apparent altitude of the source. [°] At or below 0, or the skyline, the share is 0.
 * @param monthDay Day of the year, for leafless trees and taken-down cloth.
 */
export function castRay(_scene: Scene, _point: SpacePoint, _azimuth: number, _altitude: number, _monthDay: MonthDay): RayResult {
  throw new Error('not yet');
}
