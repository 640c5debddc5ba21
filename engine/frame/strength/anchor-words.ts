/** How a frame is held down, in sentences. */

import { formatMass, formatSpeed } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { formatDug, formatForce, formatVolume } from '../layout/lengths.ts';
import type { FrameModel } from '../layout/model.ts';
import { idsNamed } from '../layout/post-names.ts';
import { groundPlace, isFloor } from './grounds.ts';
import type { AnchorKind, AnchorPlan, GroundKind, Hole, PostLoad } from './types.ts';
import { BALLAST_FACTOR, upliftCoefficient } from './wind.ts';

/** Whether nothing but the ground round its posts keeps a screen upright. */
export function isHeldByDepth({ kind, braced }: FrameModel): boolean {
  return kind === 'screen' && !braced;
}

const HELD_BY_DEPTH =
  'A screen’s posts are held by their depth, not by weight: the push of the wind bends them at the ground.';

/** @param blocked Whether the wind is kept from passing below the roof.  @param stays Whether stays have feet too. */
export function openingWords(
  model: FrameModel,
  { gust, perPost, posts }: Pick<AnchorPlan, 'gust' | 'perPost' | 'posts'>,
  blocked: boolean,
  stays: boolean,
  units: Units,
): string {
  if (isHeldByDepth(model)) return HELD_BY_DEPTH;
  const counted =
    model.kind === 'screen'
      ? 'so that the push of the wind does not tip it'
      : blocked
        ? 'counted for wind that is caught below the roof'
        : `counted for wind that passes freely below${harderCaught(model.pitchDeg)}`;
  const most = posts.some(({ hold }) => hold < perPost) ? 'up to ' : '';
  const pulled = Math.max(...posts.map(({ ballast }) => (blocked ? ballast.blocked : ballast.clear)));
  const why =
    perPost > Math.ceil(pulled)
      ? 'That is the least for anything on feet; the pull asks for less'
      : `That is ${BALLAST_FACTOR} times the pull, with the frame's own weight taken off`;
  return (
    `At gusts of ${formatSpeed(gust, units)} each ${stays ? 'post, and each foot of a stay,' : 'post'} must be held ` +
    `down with ${most}${formatMass(perPost, units)}, ${counted}. ${why}.`
  );
}

/**
 * How much harder wind pulls that cannot pass below a roof; nothing to say of a steep one, which pulls as hard in any
 * case.
 */
function harderCaught(pitchDeg: number): string {
  const { clear, blocked } = upliftCoefficient(pitchDeg);
  return blocked > 1.1 * clear ? `; caught wind pulls ${(blocked / clear).toFixed(1)} times as hard` : '';
}

/** @param pull On each bracket. [N] */
export function onWallWords(
  { count, pull }: { readonly count: number; readonly pull: number },
  units: Units,
): string[] {
  return count === 0
    ? []
    : [
        `Each of the ${count} wall brackets is pulled, up or out, with up to ${formatForce(pull, units)}, the same ` +
          `${BALLAST_FACTOR} times counted. What the wall and its plugs bear is not worked out here: somebody ` +
          `licensed for it looks at the wall, chooses the fixings and sets them.`,
      ];
}

export const GROUND_UNKNOWN =
  'Anchors are not worked out: say what the ground is (garden soil, hard ground or caliche, loose soil, wet ' +
  'ground, paving, or a floor without fixings).';

/** @param each So many of them at one post. */
export function tooManyWords(kind: AnchorKind, each: number): string {
  const what = kind === 'augers' ? 'augers' : 'stakes';
  return `It would take ${each} ${what} at one post, more than anyone drives: concrete footings are counted instead.`;
}

/** @param stays Whether stays have feet too.  @param byDepth Whether posts are held by their depth. */
export function footingWords(
  posts: readonly PostLoad[],
  concrete: NonNullable<AnchorPlan['concrete']>,
  { stays, byDepth }: { readonly stays: boolean; readonly byDepth: boolean },
  ground: GroundKind,
  units: Units,
): string[] {
  const holes = holesByPost(posts, units).map(
    ({ who, hole, volume }) => `${who}: ${hole}, ${formatVolume(volume, units)} of concrete`,
  );
  return [
    `One hole a post${stays ? ' and one like it a foot of a stay' : ''}. ${holes.join('. ')}. In all ` +
      `${concrete.bags} bags of ${formatMass(concrete.bag, units)}.` +
      `${byDepth ? '' : ' Only its weight is counted, not the grip of the soil.'}`,
    ...(ground === 'hard'
      ? ['Caliche is broken with a digging bar; keep the hole wider at its foot than at its top.']
      : []),
  ];
}

