import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Drop } from '../../plan/types.ts';

/** A brace runs at 45° from the post to the rail, this far along each at most, in steps that a tape shows. [m] */
const BRACE_LEG = 0.8;
const LEG_STEP = 0.05;

/** Whether drops alone bring braces along the width and along the length. */
export function bracedBothWays(drops: readonly Drop[]): boolean {
  return drops.some(isSideways) && !drops.every(isSideways);
}

/** Whether a drop hangs from the left or the right, so that its push runs along the width. */
export function isSideways({ side }: Pick<Drop, 'side'>): boolean {
  return side === 'left' || side === 'right';
}

/** Whether a brace runs along the width. */
export function isCrosswise(from: SpacePoint, to: SpacePoint): boolean {
  return Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]);
}

/** Two braces in each of the two upright faces that stand along the push of a drop, or in all four. */
export function bracesFor(
  drops: readonly Drop[],
  everywhere: boolean,
  across: number,
  along: number,
  bayAcross: number,
  bayAlong: number,
  top: (i: number, j: number) => SpacePoint,
): [SpacePoint, SpacePoint][] {
  const braces: [SpacePoint, SpacePoint][] = [];
  const brace = (i: number, j: number, dx: number, dy: number, bay: number): void => {
    const [x, y, z] = top(i, j);
    const most = Math.min(BRACE_LEG, bay / 3, z / 3);
    const leg = most < LEG_STEP ? most : Math.floor(most / LEG_STEP + ROUNDING) * LEG_STEP;
    const share = leg / bay;
    const next = top(i + dx, j + dy);
    braces.push([
      [x, y, z - leg],
      [x + dx * leg, y + dy * leg, z + (next[2] - z) * share],
    ]);
  };
  if (everywhere || drops.some(isSideways)) {
    for (const j of [0, along]) {
      brace(0, j, 1, 0, bayAcross);
      brace(across, j, -1, 0, bayAcross);
    }
  }
  if (everywhere || !drops.every(isSideways)) {
    for (const i of [0, across]) {
      brace(i, 0, 0, 1, bayAlong);
      brace(i, along, 0, -1, bayAlong);
    }
  }
  return braces;
}
