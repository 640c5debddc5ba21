import {
  canopyCorners,
  cleanPath,
  eyeReaches,
  gridOf,
  hiddenHeightAt,
  hiddenHeightGrid,
  LEAST_USEFUL,
  sightLinesOf,
  withOptions,
} from '../../../engine/index.ts';
import type {
  EyeReach,
  Feature,
  GridSpec,
  Outcome,
  Plan,
  PlanPoint,
  SightLines,
  SpacePoint,
} from '../../../engine/index.ts';

export interface HiddenArgs {
  readonly plan: Plan;
  /** id of the one eye to hide from; `null`: all of them */
  readonly eye: string | null;
  /** Ids of the options whose cloth is held against it. */
  readonly options: readonly string[];
}

/** The corner of a cloth that shows most, or is nearest to showing. */
export interface ClothTop {
  /** Id of the cloth. */
  readonly id: string;
  readonly at: PlanPoint;
  /** How high it stands there, and how tall a thing may stand there unseen. [m] */
  readonly height: number;
  readonly hidden: number;
}

export interface Reach extends EyeReach {
  /** Share of the ground, 0 to 1, where nothing of use can be hidden from it. */
  readonly bare: number;
}

/** How tall a thing may stand unseen in every cell, and what each eye sees of the yard. */
export interface HiddenAnswer {
  readonly grid: GridSpec;
  /** Index = j·columns + i. [m] 0: cannot be hidden; Infinity: hidden at any height. */
  readonly heights: Float64Array;
  readonly reaches: readonly Reach[];
  readonly tops: readonly ClothTop[];
}

export function hidden({ plan, eye, options }: HiddenArgs): Outcome<HiddenAnswer> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const sight = sightLinesOf(eye === null ? plan : seenBy(plan, eye));
  const grid = gridOf(plan, { cell: 0.25, height: 0 });
  const tops = built.plan.features.flatMap((feature) => topOf(feature, sight));
  const bareFrom = (id: string): number =>
    hiddenHeightGrid(sightLinesOf(seenBy(plan, id)), grid).filter((height) => height < LEAST_USEFUL).length /
    (grid.columns * grid.rows);
  const reaches = eyeReaches(plan, sightLinesOf(plan)).map((reach): Reach => ({ ...reach, bare: bareFrom(reach.id) }));
  return { ok: true, value: { grid, heights: hiddenHeightGrid(sight, grid), reaches, tops } };
}

/** The plan with one onlooker. */
function seenBy(plan: Plan, eye: string): Plan {
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
