/** How a frame is held down, in sentences. */
import { formatCut, formatMass, formatSpeed } from '../../plan/units.ts';
import type { Units } from '../../plan/units.ts';
import { formatForce, formatVolume } from '../layout/lengths.ts';
import type { FrameModel } from '../layout/model.ts';
import { groundPlace } from './grounds.ts';
import type { AnchorPlan, GroundKind } from './types.ts';
import { BALLAST_FACTOR, upliftCoefficient } from './wind.ts';

/** @param blocked Whether the wind is kept from passing below the roof.  @param stays Whether stays have feet too. */
export function openingWords(
  model: FrameModel,
  { gust, perPost }: Pick<AnchorPlan, 'gust' | 'perPost'>,
  blocked: boolean,
  stays: boolean,
  units: Units,
): string {
  if (model.kind === 'screen' && !model.braced)
    return `A screen's posts are held by their depth, not by weight: the push of the wind bends them at the ground.`;
  const counted =
    model.kind === 'screen'
      ? 'so that the push of the wind does not tip it'
      : blocked
        ? 'counted for wind that is caught below the roof'
        : `counted for wind that passes freely below${harderCaught(model.pitchDeg)}`;
  return (
    `At gusts of ${formatSpeed(gust, units)} each ${stays ? 'post, and each foot of a stay,' : 'post'} must be held ` +
    `down with ${formatMass(perPost, units)}, ${counted}. That is ${BALLAST_FACTOR} times the pull, with the frame's ` +
    `own weight taken off.`
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

export const GROUND_UNKNOWN =
  'Anchors are not worked out: say what the ground is (garden soil, hard ground or caliche, loose soil, wet ' +
  'ground, paving, or a floor without fixings).';

/** @param mass Of the concrete in one hole, and of one bag. [kg] */
export function footingWords(
  footing: NonNullable<AnchorPlan['footing']>,
  mass: { readonly hole: number; readonly bag: number },
  ground: GroundKind,
  units: Units,
): string[] {
  const hole = `${formatCut(footing.diameter, units)} across and ${formatCut(footing.depth, units)} deep`;
  return [
    `One hole at each post, ${hole}, filled with concrete: ${formatVolume(footing.volume, units)} each ` +
      `(${formatMass(mass.hole, units)}), ${footing.bags} bags of ${formatMass(mass.bag, units)} ` +
      `in all. Only its weight is counted, not the grip of the soil.`,
    ...(ground === 'hard'
      ? ['Caliche is broken with a digging bar; keep the hole wider at its foot than at its top.']
      : []),
  ];
}

/** @param holds What one is counted at. [N]  @param tooMany Whether more are wanted than anyone drives. */
export function drivenWords(
  kind: 'stakes' | 'augers',
  ground: GroundKind,
  { each, holds, tooMany }: { readonly each: number; readonly holds: number; readonly tooMany: boolean },
  units: Units,
): string[] {
  const metric = units === 'metric';
  const what =
    kind === 'stakes'
      ? `Stakes of ${metric ? '12 mm rebar, 0.6 m' : '1/2 in rebar, 2 ft'} long`
      : `Garden augers, ${metric ? '30 to 40 cm' : '12 to 16 in'} long`;
  return [
    `${what}, ${groundPlace(ground)}: ${each} at each post, counted at ${formatForce(holds, units)} each, the low ` +
      `end of what is known. Pull-test yours with a spring balance and a lever; after days of rain they hold ` +
      `about half.`,
    ...(tooMany ? ['That is more than anyone will drive: take concrete footings instead.'] : []),
    'A strap at 45° to a stake outside the frame carries 1.4 times the uplift.',
  ];
}

/** @param cans At each post.  @param sandbag Mass of one. [kg]  @param stays Whether stays have feet too. */
export function ballastWords(
  { litresOfWater, slabs, sandbags }: NonNullable<AnchorPlan['ballast']>,
  { cans, sandbag, stays }: { readonly cans: number; readonly sandbag: number; readonly stays: boolean },
  ground: GroundKind,
  units: Units,
): string[] {
  const metric = units === 'metric';
  const water = metric ? `${litresOfWater} litres` : `${Math.ceil(litresOfWater / 3.785)} gallons`;
  return [
    `${cans} cans of 25 litres${metric ? '' : ' (6.6 gallons)'} filled with water ` +
      `at each ${stays ? 'post and each foot of a stay' : 'post'} ` +
      `(${water} are needed), or ${slabs} slabs of ${metric ? '60 × 60 × 5 cm' : '24 × 24 × 2 in'}, or ${sandbags} ` +
      `sandbags of ${formatMass(sandbag, units)}, strapped to the post low down. Check the water once a week.`,
    ...(ground === 'wheels'
      ? ['A frame on wheels rolls before it lifts: lock the wheels and take the cloth off whenever nobody is at home.']
      : []),
  ];
}
