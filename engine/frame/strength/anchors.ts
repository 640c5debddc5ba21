/** What holds each post down, by the ground it stands in. */
import { formatCut, formatMass, formatSpeed } from '../../plan/units.ts';
import type { Units } from '../../plan/units.ts';
import { groundPlace } from './grounds.ts';
import { formatForce, formatVolume } from '../layout/lengths.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import { liftOfPush } from './side-push.ts';
import type { AnchorPlan, GroundKind, PostLoad, WindRange } from './types.ts';
import { BALLAST_FACTOR, GRAVITY, upliftCoefficient, upliftForce } from './wind.ts';

/** Cast, and the share of it that comes dry out of the bag. [kg/m³] */
const CONCRETE = 2350;
const DRY_SHARE = 0.92;
const BAG = 25;
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
const SOIL_FACTOR: Readonly<Record<GroundKind, number>> = {
  garden: 0.6,
  hard: 1,
  loose: 0.3,
  wet: 0.3,
  paving: 0,
  wheels: 0,
};

/** Holes by ground: hard ground is dug wide and shallow, loose ground needs more. [m] */
const HOLE: Readonly<Record<'garden' | 'hard' | 'loose' | 'wet', { diameter: number; depth: number }>> = {
  garden: { diameter: 0.3, depth: 0.45 },
  hard: { diameter: 0.4, depth: 0.3 },
  loose: { diameter: 0.4, depth: 0.6 },
  wet: { diameter: 0.4, depth: 0.6 },
};
const DEEPEST_HOLE = 0.9;
const STEP = 0.05;
/** A post set in concrete ends this far above the bottom of its hole. [m] */
export const UNDER_POST = 0.05;
/**
 * A screen's post stands this share of its height in the ground, at least `SCREEN_LEAST` deep: common practice, no
 * source.
 */
const SCREEN_SHARE = 1 / 3;
const SCREEN_LEAST = 0.6;

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
  const posts = postLoads(model, brief.gust, ownWeight);
  const worst = Math.max(...posts.map((post) => (blocked ? post.ballast.blocked : post.ballast.clear)));
  const perPost = Math.ceil(Math.max(worst, LEAST_BALLAST));
  const feet = model.posts.length + (model.kind === 'screen' && model.braced ? model.posts.length : 0);
  const plan: Omit<AnchorPlan, 'sentences' | 'count' | 'footing' | 'ballast'> = {
    ground: brief.ground,
    kind: brief.anchor,
    gust: brief.gust,
    factor: BALLAST_FACTOR,
    posts,
    perPost,
  };
  const places = feet > model.posts.length ? 'post, and each foot of a stay,' : 'post';
  const opening = [
    `At gusts of ${formatSpeed(brief.gust, units)} each ${places} must be held down with ${formatMass(perPost, units)}, ${
      model.kind === 'screen'
        ? 'so that the push of the wind does not tip it'
        : blocked
          ? 'counted for wind that is caught below the roof'
          : `counted for wind that passes freely below${harderCaught(model.pitchDeg)}`
    }. That is ${BALLAST_FACTOR} times the pull, with the frame's own weight taken off.`,
  ];
  if (model.kind === 'screen' && !model.braced)
    opening[0] =
      `A screen's posts are held by their depth, not by weight: the push of the wind bends them at ` + `the ground.`;
  const { ground } = brief;
  if (ground === null) {
    const sentences = [
      ...opening,
      'Anchors are not worked out: say what the ground is (garden soil, hard ground or caliche, loose soil, wet ' +
        'ground, paving, or a floor without fixings).',
    ];
    return { ...plan, count: 0, footing: null, ballast: null, sentences };
  }
  const metric = units === 'metric';
  const inSoil = ground !== 'paving' && ground !== 'wheels';
  switch (inSoil ? brief.anchor : 'ballast') {
    case 'footing':
    case 'sunk': {
      const footing = footingFor(model, HOLE[inSoil ? ground : 'garden'], perPost, feet);
      const hole = `${formatCut(footing.diameter, units)} across and ${formatCut(footing.depth, units)} deep`;
      return {
        ...plan,
        count: feet,
        footing,
        ballast: null,
        sentences: [
          ...opening,
          `One hole at each post, ${hole}, filled with concrete: ${formatVolume(footing.volume, units)} each ` +
            `(${formatMass(footing.volume * CONCRETE, units)}), ${footing.bags} bags of ${formatMass(BAG, units)} ` +
            `in all. Only its weight is counted, not the grip of the soil.`,
          ...(ground === 'hard'
            ? ['Caliche is broken with a digging bar; keep the hole wider at its foot than at its top.']
            : []),
        ],
      };
    }
    case 'stakes':
    case 'augers': {
      const stakes = brief.anchor === 'stakes';
      const holds = (stakes ? STAKE_HOLDS : AUGER_HOLDS) * SOIL_FACTOR[ground];
      const each = Math.max(1, Math.ceil((perPost * GRAVITY) / holds));
      return {
        ...plan,
        count: each * feet,
        footing: null,
        ballast: null,
        sentences: [
          ...opening,
          `${stakes ? `Stakes of ${metric ? '12 mm rebar, 0.6 m' : '1/2 in rebar, 2 ft'} long` : `Garden augers, ${metric ? '30 to 40 cm' : '12 to 16 in'} long`}, ${groundPlace(ground)}: ${each} at each post, counted at ${formatForce(holds, units)} each, the low end of what is known. Pull-test yours with a spring balance and a lever; after days of rain they hold about half.`,
          ...(each > MOST_ANCHORS ? ['That is more than anyone will drive: take concrete footings instead.'] : []),
          'A strap at 45° to a stake outside the frame carries 1.4 times the uplift.',
        ],
      };
    }
    case 'ballast': {
      const ballast = {
        litresOfWater: perPost,
        slabs: Math.ceil(perPost / SLAB),
        sandbags: Math.ceil(perPost / SANDBAG),
      };
      return {
        ...plan,
        count: feet * Math.ceil(perPost / WATER_CAN),
        footing: null,
        ballast,
        sentences: [
          ...opening,
          `${Math.ceil(perPost / WATER_CAN)} cans of 25 litres${metric ? '' : ' (6.6 gallons)'} filled with water ` +
            `at each ${feet > model.posts.length ? 'post and each foot of a stay' : 'post'} ` +
            `(${metric ? `${ballast.litresOfWater} litres` : `${Math.ceil(ballast.litresOfWater / 3.785)} gallons`} are needed), or ${ballast.slabs} slabs of ${metric ? '60 × 60 × 5 cm' : '24 × 24 × 2 in'}, or ${ballast.sandbags} sandbags of ${formatMass(SANDBAG, units)}, strapped to the post low down. Check the water once a week.`,
          ...(ground === 'wheels'
            ? [
                'A frame on wheels rolls before it lifts: lock the wheels and take the cloth off whenever nobody ' +
                  'is at home.',
              ]
            : []),
        ],
      };
    }
  }
}

