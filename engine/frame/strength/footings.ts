/** Holes and the concrete that fills them. */

import { countUp } from '../../plan/numbers/tolerances.ts';
import type { FrameBrief, FrameModel, FramePost } from '../layout/model.ts';
import type { AnchorPlan, GroundKind, Hole } from './types.ts';

/** Ground that can be dug. */
export type SoilKind = Exclude<GroundKind, 'paving' | 'wheels'>;

/** Cast, and the share of it that comes dry out of the bag. [kg/m³] */
const CONCRETE = 2350;
const DRY_SHARE = 0.92;
/** No hole comes out as drawn: common practice, no source. */
const OVERDUG = 1.05;

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

/** How deep posts of a kind stand in the ground. [m] */
export type SunkDepth = (role: FramePost['role']) => number;

export const ON_FEET: SunkDepth = () => 0;

/** Of a frame as it is held; 0 for posts on feet. */
export function sunkDepth(model: FrameModel, brief: FrameBrief, { posts }: AnchorPlan): SunkDepth {
  if (brief.anchor !== 'sunk') return ON_FEET;
  if (model.kind === 'screen') return () => screenDepth(tallestOf(model));
  return (role) => (posts.find(({ post }) => post === kindOfPost(role))?.hole ?? HOLE.garden).depth - UNDER_POST;
}

/** What posts of a kind are called. */
export function kindOfPost(role: FramePost['role']): string {
  return `${role} post`;
}

/** How deep a screen's posts stand. [m]  @param height Of the tallest. [m] */
export function screenDepth(height: number): number {
  return roundUp(Math.max(SCREEN_LEAST, SCREEN_SHARE * height));
}

/**
 * The hole under one post, in steps of 5 cm.
 * @param least The smallest hole that makes sense in the ground.  @param mass To be held down there. [kg]
 */
export function holeFor(model: FrameModel, least: { diameter: number; depth: number }, mass: number): Hole {
  let { diameter } = least;
  const depthAt = (across: number): number =>
    roundUp(Math.max(least.depth, mass / CONCRETE / ((Math.PI * across ** 2) / 4)));
  while (depthAt(diameter) > DEEPEST_HOLE && diameter < 0.8) diameter = Math.round((diameter + STEP) * 100) / 100;
  const depth =
    model.kind === 'screen' && !model.braced ? screenDepth(tallestOf(model)) + UNDER_POST : depthAt(diameter);
  return { diameter, depth, volume: ((Math.PI * diameter ** 2) / 4) * depth };
}

/** Bags that fill a volume. @param volume [m³]  @param bag Of dry mix in one. [kg] */
export function bagsFor(volume: number, bag: number): number {
  return countUp((volume * OVERDUG * CONCRETE * DRY_SHARE) / bag);
}

function tallestOf({ posts }: FrameModel): number {
  return Math.max(...posts.map(({ height }) => height));
}

function roundUp(metres: number): number {
  return Math.round(countUp(metres / STEP) * STEP * 100) / 100;
}
