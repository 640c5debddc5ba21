import { plus, type SpacePoint } from '../plan/geometry/vectors.ts';
import { lidMeets, clothMeets } from './cloth-sheet.ts';
import { lengthInCrown } from './crown.ts';
import { prismCrossings } from './prism.ts';
import type { Solid } from './solids.ts';
import { lengthInStand } from './stand.ts';
import { TOUCH } from './ties.ts';

/** A solid's part of the plan and its heights, to pass it by quickly. [m] */
export interface Reach {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly foot: number;
  readonly top: number;
}

export function reachOf(solid: Solid): Reach {
  switch (solid.kind) {
    case 'prism':
    case 'lid':
      return around(solid.rings.flat(), solid.kind === 'lid' ? solid.height : 0, solid.height);
    case 'stand':
      return around(solid.ring, 0, solid.height);
    case 'cloth': {
      const { corner: c, u, v } = solid;
      const corners = [c, plus(c, u), plus(c, v), plus(plus(c, u), v)];
      const heights = corners.map(([, , z]) => z);
      return around(
        corners.map(([x, y]): [number, number] => [x, y]),
        Math.min(...heights),
        Math.max(...heights),
      );
    }
    default:
      return { x: solid.x, y: solid.y, radius: solid.radius, foot: solid.base, top: solid.top };
  }
}

/** Whether a solid stands between two points. @param up Unit vector from the lower to the upper one. */
export function standsBetween(solid: Solid, lower: SpacePoint, upper: SpacePoint, up: SpacePoint): boolean {
  switch (solid.kind) {
    case 'prism':
      return prismCrossings(solid, lower, up) > prismCrossings(solid, upper, up);
    case 'lid':
      return lidMeets(solid, lower, up) && !lidMeets(solid, upper, up);
    case 'cloth':
      return clothMeets(solid, lower, up) && !clothMeets(solid, upper, up);
    case 'stand':
      return lengthOf(lengthInStand, solid, lower, up) - lengthOf(lengthInStand, solid, upper, up) > TOUCH;
    default:
      return lengthOf(lengthInCrown, solid, lower, up) - lengthOf(lengthInCrown, solid, upper, up) > TOUCH;
  }
}

function lengthOf<T>(
  lengthIn: (solid: T, x: number, y: number, z: number, dx: number, dy: number, dz: number) => number,
  solid: T,
  from: SpacePoint,
  up: SpacePoint,
): number {
  return lengthIn(solid, from[0], from[1], from[2], up[0], up[1], up[2]);
}

/** Whether a solid may stand between two points at all. */
export function isNear({ x, y, radius, foot, top }: Reach, lower: SpacePoint, upper: SpacePoint): boolean {
  if (top < lower[2] || foot > upper[2]) return false;
  const ax = lower[0];
  const ay = lower[1];
  const dx = upper[0] - ax;
  const dy = upper[1] - ay;
  const squared = dx * dx + dy * dy;
  const along = squared > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared)) : 0;
  const offX = ax + along * dx - x;
  const offY = ay + along * dy - y;
  return offX * offX + offY * offY <= radius * radius;
}

/** Whether a solid may reach before the plane outward · p = away. @param outward of length 1 */
export function isBefore({ x, y, radius, foot, top }: Reach, [nx, ny, nz]: SpacePoint, away: number): boolean {
  const farthest = nx * x + ny * y + radius * Math.sqrt(nx * nx + ny * ny) + Math.max(nz * foot, nz * top);
  return farthest > away - TOUCH;
}

function around(points: readonly (readonly [number, number])[], foot: number, top: number): Reach {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const x = (Math.min(...xs) + Math.max(...xs)) / 2;
  const y = (Math.min(...ys) + Math.max(...ys)) / 2;
  return { x, y, radius: Math.max(...points.map(([px, py]) => Math.hypot(px - x, py - y))) + TOUCH, foot, top };
}
