/** What holds each post down, by the ground it stands in. */

import { spaceDistance } from '../../plan/geometry/vectors.ts';
import type { Units } from '../../plan/units/units.ts';
import { postsOnGround } from '../layout/model.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import {
  ballastWords,
  drivenWords,
  footingWords,
  GROUND_UNKNOWN,
  onWallWords,
  isHeldByDepth,
  openingWords,
  tooManyWords,
} from './anchor-words.ts';
import { bagsFor, HOLE, holeFor, kindOfPost } from './footings.ts';
import type { SoilKind } from './footings.ts';
import { isFloor } from './grounds.ts';
import { liftOfPush } from './side-push.ts';
import type { AnchorKind, AnchorPlan, GroundKind, PostLoad, WindRange } from './types.ts';
import { BALLAST_FACTOR, GRAVITY, upliftForce } from './wind.ts';

/** A can, a slab of 60 × 60 × 5 cm, a sandbag. [kg] */
const WATER_CAN = 25;
const SLAB = 42;
const SANDBAG = 20;
/** Nothing on feet stands with less than this beside it, however still the place. [kg] */
const LEAST_BALLAST = 20;

/**
 * What one holds in firm dry soil, the low end: rebar 12 mm × 0.6 m by skin friction of 10 kPa, garden auger of 30 to
 * 40 cm (from memory). [N]
 */
const STAKE_HOLDS = 230;
const AUGER_HOLDS = 300;
/** Stakes, augers or cans at one post that still make sense. */
export const MOST_ANCHORS = 6;

/** Of that, by ground (this project's own). */
const SOIL_FACTOR: Readonly<Record<SoilKind, number>> = {
  garden: 0.6,
  hard: 1,
  loose: 0.3,
  wet: 0.3,
};

/** Weight of tube and dry cloth. [kg]  @param clothArea [m²] */
export function ownWeightOf(model: FrameModel, massPerMetre: number, clothMass: number): number {
  // Above the ground only, so that deeper holes do not make the frame heavier.
  return model.tubes.reduce((sum, { from, to }) => sum + massPerMetre * spaceDistance(from, to), clothMass);
}

type Pulled = Pick<PostLoad, 'post' | 'ids' | 'count' | 'uplift' | 'ballast' | 'hold'>;

/** Pull on each kind of post at a gust. @param blocked Whether the wind is kept from passing below. */
function postLoads(model: FrameModel, gust: number, ownWeight: number, blocked: boolean): Pulled[] {
  const uplift = upliftForce(gust, model.roofArea, model.cloths[0].density, model.pitchDeg);
  const tipping = liftOfPush(model, gust);
  const standing = postsOnGround(model);
  const roles = [...new Set(standing.map((post) => post.role))];
  return roles.map((role) => {
    const posts = standing.filter((post) => post.role === role);
    const share = Math.max(...posts.map((post) => post.share));
    const pull = (force: number): number => force * share + (role === 'inner' ? 0 : tipping);
    const own = ownWeight * share;
    const range = (of: (force: number) => number): WindRange => ({
      clear: Math.max(0, of(uplift.clear)),
      blocked: Math.max(0, of(uplift.blocked)),
    });
    const ballast = range((force) => (BALLAST_FACTOR * pull(force)) / GRAVITY - own);
    return {
      post: kindOfPost(role),
      ids: posts.map(({ id }) => id),
      count: posts.length,
      uplift: range((force) => pull(force) - own * GRAVITY),
      ballast,
      hold: Math.ceil(Math.max(blocked ? ballast.blocked : ballast.clear, LEAST_BALLAST)),
    };
  });
}

/** How hard each bracket on a wall is pulled, and how many there are. [N] */
function wallPull(model: FrameModel, gust: number, blocked: boolean): { count: number; pull: number } {
  const brackets = model.posts.filter(({ onWall }) => onWall === true);
  if (brackets.length === 0) return { count: 0, pull: 0 };
  const uplift = upliftForce(gust, model.roofArea, model.cloths[0].density, model.pitchDeg);
  const most = Math.max(...brackets.map(({ share }) => share));
  return {
    count: brackets.length,
    pull: BALLAST_FACTOR * ((blocked ? uplift.blocked : uplift.clear) * most + liftOfPush(model, gust)),
  };
}

