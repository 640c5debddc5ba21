/** What holds each post down, by the ground it stands in. */
import type { Units } from '../../plan/units.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import { ballastWords, drivenWords, footingWords, GROUND_UNKNOWN, openingWords } from './anchor-words.ts';
import { BAG, CONCRETE, footingFor, HOLE } from './footings.ts';
import type { SoilKind } from './footings.ts';
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
/** Stakes or augers at one post that still make sense. */
const MOST_ANCHORS = 6;

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
  return model.tubes.reduce(
    (sum, { from, to }) => sum + massPerMetre * Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]),
    clothMass,
  );
}

/** Pull on each kind of post at a gust. */
function postLoads(model: FrameModel, gust: number, ownWeight: number): PostLoad[] {
  const uplift = upliftForce(gust, model.roofArea, model.cloths[0].density, model.pitchDeg);
  const tipping = liftOfPush(model, gust);
  const roles = [...new Set(model.posts.map((post) => post.role))];
  return roles.map((role) => {
    const posts = model.posts.filter((post) => post.role === role);
    const share = Math.max(...posts.map((post) => post.share));
    const pull = (force: number): number => force * share + (role === 'inner' ? 0 : tipping);
    const own = ownWeight * share;
    const range = (of: (force: number) => number): WindRange => ({
      clear: Math.max(0, of(uplift.clear)),
      blocked: Math.max(0, of(uplift.blocked)),
    });
    return {
      post: `${role} post`,
      count: posts.length,
      uplift: range((force) => pull(force) - own * GRAVITY),
      ballast: range((force) => (BALLAST_FACTOR * pull(force)) / GRAVITY - own),
    };
  });
}

/** @param blocked Whether the wind is kept from passing below, so that the hard end of the range holds. */
export function anchorPlan(
  model: FrameModel,
  brief: FrameBrief,
  ownWeight: number,
  blocked: boolean,
  units: Units,
): AnchorPlan {
  const { ground, anchor: kind, gust } = brief;
  const posts = postLoads(model, gust, ownWeight);
  const worst = Math.max(...posts.map((post) => (blocked ? post.ballast.blocked : post.ballast.clear)));
  const perPost = Math.ceil(Math.max(worst, LEAST_BALLAST));
  const stays = model.kind === 'screen' && model.braced;
  const holding = holdingOf(model, ground, kind, perPost, stays, units);
  return {
    ground,
    kind,
    gust,
    factor: BALLAST_FACTOR,
    posts,
    perPost,
    ...holding,
    sentences: [openingWords(model, { gust, perPost }, blocked, stays, units), ...holding.sentences],
  };
}

type Holding = Pick<AnchorPlan, 'count' | 'footing' | 'ballast' | 'sentences'>;

/** @param stays Whether every post has a stay, whose foot is held down like the post. */
function holdingOf(
  model: FrameModel,
  ground: GroundKind | null,
  kind: AnchorKind,
  perPost: number,
  stays: boolean,
  units: Units,
): Holding {
  const feet = (stays ? 2 : 1) * model.posts.length;
  if (ground === null) return { count: 0, footing: null, ballast: null, sentences: [GROUND_UNKNOWN] };
  if (ground === 'paving' || ground === 'wheels') return ballasted(ground, perPost, feet, stays, units);
  switch (kind) {
    case 'footing':
    case 'sunk': {
      const footing = footingFor(model, HOLE[ground], perPost, feet);
      const mass = { hole: footing.volume * CONCRETE, bag: BAG };
      return { count: feet, footing, ballast: null, sentences: footingWords(footing, mass, ground, units) };
    }
    case 'stakes':
    case 'augers': {
      const holds = (kind === 'stakes' ? STAKE_HOLDS : AUGER_HOLDS) * SOIL_FACTOR[ground];
      const each = Math.max(1, Math.ceil((perPost * GRAVITY) / holds));
      const driven = { each, holds, tooMany: each > MOST_ANCHORS };
      const sentences = drivenWords(kind, ground, driven, units);
      return { count: each * feet, footing: null, ballast: null, sentences };
    }
    case 'ballast':
      return ballasted(ground, perPost, feet, stays, units);
  }
}

function ballasted(ground: GroundKind, perPost: number, feet: number, stays: boolean, units: Units): Holding {
  const ballast = {
    litresOfWater: perPost,
    slabs: Math.ceil(perPost / SLAB),
    sandbags: Math.ceil(perPost / SANDBAG),
  };
  const cans = Math.ceil(perPost / WATER_CAN);
  const sentences = ballastWords(ballast, { cans, sandbag: SANDBAG, stays }, ground, units);
  return { count: feet * cans, footing: null, ballast, sentences };
}
