/** Holes and the concrete that fills them. */
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import type { AnchorPlan, GroundKind } from './types.ts';

/** Ground that can be dug. */
export type SoilKind = Exclude<GroundKind, 'paving' | 'wheels'>;

/** Cast, and the share of it that comes dry out of the bag. [kg/m³] */
export const CONCRETE = 2350;
const DRY_SHARE = 0.92;
export const BAG = 25;

/** Holes by ground: hard ground is dug wide and shallow, loose ground needs more. [m] */
export const HOLE: Readonly<Record<SoilKind, { diameter: number; depth: number }>> = {
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

/**
 * @param least The smallest hole that makes sense in the ground.  @param mass To be held down at one post. [kg]
 * @param count How many holes.
 */
export function footingFor(
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
