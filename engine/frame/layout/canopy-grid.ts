/** The grid that a canopy's frame stands on: how many bays, where each joint is, and which posts cannot stand. */

import { riseOf } from '../../plan/defaults.ts';
import { degreesOf } from '../../plan/geometry/angles.ts';
import { canopyCorners } from '../../plan/geometry/cloth-shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Canopy, Plan, PlanPoint } from '../../plan/types.ts';
import { baysOf } from './bays.ts';
import { whatStandsAt } from './surroundings.ts';

export interface CanopyGrid {
  /** Bays along the width and along the length. */
  readonly across: number;
  readonly along: number;
  /** Of the cloth from its back edge to its front edge. [m] */
  readonly slope: number;
  readonly pitchDeg: number;
}

/** How many bays a canopy has. A sloping rail is as long as the slope. */
export function canopyGrid(canopy: Canopy, maxBay: number): CanopyGrid {
  const rise = riseOf(canopy);
  const slope = Math.hypot(canopy.length, rise);
  return {
    across: baysOf(canopy.width, maxBay),
    along: baysOf(slope, maxBay),
    slope,
    pitchDeg: degreesOf(Math.atan2(Math.abs(rise), canopy.length)),
  };
}

/** A joint of the grid by its column from the left, 0 to `across`, and its row from the back, 0 to `along`. */
export interface CanopyNodes extends CanopyGrid {
  /** One bay: along the width, along the slope, and along the slope as seen from above. [m] */
  readonly bay: { readonly across: number; readonly along: number; readonly footprint: number };
  top(column: number, row: number): SpacePoint;
  foot(column: number, row: number): SpacePoint;
  role(column: number, row: number): 'corner' | 'edge' | 'inner';
  /** Of an inner post that cannot stand: what stands there; `undefined` for every other. */
  inTheWay(column: number, row: number): string | undefined;
  /** Own axes to the plan: x from the back left corner along the width, y along the length. */
  readonly toPlan: (point: readonly [number, number]) => PlanPoint;
}

/** @param plan What may stand where an inner post would. */
export function canopyNodes(canopy: Canopy, maxBay: number, plan: Plan): CanopyNodes {
  const grid = canopyGrid(canopy, maxBay);
  const { across, along, slope } = grid;
  const rise = riseOf(canopy);
  const toPlan = planAxes(canopy);
  const level = (column: number, row: number): readonly [number, number] => [
    (canopy.width * column) / across,
    (canopy.length * row) / along,
  ];
  const role = (column: number, row: number): 'corner' | 'edge' | 'inner' => {
    const sides = Number(column === 0 || column === across) + Number(row === 0 || row === along);
    return sides === 2 ? 'corner' : sides === 1 ? 'edge' : 'inner';
  };
  const leftOut = new Map<string, string>();
  for (let row = 1; row < along; row++) {
    for (let column = 1; column < across; column++) {
      const inTheWay = whatStandsAt(plan, toPlan(level(column, row)));
      if (inTheWay !== undefined) leftOut.set(`${column},${row}`, inTheWay);
    }
  }
  return {
    ...grid,
    bay: { across: canopy.width / across, along: slope / along, footprint: canopy.length / along },
    top: (column, row) => [...level(column, row), canopy.height + (rise * row) / along],
    foot: (column, row) => [...level(column, row), 0],
    role,
    inTheWay: (column, row) => leftOut.get(`${column},${row}`),
    toPlan,
  };
}

function planAxes(canopy: Canopy): (point: readonly [number, number]) => PlanPoint {
  const [frontLeft, backLeft, backRight] = canopyCorners(canopy);
  const across = [(backRight[0] - backLeft[0]) / canopy.width, (backRight[1] - backLeft[1]) / canopy.width] as const;
  const along = [(frontLeft[0] - backLeft[0]) / canopy.length, (frontLeft[1] - backLeft[1]) / canopy.length] as const;
  return ([x, y]) => [backLeft[0] + x * across[0] + y * along[0], backLeft[1] + x * across[1] + y * along[1]];
}
