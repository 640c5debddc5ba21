/** The cloths of a canopy, where each hangs, and how the wind strikes those that stand. */

import { riseOf } from '../../plan/defaults.ts';
import { spaceDistance, type SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Canopy, Drop } from '../../plan/types.ts';
import { isSideways } from './canopy-braces.ts';
import type { FrameCloth, StandingCloth } from './model.ts';

/**
 * @param bays Across the width and along the length.
 * @param ids Of the corner posts: back left, back right, front left, front right.
 */
export function clothsOf(
  canopy: Canopy,
  slope: number,
  bays: { readonly across: number; readonly along: number },
  backLeft: SpacePoint,
  backRight: SpacePoint,
  frontRight: SpacePoint,
  frontLeft: SpacePoint,
  ids: readonly string[],
): FrameCloth[] {
  const edges = {
    back: [backLeft, backRight],
    right: [backRight, frontRight],
    front: [frontRight, frontLeft],
    left: [frontLeft, backLeft],
  } as const;
  const between = {
    back: [ids[0], ids[1]],
    right: [ids[1], ids[3]],
    front: [ids[2], ids[3]],
    left: [ids[0], ids[2]],
  } as const;
  const roof: FrameCloth = {
    kind: 'roof',
    where: 'roof',
    opening: [slope, canopy.width],
    bays: [bays.along, bays.across],
    density: canopy.measuredDensity ?? canopy.density,
    corners: [backLeft, backRight, frontRight, frontLeft],
    between: null,
  };
  const drops = (canopy.drops ?? []).map((drop): FrameCloth => {
    const [a, b] = edges[drop.side];
    const under = ([x, y, z]: SpacePoint): SpacePoint => [x, y, z - drop.depth];
    return {
      kind: 'drop',
      where: `drop ${drop.side}`,
      opening: [spaceDistance(a, b), drop.depth],
      bays: [isSideways(drop) ? bays.along : bays.across, 1],
      density: drop.density,
      corners: [a, b, under(b), under(a)],
      between: between[drop.side],
    };
  });
  return [roof, ...drops];
}

export function standingOf(drop: Drop, canopy: Canopy, across: number, along: number): StandingCloth {
  const rise = riseOf(canopy);
  const sideways = isSideways(drop);
  const edgeHeight = canopy.height + (sideways ? rise / 2 : drop.side === 'front' ? rise : 0);
  return {
    pushed: sideways ? 'along the width' : 'along the length',
    area: (sideways ? canopy.length : canopy.width) * drop.depth,
    density: drop.density,
    height: edgeHeight - drop.depth / 2,
    base: sideways ? canopy.width : canopy.length,
    posts: sideways ? along + 1 : across + 1,
  };
}