/** @param blocked Whether the wind is kept from passing below, so that the hard end of the range holds. */
export function anchorPlan(
  model: FrameModel,
  brief: FrameBrief,
  ownWeight: number,
  blocked: boolean,
  units: Units,
): AnchorPlan {
  const { ground, anchor: asked, gust } = brief;
  const pulled = postLoads(model, gust, ownWeight, blocked);
  const perPost = Math.max(...pulled.map(({ hold }) => hold));
  const stays = model.kind === 'screen' && model.braced;
  const each = drivenAtEach(asked, ground, perPost);
  const tooMany = each > MOST_ANCHORS;
  const kind = tooMany ? 'footing' : asked;
  const posts = pulled.map((post): PostLoad => ({ ...post, ...heldBy(model, kind, ground, post.hold) }));
  const feet = (of: (post: PostLoad) => number): number =>
    posts.reduce((sum, post) => sum + of(post) * post.count * (stays ? 2 : 1), 0);
  const volume = feet(({ hole }) => hole?.volume ?? 0);
  const plan = {
    ground,
    kind,
    gust,
    factor: BALLAST_FACTOR,
    posts,
    perPost,
    count: feet(({ hole, each: driven }) => (hole === null ? driven : 1)),
    concrete: volume > 0 ? { volume, bags: bagsFor(volume, brief.bag), bag: brief.bag } : null,
  };
  return {
    ...plan,
    sentences: [
      openingWords(model, plan, blocked, stays, units),
      ...(tooMany ? [tooManyWords(asked, each)] : []),
      ...onWallWords(wallPull(model, gust, blocked), units),
      ...holdingWords(plan, { stays, byDepth: isHeldByDepth(model) }, units),
    ],
  };
}

/** What holds one post down. */
function heldBy(
  model: FrameModel,
  kind: AnchorKind,
  ground: GroundKind | null,
  hold: number,
): Pick<PostLoad, 'hole' | 'each'> {
  if (ground === null) return { hole: null, each: 0 };
  if (isFloor(ground) || kind === 'ballast') return { hole: null, each: Math.ceil(hold / WATER_CAN) };
  if (kind === 'footing' || kind === 'sunk') return { hole: holeFor(model, HOLE[ground], hold), each: 0 };
  return { hole: null, each: drivenAtEach(kind, ground, hold) };
}

/** Stakes or augers that hold a weight; 0 where the frame is held otherwise. */
function drivenAtEach(kind: AnchorKind, ground: GroundKind | null, hold: number): number {
  return ground === null || isFloor(ground) || (kind !== 'stakes' && kind !== 'augers')
    ? 0
    : Math.max(1, Math.ceil((hold * GRAVITY) / holdsOf(kind, ground)));
}

/** What one holds. [N] */
function holdsOf(kind: 'stakes' | 'augers', ground: SoilKind): number {
  return (kind === 'stakes' ? STAKE_HOLDS : AUGER_HOLDS) * SOIL_FACTOR[ground];
}

function holdingWords(
  { ground, kind, posts, concrete }: Pick<AnchorPlan, 'ground' | 'kind' | 'posts' | 'concrete'>,
  by: { readonly stays: boolean; readonly byDepth: boolean },
  units: Units,
): string[] {
  if (ground === null) return [GROUND_UNKNOWN];
  if (concrete !== null) return footingWords(posts, concrete, by, ground, units);
  if (!isFloor(ground) && (kind === 'stakes' || kind === 'augers'))
    return drivenWords(kind, posts, ground, holdsOf(kind, ground), units);
  return ballastWords(posts, { slab: SLAB, sandbag: SANDBAG, stays: by.stays }, ground, units);
}
