import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { Directions } from '../passes.ts';
import { createStandingCaster, type PointCaster } from './point-caster.ts';
import { dim, mayDim, type Standing, standingSolids } from './standing.ts';

/** So many shares are remembered of a yard that others are held against, and of one that is held against it. */
const MOST = 2e7;
const MOST_OF_ANOTHER = 2e6;
/** What lets less through than this is not taken away from a share by division. */
const LEAST_DIVISOR = 1e-3;

/** Casts each point once. Of a yard like another that was cast before, only what is another is cast. */
export interface RememberingCaster extends PointCaster {
  readonly standing: readonly Standing[];
  /** What is remembered of a point. */
  known(point: SpacePoint, own?: OwnCrown): Float64Array | undefined;
}

/** @param like of a scene that differs in little, along the same directions */
export function createRememberingCaster(
  scene: Scene,
  directions: Directions,
  like?: RememberingCaster,
): RememberingCaster {
  const standing = standingSolids(scene, directions);
  const caster = createStandingCaster(standing, directions);
  const change = like && new Change(like.standing, standing, directions);
  const known = new Map<string, Float64Array>();
  const most = (like ? MOST_OF_ANOTHER : MOST) / Math.max(1, directions.count);
  return {
    ...caster,
    standing,
    known: (point, own) => known.get(placeKey(point, own)),
    sharesAt(point, own, into) {
      const key = placeKey(point, own);
      const found = known.get(key);
      if (found) {
        into?.set(found);
        return into ?? found.slice();
      }
      const shares = into ?? new Float64Array(directions.count);
      if (!change?.exchange(point, like?.known(point, own), shares, own)) caster.sharesAt(point, own, shares);
      if (known.size < most) known.set(key, shares.slice());
      return shares;
    },
  };
}

/** A point, and the crown that is in its way alone, as a word. */
export function placeKey(point: SpacePoint, own?: OwnCrown): string {
  return own === undefined ? point.join() : `${point.join()} ${own.radius} ${own.base} ${own.top} ${own.of}`;
}

/** What stands in one yard alone, or in another alone, along the same directions. */
export class Change {
  private readonly gone: readonly Standing[];
  private readonly added: readonly Standing[];
  private readonly directions: Directions;
  private readonly open: Float64Array;
  private readonly taken: Float64Array;
  private readonly candidates: Int32Array;

  constructor(from: readonly Standing[], to: readonly Standing[], directions: Directions) {
    this.gone = from.filter((each) => !to.some((other) => isSame(each, other)));
    this.added = to.filter((each) => !from.some((other) => isSame(each, other)));
    this.directions = directions;
    this.open = Float64Array.from(directions.dark, (dark) => 1 - dark);
    this.taken = new Float64Array(directions.count);
    this.candidates = new Int32Array(directions.count);
  }

  /** Whether all that reaches a point of the one yard reaches it in the other: `true` is certain. */
  leaves(point: SpacePoint): boolean {
    const meets = (each: Standing) => mayDim(each, point, this.directions, this.candidates, this.open);
    return !this.gone.some(meets) && !this.added.some(meets);
  }

  /**
   * Tells the shares at a point of the yard it is now.
   * @param was what reached it in the other @param into receives them @returns whether they could be told
   */
  exchange(point: SpacePoint, was: Float64Array | undefined, into: Float64Array, own?: OwnCrown): boolean {
    if (was === undefined) return false;
    const { directions, candidates, taken, open } = this;
    into.set(was);
    for (const each of this.gone) {
      if (each.id === own?.of || !mayDim(each, point, directions, candidates, open)) continue;
      taken.set(open);
      dim(each, point, directions, candidates, taken);
      for (let k = 0; k < into.length; k++) {
        if (taken[k] === open[k]) continue;
        if (taken[k] < LEAST_DIVISOR) return false;
        into[k] /= taken[k];
      }
    }
    for (const each of this.added) if (each.id !== own?.of) dim(each, point, directions, candidates, into);
    return true;
  }
}

function isSame(a: Standing, b: Standing): boolean {
  if (a.solid !== b.solid || a.id !== b.id) return false;
  const [in1, in2] = [a.stands, b.stands];
  return in1 === in2 || (in1 !== null && in2 !== null && in1.every((stands, k) => stands === in2[k]));
}