/**
 * How much harder wind pulls that cannot pass below a roof; nothing to say of a steep one, which pulls as hard in any
 * case.
 */
function harderCaught(pitchDeg: number): string {
  const { clear, blocked } = upliftCoefficient(pitchDeg);
  return blocked > 1.1 * clear ? `; caught wind pulls ${(blocked / clear).toFixed(1)} times as hard` : '';
}

/** Depth to which posts stand in the ground, 0 for posts on feet. [m] */
export function sunkDepth(model: FrameModel, brief: FrameBrief, plan: AnchorPlan): number {
  if (brief.anchor !== 'sunk') return 0;
  if (model.kind === 'screen') return screenDepth(model);
  return (plan.footing?.depth ?? HOLE.garden.depth) - UNDER_POST;
}

function screenDepth(model: FrameModel): number {
  const height = Math.max(...model.posts.map((post) => post.height));
  return roundUp(Math.max(SCREEN_LEAST, SCREEN_SHARE * height));
}

function footingFor(
  model: FrameModel,
  least: { diameter: number; depth: number },
  mass: number,
  count: number,
): NonNullable<AnchorPlan['footing']> {
  let { diameter } = least;
  const depthAt = (across: number): number =>
    roundUp(Math.max(least.depth, mass / CONCRETE / ((Math.PI * across ** 2) / 4)));
  while (depthAt(diameter) > DEEPEST_HOLE && diameter < 0.8) diameter = Math.round((diameter + STEP) * 100) / 100;
  const depth = model.kind === 'screen' && !model.braced ? screenDepth(model) + UNDER_POST : depthAt(diameter);
  const volume = ((Math.PI * diameter ** 2) / 4) * depth;
  return {
    diameter,
    depth,
    volume,
    totalVolume: volume * count,
    bags: Math.ceil((volume * count * CONCRETE * DRY_SHARE) / BAG - 1e-9),
  };
}

function roundUp(metres: number): number {
  return Math.round(Math.ceil(metres / STEP - 1e-9) * STEP * 100) / 100;
}
