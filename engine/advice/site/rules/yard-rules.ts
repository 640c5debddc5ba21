import { canopyGrid } from '../../../frame/layout/canopy-frame.ts';
import { briefOf } from '../../../frame/layout/model.ts';
import { screenPosts } from '../../../frame/layout/screen-frame.ts';
import { DEFAULTS } from '../../../plan/defaults.ts';
import {
  boundsOf,
  canopyCorners,
  canopyEdge,
  footprintOf,
  openRing,
  pathsCross,
  pointInRing,
} from '../../../plan/geometry/shapes.ts';
import type { Canopy, Plan, PlanPoint, Screen } from '../../../plan/types.ts';
import { keepsClear, obstaclesOf, pointKeepsClear, ROUNDING } from './obstacles.ts';
import { distanceToShape, meets } from '../shapes.ts';
import type { SiteRule } from '../types.ts';
import { waysOf } from '../search/ways.ts';

/** Under cloth over ground that people walk through. [m] */
export const HEADROOM = 2.1;
/** A drop ends this far above the ground at least: air must come in. Our choice. [m] */
export const AIR_GAP = 0.2;

/**
 * What stands in the way of cloth. `ground`: a thing of the yard, whoever makes the rules; else the rules broken;
 * empty: nothing.
 */
export type Objection = 'ground' | readonly SiteRule[];

export interface YardRules {
  /** Objections to cloth by its place and height. */
  objections(cloth: Canopy | Screen): Objection;
  /**
   * Whether a post may stand at a point; and whether a roof at a height may cover it: where not, no roof over it can
   * stand.
   */
  postFits(point: PlanPoint): boolean;
  roofCovers(point: PlanPoint, height: number): boolean;
}

/** @param maxHeight what the person asking allows besides the plan's rule [m] */
export function yardRules(plan: Plan, maxHeight = Infinity): YardRules {
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, maxHeight);
  const setback = plan.site.rules?.setback ?? 0;
  const boundary = openRing(plan.site.boundary);
  const fence = [...boundary, boundary[0]];
  const ways = waysOf(plan);
  const obstacles = obstaclesOf(plan);
  const kept = plan.features.flatMap((feature) =>
    feature.kind === 'keepout' && feature.blocks.includes('canopy') ? [openRing(feature.outline)] : [],
  );
  const maxBayOf = bayReader(plan);

  const isIn = (point: PlanPoint): boolean => pointInRing(point, boundary, ROUNDING);
  const onProperty = (shape: readonly PlanPoint[]): boolean =>
    shape.every(isIn) && !pathsCross(outlineOf(shape), fence);
  const freeOfWays = (shape: readonly PlanPoint[], foot: number): boolean =>
    foot >= HEADROOM - ROUNDING || !ways.some((way) => meets(shape, way));
  const roofFits = (ring: readonly PlanPoint[], height: number): boolean => {
    const box = boundsOf(ring);
    return (
      freeOfWays(ring, height) &&
      obstacles.every((obstacle) => keepsClear(ring, box, obstacle, obstacle.roofGap(height)))
    );
  };
  const curtainFits = (line: readonly PlanPoint[], foot: number, top: number): boolean => {
    const box = boundsOf(line);
    return (
      freeOfWays(line, foot) &&
      obstacles.every((obstacle) => keepsClear(line, box, obstacle, obstacle.curtainGap(foot, top)))
    );
  };
  const postFits = (post: PlanPoint): boolean =>
    isIn(post) &&
    !ways.some((way) => pointInRing(post, way)) &&
    obstacles.every((obstacle) => pointKeepsClear(post, obstacle, obstacle.postGap));
  const clothFits = (cloth: Canopy | Screen, shape: readonly PlanPoint[]): boolean => {
    if (cloth.kind === 'screen')
      return shape.every(
        (end, k) => k === 0 || curtainFits([shape[k - 1], end], cloth.bottom ?? DEFAULTS.bottom, cloth.height),
      );
    return (
      roofFits(shape, cloth.height) &&
      (cloth.drops ?? []).every(({ side, depth }) => {
        const [a, b] = canopyEdge(cloth, side);
        const foot = Math.min(a[2], b[2]) - depth;
        return (
          foot >= AIR_GAP - ROUNDING &&
          curtainFits(
            [
              [a[0], a[1]],
              [b[0], b[1]],
            ],
            foot,
            cloth.height,
          )
        );
      })
    );
  };
  return {
    postFits,
    roofCovers: (point, height) =>
      isIn(point) &&
      (height >= HEADROOM - ROUNDING || !ways.some((way) => pointInRing(point, way))) &&
      obstacles.every((obstacle) => pointKeepsClear(point, obstacle, obstacle.roofGap(height))),
    objections(cloth) {
      const shape = footprintOf(cloth);
      if (!onProperty(shape) || !clothFits(cloth, shape) || !postsOf(cloth, maxBayOf(cloth)).every(postFits))
        return 'ground';
      const broken: SiteRule[] = [];
      if (cloth.height > cap + ROUNDING) broken.push('height');
      if (setback > 0 && distanceToShape(shape, fence) < setback - ROUNDING) broken.push('setback');
      if (kept.some((ring) => meets(shape, ring))) broken.push('keepout');
      return broken;
    },
  };
}

/** The longest bay that the shop's tube allows a frame, worked out once a kind. [m] */
function bayReader(plan: Plan): (cloth: Canopy | Screen) => number {
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

function postsOf(cloth: Canopy | Screen, maxBay: number): PlanPoint[] {
  if (cloth.kind === 'screen') return screenPosts(cloth, maxBay).map(({ at }) => at);
  const { across, along } = canopyGrid(cloth, maxBay);
  const [frontLeft, backLeft, backRight] = canopyCorners(cloth);
  const posts: PlanPoint[] = [];
  for (let j = 0; j <= along; j++) {
    for (let i = 0; i <= across; i++) {
      const at = (axis: 0 | 1) =>
        backLeft[axis] +
        ((backRight[axis] - backLeft[axis]) * i) / across +
        ((frontLeft[axis] - backLeft[axis]) * j) / along;
      posts.push([at(0), at(1)]);
    }
  }
  return posts;
}

function outlineOf(shape: readonly PlanPoint[]): readonly PlanPoint[] {
  return shape.length > 2 ? [...shape, shape[0]] : shape;
}
