import { HAND_BREADTH } from '../../../frame/layout/surroundings.ts';
import { eavesOf, potOf } from '../../../plan/defaults.ts';
import { canopyRing } from '../../../plan/geometry/cloth-shapes.ts';
import {
  boundsOf,
  type Bounds,
  cleanPath,
  openRing,
  distanceToRing,
  distanceToShape,
  meets,
  closedRing,
} from '../../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../../plan/geometry/trunk.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type {
  Bed,
  Building,
  Canopy,
  Feature,
  Hedge,
  Plan,
  PlanPoint,
  Plant,
  Screen,
  Tree,
  Wall,
} from '../../../plan/types.ts';

/** Air between a plant's top and a roof. Our choice. [m] */
const CLEARANCE = 0.3;
/** From a trunk to a post: roots. Our choice. [m] */
const ROOT_GAP = 0.3;
/** From a plant's crown to cloth that hangs beside it. Our choice. [m] */
const LEAF_GAP = 0.05;

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

type Gaps = Omit<Obstacle, 'bounds'>;

/** What keeps its own distances; of the rest, nothing must be kept clear. */
function gapsOf(feature: Feature): Gaps | null {
  switch (feature.kind) {
    case 'building':
      return buildingGaps(feature);
    case 'wall':
    case 'hedge':
      return wallGaps(feature);
    case 'tree':
      return treeGaps(feature);
    case 'plant':
      return plantGaps(feature);
    case 'bed':
      return bedGaps(feature);
    case 'canopy':
      return canopyGaps(feature);
    case 'screen':
      return screenGaps(feature);
    default:
      return null;
  }
}

function buildingGaps(building: Building): Gaps {
  const eaves = eavesOf(building);
  return {
    kind: 'ring',
    points: openRing(building.outline),
    postGap: HAND_BREADTH,
    curtainGap: () => HAND_BREADTH,
    roofGap: (height) => (height > building.height - HAND_BREADTH ? eaves : 0) + HAND_BREADTH,
  };
}

function wallGaps(wall: Wall | Hedge): Gaps {
  const gap = wall.thickness / 2 + HAND_BREADTH;
  return {
    kind: 'path',
    points: cleanPath(wall.path),
    postGap: gap,
    roofGap: (height) => (height >= wall.height + HAND_BREADTH - ROUNDING ? -1 : gap),
    curtainGap: (foot) => (foot >= wall.height ? -1 : gap),
  };
}

function treeGaps(tree: Tree): Gaps {
  const trunk = trunkRadius(tree.height);
  const widest = Math.max(trunk, tree.crownWidth / 2);
  return {
    kind: 'path',
    points: [tree.at],
    postGap: trunk + ROOT_GAP,
    roofGap: (height) =>
      height >= tree.height + CLEARANCE - ROUNDING
        ? -1
        : (height <= tree.crownBase - HAND_BREADTH ? trunk : widest) + HAND_BREADTH,
    curtainGap: (foot, top) => (foot < tree.height && top > tree.crownBase ? widest : trunk) + LEAF_GAP,
  };
}

function plantGaps(plant: Plant): Gaps {
  const crown = plant.spread / 2;
  return {
    kind: 'path',
    points: [plant.at],
    postGap: Math.max(crown, plant.container ? potOf(plant).width / 2 : 0),
    roofGap: (height) => (height >= plant.height + CLEARANCE - ROUNDING ? -1 : crown),
    curtainGap: (foot) => (foot >= plant.height ? -1 : crown + LEAF_GAP),
  };
}

function bedGaps(bed: Bed): Gaps {
  return {
    kind: 'ring',
    points: openRing(bed.outline),
    postGap: 0,
    roofGap: (height) => (height >= bed.plantHeight + CLEARANCE - ROUNDING ? -1 : 0),
    curtainGap: (foot) => (foot >= bed.plantHeight ? -1 : 0),
  };
}

function canopyGaps(canopy: Canopy): Gaps {
  return {
    kind: 'ring',
    points: canopyRing(canopy),
    postGap: -1,
    roofGap: () => 0,
    curtainGap: (_, top) => (top < canopy.height - HAND_BREADTH ? -1 : 0),
  };
}

function screenGaps(screen: Screen): Gaps {
  return {
    kind: 'path',
    points: cleanPath(screen.path),
    postGap: HAND_BREADTH,
    roofGap: (height) => (height >= screen.height + HAND_BREADTH - ROUNDING ? -1 : 0),
    curtainGap: () => 0,
  };
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
  return gap === 0 || distanceToShape(shape, closedRing(points)) >= gap - ROUNDING;
}

/** Whether a point keeps clear of an obstacle. */
export function pointKeepsClear(point: PlanPoint, { kind, points, bounds }: Obstacle, gap: number): boolean {
  if (gap < 0) return true;
  const [x, y] = point;
  if (x > bounds.maxX + gap || x < bounds.minX - gap || y > bounds.maxY + gap || y < bounds.minY - gap) return true;
  const apart = kind === 'ring' ? distanceToRing(point, points) : distanceToShape([point, point], points);
  return gap > 0 ? apart >= gap - ROUNDING : apart > 0;
}
