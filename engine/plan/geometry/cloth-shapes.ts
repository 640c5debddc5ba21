/** Where cloth hangs: the corners, edges and ground of roofs and screens. */

import { riseOf, turnOf } from '../defaults.ts';
import { ROUNDING } from '../numbers/tolerances.ts';
import type { Canopy, Cloth, DropSide, PlanPoint } from '../types.ts';
import { cleanPath, distance, turned } from './shapes.ts';
import type { SpacePoint } from './vectors.ts';

/**
 * The corners of a canopy's roof with the cloth's height there: front left, back left, back right, front right
 * (counter-clockwise seen with y up). The back edge is at `height`, the front edge at `height + rise`.
 */
export function canopyCorners(canopy: Canopy): [SpacePoint, SpacePoint, SpacePoint, SpacePoint] {
  const corner = (right: -1 | 1, forward: -1 | 1): SpacePoint => {
    const [x, y] = turned(
      [canopy.center[0] + (right * canopy.width) / 2, canopy.center[1] + (forward * canopy.length) / 2],
      canopy.center,
      turnOf(canopy),
    );
    return [x, y, canopy.height + (forward === 1 ? riseOf(canopy) : 0)];
  };
  return [corner(-1, 1), corner(-1, -1), corner(1, -1), corner(1, 1)];
}

/** The same corners on the ground. */
export function canopyRing(canopy: Canopy): PlanPoint[] {
  return canopyCorners(canopy).map(([x, y]) => [x, y]);
}

/** The ring under a canopy, or a screen's path. */
export function footprintOf(cloth: Cloth): PlanPoint[] {
  return cloth.kind === 'canopy' ? canopyRing(cloth) : cleanPath(cloth.path);
}

/** The two ends of one edge of a canopy's roof, at the cloth's height, going round counter-clockwise. */
export function canopyEdge(canopy: Canopy, side: DropSide): [SpacePoint, SpacePoint] {
  const [frontLeft, backLeft, backRight, frontRight] = canopyCorners(canopy);
  switch (side) {
    case 'left':
      return [frontLeft, backLeft];
    case 'back':
      return [backLeft, backRight];
    case 'right':
      return [backRight, frontRight];
    case 'front':
      return [frontRight, frontLeft];
  }
}

/** Height of a canopy's cloth over a point of the plan, `null` where the roof does not cover it. [m] */
export function canopyHeightOver(canopy: Canopy, point: PlanPoint): number | null {
  if (2 * distance(point, canopy.center) > Math.hypot(canopy.width, canopy.length) + ROUNDING) return null;
  const [x, y] = turned(point, canopy.center, -turnOf(canopy));
  const right = x - canopy.center[0];
  const forward = y - canopy.center[1];
  if (Math.abs(right) > canopy.width / 2 || Math.abs(forward) > canopy.length / 2) return null;
  return canopy.height + riseOf(canopy) * (forward / canopy.length + 0.5);
}
