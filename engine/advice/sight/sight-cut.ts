/**
 * May it be seen over the wall? For each onlooker the one line of sight that shows most of a cloth, as a cut to draw.
 */

import { distance } from '../../plan/geometry/shapes.ts';
import type { Cloth, Plan, PlanPoint } from '../../plan/types.ts';
import { seenAbove, sightLinesOf } from './hidden-height.ts';
import { seenFrom, topEdge } from './seen.ts';

/** Points that show alike within this are told apart by how near they are. [m] */
const ALIKE = 1e-6;
/** What stands as near to the cloth as a frame's own wall stands behind it, not before. [m] */
const AT_CLOTH = 0.1;

export interface SightCut {
  /** Id of the `eye` feature. */
  readonly eye: string;
  readonly eyeHeight: number;
  /** From the eye to the point of the cloth that shows most, along the ground. [m] */
  readonly far: number;
  /** Height of that point. [m] */
  readonly top: number;
  readonly hidden: boolean;
  /** How much of an upright under that point shows above what hides it. [m] 0: nothing. */
  readonly shows: number;
  /**
   * How high the lowest free line of sight passes that point: what stands lower is hidden. [m] `null`: hidden at any
   * height.
   */
  readonly lineAt: number | null;
  /** What stands on the line, nearest first: how far from the eye, and how tall. [m] */
  readonly between: readonly { readonly along: number; readonly top: number }[];
}

/** One cut an eye of the plan, in the plan's order; none where the plan has no eyes. */
export function sightCuts(plan: Plan, cloth: Cloth): SightCut[] {
  const sight = sightLinesOf(plan);
  const points = topEdge(cloth);
  return seenFrom(plan, [cloth]).flatMap(({ eye, hidden, shows }): SightCut[] => {
    const lines = sight.eyes.flatMap((from, k) =>
      from.id === eye
        ? points.map(([x, y, z]) => ({
            k,
            from,
            at: [x, y] as PlanPoint,
            z,
            far: distance(from.at, [x, y]),
            above: seenAbove(sight, k, [x, y], z),
          }))
        : [],
    );
    if (lines.length === 0) return [];
    const { k, from, at, z, far, above } = lines.reduce((most, line) =>
      line.above > most.above + ALIKE || (line.above > most.above - ALIKE && line.far < most.far) ? line : most,
    );
    const between = sight.hidersOf[k].flatMap(({ ring, top }) =>
      ring.flatMap((a, n) => {
        const share = crossingShare(from.at, at, a, ring[(n + 1) % ring.length]);
        return share === null || share * far > far - AT_CLOTH ? [] : [{ along: share * far, top }];
      }),
    );
    return [
      {
        eye,
        eyeHeight: from.height,
        far,
        top: z,
        hidden,
        shows,
        lineAt: Number.isFinite(above) ? z - above : null,
        between: between.toSorted((p, q) => p.along - q.along),
      },
    ];
  });
}

/** Where the way from one point to another meets a side, as a share of the way; `null` where it does not. */
function crossingShare(
  [x, y]: PlanPoint,
  [toX, toY]: PlanPoint,
  [ax, ay]: PlanPoint,
  [bx, by]: PlanPoint,
): number | null {
  const [dx, dy, ex, ey] = [toX - x, toY - y, bx - ax, by - ay];
  const across = dx * ey - dy * ex;
  if (across === 0) return null;
  const share = ((ax - x) * ey - (ay - y) * ex) / across;
  const side = ((ax - x) * dy - (ay - y) * dx) / across;
  return share < 0 || share > 1 || side < 0 || side > 1 ? null : share;
}
