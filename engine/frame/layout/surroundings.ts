/**
 * What stands near a frame: walls that catch the wind under it, faces too close to work at, things where posts would
 * stand.
 */

import { potOf } from '../../plan/defaults.ts';
import { distance, distanceToShape, pointInRing, lineRound } from '../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../plan/geometry/trunk.ts';
import type { Building, Feature, Hedge, Plan, PlanPoint, Wall } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';

/** A wall counts as blocking the wind when it reaches this share of the roof's height. */
const BLOCKING_SHARE = 0.5;
/** Hands and eaves drip need this much between a frame and a wall. [m] */
export const HAND_BREADTH = 0.1;
/** Footings keep this far from a wall that is not yours. [m] */
export const FOOTING_CLEARANCE = 0.3;

type Upright = Wall | Hedge | Building;

export interface Neighbour {
  readonly id: string;
  readonly name: string;
  readonly kind: Upright['kind'];
  readonly height: number;
  /** From the nearest point of the footprint to its face. [m] */
  readonly gap: number;
}

/**
 * Walls, hedges and buildings within `reach` of a footprint (a ring, or a path of two points or more), nearest first.
 */
export function neighboursOf(plan: Plan, footprint: readonly PlanPoint[], reach: number): Neighbour[] {
  return plan.features
    .filter(
      (feature): feature is Upright =>
        feature.kind === 'wall' || feature.kind === 'hedge' || feature.kind === 'building',
    )
    .map((feature) => ({
      id: feature.id,
      name: thingName(feature),
      kind: feature.kind,
      height: feature.height,
      gap: gapTo(feature, footprint),
    }))
    .filter((neighbour) => neighbour.gap <= reach)
    .toSorted((a, b) => a.gap - b.gap);
}

/**
 * Ids of what would keep the wind from passing freely below a roof: walls within one roof height, and a crown or hedge
 * right under it.
 */
export function blockersBelow(plan: Plan, footprint: readonly PlanPoint[], roofHeight: number): string[] {
  const walls = neighboursOf(plan, footprint, roofHeight)
    .filter((neighbour) => neighbour.height >= BLOCKING_SHARE * roofHeight)
    .map(({ id }) => id);
  const crowns = plan.features.filter((feature) => fillsUnder(feature, footprint, roofHeight)).map(({ id }) => id);
  return [...walls, ...crowns];
}

/** Face of the nearest thing that stands within reach of a post. @param reach [m] */
export function nearestFace(plan: Plan, at: PlanPoint, reach: number): Neighbour | undefined {
  return neighboursOf(plan, [at, at], reach)[0];
}

/** What keeps a post from standing at a point: a no-post area, a trunk, a plant's foot. */
export function whatStandsAt(plan: Plan, point: PlanPoint): string | undefined {
  const found = plan.features.find((feature) => occupies(feature, point));
  return found === undefined ? undefined : thingName(found);
}

function occupies(feature: Feature, [x, y]: PlanPoint): boolean {
  switch (feature.kind) {
    case 'keepout':
      return feature.blocks.includes('posts') && pointInRing([x, y], feature.outline);
    case 'bed':
    case 'building':
      return pointInRing([x, y], feature.outline);
    case 'tree':
      return Math.hypot(x - feature.at[0], y - feature.at[1]) <= Math.max(0.15, trunkRadius(feature.height));
    case 'plant':
      return Math.hypot(x - feature.at[0], y - feature.at[1]) <= Math.max(0.25, potOf(feature).width / 2);
    default:
      return false;
  }
}

function gapTo(feature: Upright, footprint: readonly PlanPoint[]): number {
  if (feature.kind !== 'building') return Math.max(0, distanceToShape(footprint, feature.path) - feature.thickness / 2);
  const isIn = footprint.some((point) => pointInRing(point, feature.outline));
  return isIn ? 0 : distanceToShape(footprint, lineRound(feature.outline));
}

/** A tree or shrub of which the crown fills half of the roof's width close under it. */
function fillsUnder(feature: Feature, footprint: readonly PlanPoint[], roofHeight: number): boolean {
  if (footprint.length < 3 || (feature.kind !== 'tree' && feature.kind !== 'plant')) return false;
  const width = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
  const narrow = Math.min(distance(footprint[0], footprint[1]), distance(footprint[1], footprint[2]));
  return pointInRing(feature.at, footprint) && feature.height >= 0.8 * roofHeight && width >= narrow / 2;
}

function thingName(feature: Feature): string {
  return shownName(feature.name ?? `the ${feature.kind} "${feature.id}"`);
}
