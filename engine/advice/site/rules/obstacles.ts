import { HAND_BREADTH } from '../../../frame/layout/surroundings.ts';
import { eavesOf, potOf } from '../../../plan/defaults.ts';
import { boundsOf, type Bounds, canopyRing, cleanPath, openRing } from '../../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../../plan/geometry/trunk.ts';
import type { Feature, Plan, PlanPoint } from '../../../plan/types.ts';
import { distanceToRing, distanceToShape, meets } from '../shapes.ts';

/** Air between a plant's top and a roof. Our choice. [m] */
const CLEARANCE = 0.3;
/** From a trunk to a post: roots. Our choice. [m] */
const ROOT_GAP = 0.3;
/** From a plant's crown to cloth that hangs beside it. Our choice. [m] */
const LEAF_GAP = 0.05;
export const ROUNDING = 1e-9;

/** A thing of the yard as cloth and posts must keep clear of it. */
export interface Obstacle {
  /** Ground it stands on: a ring, a path, or one point. */
  readonly kind: 'ring' | 'path';
  readonly points: readonly PlanPoint[];
  readonly bounds: Bounds;
  /** Clear level way from its ground to a roof whose cloth hangs at a height, −1: a roof may pass over it. [m] */
  roofGap(height: number): number;
  /** The same to cloth that hangs upright from `top` down to `foot`. */
  curtainGap(foot: number, top: number): number;
  /** To the middle of a post, −1: a post may stand in it. */
  readonly postGap: number;
}

/** What stands in the yard; boundary, ways and keepouts are rules of the ground and not here. */
export function obstaclesOf(plan: Plan): Obstacle[] {
  return plan.features.flatMap((feature) => {
    const gaps = gapsOf(feature);
    return gaps === null ? [] : [{ ...gaps, bounds: boundsOf(gaps.points) }];
  });
}

function gapsOf(feature: Feature): Omit<Obstacle, 'bounds'> | null {
  switch (feature.kind) {
    case 'building': {
      const eaves = eavesOf(feature);
      return {
        kind: 'ring',
        points: openRing(feature.outline),
        postGap: HAND_BREADTH,
        curtainGap: () => HAND_BREADTH,
        roofGap: (height) => (height > feature.height - HAND_BREADTH ? eaves : 0) + HAND_BREADTH,
      };
    }
    case 'wall':
    case 'hedge': {
      const gap = feature.thickness / 2 + HAND_BREADTH;
      return {
        kind: 'path',
        points: cleanPath(feature.path),
        postGap: gap,
        roofGap: (height) => (height >= feature.height + HAND_BREADTH - ROUNDING ? -1 : gap),
        curtainGap: (foot) => (foot >= feature.height ? -1 : gap),
      };
    }
    case 'tree': {
      const trunk = trunkRadius(feature.height);
      const crown = feature.crownWidth / 2;
      const roofGap = (height: number) => {
        if (height >= feature.height + CLEARANCE - ROUNDING) return -1;
        return height <= feature.crownBase - HAND_BREADTH
          ? trunk + HAND_BREADTH
          : Math.max(trunk, crown) + HAND_BREADTH;
      };
      const curtainGap = (foot: number, top: number) =>
        (foot < feature.height && top > feature.crownBase ? Math.max(trunk, crown) : trunk) + LEAF_GAP;
      return { kind: 'path', points: [feature.at], postGap: trunk + ROOT_GAP, roofGap, curtainGap };
    }
    case 'plant': {
      const crown = feature.spread / 2;
      return {
        kind: 'path',
        points: [feature.at],
        postGap: Math.max(crown, feature.container ? potOf(feature).width / 2 : 0),
        roofGap: (height) => (height >= feature.height + CLEARANCE - ROUNDING ? -1 : crown),
        curtainGap: (foot) => (foot >= feature.height ? -1 : crown + LEAF_GAP),
      };
    }
    case 'bed':
      return {
        kind: 'ring',
        points: openRing(feature.outline),
        postGap: 0,
        roofGap: (height) => (height >= feature.plantHeight + CLEARANCE - ROUNDING ? -1 : 0),
        curtainGap: (foot) => (foot >= feature.plantHeight ? -1 : 0),
      };
    case 'canopy':
      return {
        kind: 'ring',
        points: canopyRing(feature),
        postGap: -1,
        roofGap: () => 0,
        curtainGap: (_, top) => (top < feature.height - HAND_BREADTH ? -1 : 0),
      };
    case 'screen':
      return {
        kind: 'path',
        points: cleanPath(feature.path),
        postGap: HAND_BREADTH,
        roofGap: (height) => (height >= feature.height + HAND_BREADTH - ROUNDING ? -1 : 0),
        curtainGap: () => 0,
      };
    default:
      return null;
  }
}

/**
 * Whether a shape (a ring, the two ends of a line, a point twice) keeps clear of an obstacle.
 * @param box Around the shape.
 */
export function keepsClear(
  shape: readonly PlanPoint[],
  box: Bounds,
  { kind, points, bounds }: Obstacle,
  gap: number,
): boolean {
  if (gap < 0) return true;
  if (
    box.minX > bounds.maxX + gap ||
    box.maxX < bounds.minX - gap ||
    box.minY > bounds.maxY + gap ||
    box.maxY < bounds.minY - gap
  )
    return true;
  if (kind === 'path') {
    const apart = distanceToShape(shape, points);
    return gap > 0 ? apart >= gap - ROUNDING : apart > 0;
  }
  if (meets(shape, points)) return false;
  return gap === 0 || distanceToShape(shape, [...points, points[0]]) >= gap - ROUNDING;
}

/** Whether a point keeps clear of an obstacle. */
export function pointKeepsClear(point: PlanPoint, { kind, points, bounds }: Obstacle, gap: number): boolean {
  if (gap < 0) return true;
  const [x, y] = point;
  if (x > bounds.maxX + gap || x < bounds.minX - gap || y > bounds.maxY + gap || y < bounds.minY - gap) return true;
  const apart = kind === 'ring' ? distanceToRing(point, points) : distanceToShape([point, point], points);
  return gap > 0 ? apart >= gap - ROUNDING : apart > 0;
}