/** Posts with holes alike, and their hole as it is dug. @param posts Of the anchor plan. */
export function holesByPost(
  posts: readonly PostLoad[],
  units: Units,
): { readonly who: string; readonly hole: string; readonly depth: number; readonly volume: number }[] {
  const holes = posts.flatMap(({ ids, hole }) => (hole === null ? [] : [{ ids, hole }]));
  const sizes = [...new Set(holes.map(({ hole }) => holeSize(hole, units)))];
  return sizes.map((size) => {
    const alike = holes.filter(({ hole }) => holeSize(hole, units) === size);
    const { depth, volume } = alike[0].hole;
    return { who: idsNamed(alike.flatMap(({ ids }) => ids)), hole: size, depth, volume };
  });
}

function holeSize({ diameter, depth }: Hole, units: Units): string {
  return `${formatDug(diameter, units)} across and ${formatDug(depth, units)} deep`;
}

/** @param holds What one is counted at. [N] */
export function drivenWords(
  kind: 'stakes' | 'augers',
  posts: readonly PostLoad[],
  ground: GroundKind,
  holds: number,
  units: Units,
): string[] {
  const metric = units === 'metric';
  const what =
    kind === 'stakes'
      ? `Stakes of ${metric ? '12 mm rebar, 0.6 m' : '1/2 in rebar, 2 ft'} long`
      : `Garden augers, ${metric ? '30 to 40 cm' : '12 to 16 in'} long`;
  return [
    `${what}, ${groundPlace(ground)}: ${eachByPost(posts)}, counted at ${formatForce(holds, units)} each, the low ` +
      `end of what is known. Pull-test yours with a spring balance and a lever; after days of rain they hold ` +
      `about half.`,
    'A strap at 45° to a stake outside the frame carries 1.4 times the uplift. It goes round the post above a clamp: ' +
      'without one it slides down the tube when the post lifts.',
  ];
}

/** "2 at each post", or "2 at P1 and P3; 3 at P2". */
function eachByPost(posts: readonly PostLoad[]): string {
  const counts = [...new Set(posts.map(({ each }) => each))];
  if (counts.length === 1) return `${counts[0]} at each post`;
  return counts
    .map((count) => `${count} at ${idsNamed(posts.filter(({ each }) => each === count).flatMap(({ ids }) => ids))}`)
    .join('; ');
}

/**
 * @param slab Its mass. [kg]  @param sandbag Its mass. [kg]  @param stays Whether stays have feet too.
 */
export function ballastWords(
  posts: readonly PostLoad[],
  { slab, sandbag, stays }: { readonly slab: number; readonly sandbag: number; readonly stays: boolean },
  ground: GroundKind,
  units: Units,
): string[] {
  const metric = units === 'metric';
  const feet = stays ? 2 : 1;
  const all = posts.reduce((sum, { hold, count }) => sum + hold * count * feet, 0);
  const alike = [...new Set(posts.map(({ hold }) => hold))].map((hold) => {
    const same = posts.filter((post) => post.hold === hold);
    const water = metric ? `${hold} litres of water` : `${Math.ceil(hold / 3.785)} gallons of water`;
    return (
      `${idsNamed(same.flatMap(({ ids }) => ids))}: ${same[0].each} cans of ${metric ? '25 litres' : '6.6 gallons'} ` +
      `(${water} are needed), or ${Math.ceil(hold / slab)} slabs of ` +
      `${metric ? '60 × 60 × 5 cm' : '24 × 24 × 2 in'}, or ${Math.ceil(hold / sandbag)} sandbags of ` +
      `${formatMass(sandbag, units)}`
    );
  });
  return [
    `${alike.join('. ')}.${stays ? ' As much on each foot of a stay.' : ''} Weights stand on the foot plate, or are ` +
      `strapped to the post above a clamp, so that the strap cannot slide down the tube. Check the water once a week.`,
    ...(isFloor(ground)
      ? [`In all ${formatMass(all, units)} stand on the floor: a roof or balcony may not bear it.`]
      : []),
    ...(ground === 'wheels'
      ? ['A frame on wheels rolls before it lifts: lock the wheels and take the cloth off whenever nobody is at home.']
      : []),
  ];
}
