import { radiansOf } from '../../../plan/geometry/angles.ts';
import { boundsOf } from '../../../plan/geometry/shapes.ts';
import { countUp } from '../../../plan/numbers/tolerances.ts';
import type { PlanPoint } from '../../../plan/types.ts';

/**
 * Square cells over a yard, turned clockwise: u runs along the cloth's right, v along its front. Edges and corners of
 * every candidate lie on the cells' own, so that sums over cells are sums over cloth, exactly. The middle of the yard's
 * box (in this turn) is a node: a mirrored yard has the mirrored lattice.
 */
export interface TurnedLattice {
  /** [°] from 0 up to 90: two neighbouring sides of a rectangle make the rest. */
  readonly turn: number;
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
  /** Of node (0, 0). [m] */
  readonly u0: number;
  readonly v0: number;
  readonly sin: number;
  readonly cos: number;
}

export function turnedLattice(boundary: readonly PlanPoint[], turn: number, step: number): TurnedLattice {
  const sin = Math.sin(radiansOf(turn));
  const cos = Math.cos(radiansOf(turn));
  const { minX, minY, maxX, maxY } = boundsOf(boundary.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos]));
  const halfColumns = countUp((maxX - minX) / 2 / step);
  const halfRows = countUp((maxY - minY) / 2 / step);
  return {
    turn,
    step,
    sin,
    cos,
    columns: 2 * halfColumns,
    rows: 2 * halfRows,
    u0: (minX + maxX) / 2 - halfColumns * step,
    v0: (minY + maxY) / 2 - halfRows * step,
  };
}

/** A point or direction of the plan along u and along v. [m] */
export function alongU({ sin, cos }: TurnedLattice, x: number, y: number): number {
  return x * cos - y * sin;
}

export function alongV({ sin, cos }: TurnedLattice, x: number, y: number): number {
  return x * sin + y * cos;
}

/** The plan's point at node (i, j), halves allowed; rounded to a tenth of a millimetre. */
export function nodeOf({ sin, cos, u0, v0, step }: TurnedLattice, i: number, j: number): PlanPoint {
  const u = u0 + i * step;
  const v = v0 + j * step;
  return [Math.round((u * cos + v * sin) * 1e4) / 1e4, Math.round((v * cos - u * sin) * 1e4) / 1e4];
}
