import type { Crown, Scene, SpacePoint } from '../scene/solids.ts';
import type { Passes } from './passes.ts';

/** Casts many directions at single points without allocating: shares only. Equals `castRay`. */
export interface PointCaster {
  /**
   * Share of each pass's beam that reaches a point.
   * @param own An extra crown in the way for this point alone (a plant's own).
   * @param into Receives the shares, one a pass; a new array if absent.
   */
  sharesAt(point: SpacePoint, own?: Crown, into?: Float64Array): Float64Array;
}

/** Lays the scene and the passes out for `sharesAt`. */
export function createPointCaster(_scene: Scene, _passes: Passes): PointCaster {
  throw new Error('not yet');
}
