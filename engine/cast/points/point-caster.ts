import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { OwnCrown, Scene, Solid } from '../../scene/solids.ts';
import { type Directions, directionsOf, type Passes } from '../passes.ts';
import { dim, type Standing, standingOf, standingSolids } from './standing.ts';

/**
 * Casts many directions at single points: shares only, equal to `castRay`'s, nothing allocated in a loop over passes.
 */
export interface PointCaster {
  /**
   * Share of each pass's beam that reaches a point.
   * @param own A plant's own crown, in the way for this point alone; what the plant throws over others is not.
   * @param into Receives the shares, one a pass; a new array if absent.
   */
  sharesAt(point: SpacePoint, own?: OwnCrown, into?: Float64Array): Float64Array;
  /**
   * Multiplies shares that `sharesAt` gave for a point by what further solids let through: cloth that is only tried.
   * @param hangs 1 for the passes in which they stand, 0 for the others; absent: in all.
   */
  dim(point: SpacePoint, solids: readonly Solid[], shares: Float64Array, hangs?: Uint8Array | null): void;
}

/** Lays scene and passes out for `sharesAt`. */
export function createPointCaster(scene: Scene, passes: Passes): PointCaster {
  return createDirectionCaster(scene, directionsOf(scene, passes));
}

/** The same along directions that several scenes of one yard share. */
export function createDirectionCaster(scene: Scene, directions: Directions): PointCaster {
  return createStandingCaster(standingSolids(scene, directions), directions);
}

/** The same of what is known to stand there. */
export function createStandingCaster(standing: readonly Standing[], directions: Directions): PointCaster {
  const candidates = new Int32Array(directions.count);
  return {
    sharesAt(point, own, into = new Float64Array(directions.count)) {
      for (let k = 0; k < directions.count; k++) into[k] = 1 - directions.dark[k];
      // A plant's own crown lets nothing through.
      if (own !== undefined) dim(standingOf(own.of, own, null), point, directions, candidates, into);
      for (const each of standing) if (each.id !== own?.of) dim(each, point, directions, candidates, into);
      return into;
    },
    dim(point, solids, shares, hangs = null) {
      for (const solid of solids) dim(standingOf('', solid, hangs), point, directions, candidates, shares);
    },
  };
}
