import { briefOf } from '../../../frame/layout/brief.ts';
import { footprintOf } from '../../../plan/geometry/cloth-shapes.ts';
import {
  boundsOf,
  openRing,
  pathsCross,
  pointInRing,
  distanceToShape,
  meets,
  closedRing,
} from '../../../plan/geometry/shapes.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Cloth, Plan, PlanPoint } from '../../../plan/types.ts';
import { type HungCloth, hungOf, type Upright } from '../kinds/hung.ts';
import type { SiteRule } from '../types.ts';
import { keepsClear, obstaclesOf, pointKeepsClear } from './obstacles.ts';
import { waysOf } from './ways.ts';

/** Under cloth over ground that people walk through. [m] */
export const HEADROOM = 2.1;
/** Upright cloth ends this far above the ground at least: air must come in. Our choice. [m] */
export const AIR_GAP = 0.2;

/**
 * What stands in the way of cloth. `ground`: a thing of the yard, whoever makes the rules; else the rules broken;
 * empty: nothing.
 */
type Objection = 'ground' | readonly SiteRule[];

export interface YardRules {
  /** Objections to cloth by its place and height. */
  objections(cloth: Cloth): Objection;
  /** The same, its posts left out: sooner told. */
  objectionsToPlace(cloth: Cloth): Objection;
  /** Whether all posts of its frame can stand. */
  postsStand(cloth: Cloth): boolean;
  /** Whether a point is on the property. */
  isIn(point: PlanPoint): boolean;
  /** Whether a post may stand at a point. */
  postFits(point: PlanPoint): boolean;
  /** Whether a roof at a height may cover a point of the property: where not, no roof over it can stand. */
  roofCovers(point: PlanPoint, height: number): boolean;
  /** The same for all heights at which a roof may cover the same points. */
  clearancesAt(height: number): string;
}

/**
 * @param maxHeight what the person asking allows besides the plan's rule [m]
 * @param maxBayOf longest bay of a cloth's frame [m]
 */
export function yardRules(
  plan: Plan,
  maxHeight = Infinity,
  maxBayOf: (cloth: Cloth) => number = bayReader(plan),
): YardRules {
  const boundary = openRing(plan.site.boundary);
  const fence = closedRing(boundary);
  const ground = groundRules(plan, boundary);
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, maxHeight);
  const setback = plan.site.rules?.setback ?? 0;
  const kept = plan.features.flatMap((feature) =>
    feature.kind === 'keepout' && feature.blocks.includes('canopy') ? [openRing(feature.outline)] : [],
  );
  const postsStand = (cloth: Cloth) => hungOf(cloth).posts(maxBayOf(cloth)).every(ground.postFits);
  const objectionsToPlace = (cloth: Cloth): Objection => {
    const shapes = shapesOf(cloth);
    const onProperty = shapes.every((shape) => shape.every(ground.isIn) && !pathsCross(outlineOf(shape), fence));
    if (!onProperty || !clothFits(ground, hungOf(cloth), cloth.height)) return 'ground';
    const broken: SiteRule[] = [];
    if (cloth.height > cap + ROUNDING) broken.push('height');
    if (setback > 0 && shapes.some((shape) => distanceToShape(shape, fence) < setback - ROUNDING))
      broken.push('setback');
    if (kept.some((ring) => shapes.some((shape) => meets(shape, ring)))) broken.push('keepout');
    return broken;
  };
  return {
    isIn: ground.isIn,
    postFits: ground.postFits,
    roofCovers: ground.roofCovers,
    clearancesAt: ground.clearancesAt,
    objectionsToPlace,
    postsStand,
    objections(cloth) {
      const objections = objectionsToPlace(cloth);
      return objections === 'ground' || !postsStand(cloth) ? 'ground' : objections;
    },
  };
}

/** What may stand on the ground of a yard and hang over it. */
interface Ground {
  isIn(point: PlanPoint): boolean;
  postFits(point: PlanPoint): boolean;
  roofCovers(point: PlanPoint, height: number): boolean;
  clearancesAt(height: number): string;
  roofFits(ring: readonly PlanPoint[], height: number): boolean;
  uprightFits(upright: Upright): boolean;
}

function groundRules(plan: Plan, boundary: readonly PlanPoint[]): Ground {
  const ways = waysOf(plan);
  const obstacles = obstaclesOf(plan);
  const freeOfWays = (shape: readonly PlanPoint[], foot: number): boolean =>
    foot >= HEADROOM - ROUNDING || !ways.some((way) => meets(shape, way));
  const isIn = (point: PlanPoint): boolean => pointInRing(point, boundary, ROUNDING);
  return {
    isIn,
    postFits: (post) =>
      isIn(post) &&
      !ways.some((way) => pointInRing(post, way)) &&
      obstacles.every((obstacle) => pointKeepsClear(post, obstacle, obstacle.postGap)),
    roofCovers: (point, height) =>
      (height >= HEADROOM - ROUNDING || !ways.some((way) => pointInRing(point, way))) &&
      obstacles.every((obstacle) => pointKeepsClear(point, obstacle, obstacle.roofGap(height))),
    clearancesAt: (height) =>
      [height >= HEADROOM - ROUNDING, ...obstacles.map((obstacle) => obstacle.roofGap(height))].join(' '),
    roofFits(ring, height) {
      const box = boundsOf(ring);
      return (
        freeOfWays(ring, height) &&
        obstacles.every((obstacle) => keepsClear(ring, box, obstacle, obstacle.roofGap(height)))
      );
    },
    uprightFits({ line, foot, top }) {
      const box = boundsOf(line);
      return (
        freeOfWays(line, foot) &&
        obstacles.every((obstacle) => keepsClear(line, box, obstacle, obstacle.curtainGap(foot, top)))
      );
    },
  };
}

function clothFits(ground: Ground, hung: HungCloth, height: number): boolean {
  const ring = hung.overhead();
  return (
    (ring === null || ground.roofFits(ring, height)) &&
    hung.uprights().every((upright) => upright.foot >= AIR_GAP - ROUNDING && ground.uprightFits(upright))
  );
}

/** The longest bay that the shop's tube allows a frame, worked out once a kind. [m] */
function bayReader(plan: Plan): (cloth: Cloth) => number {
  const known = new Map<string, number>();
  return (cloth) => {
    let bay = known.get(cloth.kind);
    if (bay === undefined) {
      const read = briefOf(cloth, plan);
      known.set(cloth.kind, (bay = read.ok ? read.brief.maxBay : Infinity));
    }
    return bay;
  };
}

/** The ground under cloth: a ring, or a line for each leg of a screen. */
function shapesOf(cloth: Cloth): PlanPoint[][] {
  const shape = footprintOf(cloth);
  return cloth.kind === 'canopy' ? [shape] : shape.slice(1).map((end, k) => [shape[k], end]);
}

function outlineOf(shape: readonly PlanPoint[]): readonly PlanPoint[] {
  return shape.length > 2 ? closedRing(shape) : shape;
}
