import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { gridOf } from '../../load/light/grid-of.ts';
import { canopyCorners, cleanPath, type SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';
import {
  type EyeReach,
  eyeReaches,
  hiddenHeightAt,
  hiddenHeightGrid,
  LEAST_USEFUL,
  type SightLines,
  sightLinesOf,
} from './hidden-height.ts';

/** [m] */
const CELL = 0.25;

/** The corner of a cloth that shows most, or is nearest to showing. */
interface ClothTop {
  /** Id of the cloth. */
  readonly id: string;
  readonly at: PlanPoint;
  /** How high it stands there, and how tall a thing may stand there unseen. [m] */
  readonly height: number;
  readonly hidden: number;
}

interface Reach extends EyeReach {
  /** Share of the ground, 0 to 1, where nothing of use can be hidden from it. */
  readonly bare: number;
}

/** How tall a thing may stand unseen in every cell, and what each eye sees of the yard. */
export interface HiddenHeights {
  readonly grid: GridSpec;
  /** Index = j·columns + i. [m] 0: cannot be hidden; Infinity: hidden at any height. */
  readonly heights: Float64Array;
  readonly reaches: readonly Reach[];
  readonly tops: readonly ClothTop[];
}

/**
 * How tall a thing may stand unseen all over a yard.
 * @param eye id of the one eye to hide from; `null`: all of them
 * @param things whose cloth is held against it: the yard's, or those of the yard with an option built
 */
export function hiddenHeights(
  plan: Plan,
  eye: string | null,
  things: readonly Feature[] = plan.features,
): HiddenHeights {
  const sight = sightLinesOf(eye === null ? plan : seenBy(plan, eye));
  const grid = gridOf(plan, { cell: CELL, height: 0 });
  const tops = things.flatMap((feature) => topOf(feature, sight));
  const bareFrom = (id: string): number =>
    hiddenHeightGrid(sightLinesOf(seenBy(plan, id)), grid).filter((height) => height < LEAST_USEFUL).length /
    (grid.columns * grid.rows);
  const reaches = eyeReaches(plan, sightLinesOf(plan)).map((reach): Reach => ({ ...reach, bare: bareFrom(reach.id) }));
  return { grid, heights: hiddenHeightGrid(sight, grid), reaches, tops };
}

/** The plan with one onlooker. */
export function seenBy(plan: Plan, eye: string): Plan {
  return { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || id === eye) };
}

function topOf(feature: Feature, sight: SightLines): ClothTop[] {
  const corners: readonly SpacePoint[] =
    feature.kind === 'canopy'
      ? canopyCorners(feature)
      : feature.kind === 'screen'
        ? cleanPath(feature.path).map(([x, y]): SpacePoint => [x, y, feature.height])
        : [];
  const tops = corners.map(([x, y, height]): ClothTop => ({
    id: feature.id,
    at: [x, y],
    height,
    hidden: hiddenHeightAt(sight, [x, y]).height,
  }));
  return tops.toSorted((a, b) => b.height - b.hidden - (a.height - a.hidden)).slice(0, 1);
}
