import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { gridOf, maskOf } from '../../load/light/grid-of.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Cloth, Feature, Plan, PlanPoint } from '../../plan/types.ts';
import { hiddenHeightAt, hiddenHeightGrid, LEAST_USEFUL, type SightLines, sightLinesOf } from './hidden-height.ts';
import { topEdge } from './seen.ts';

/** [m] */
const CELL = 0.25;
/**
 * Where nothing of use can be hidden from an eye on more of the ground than this, it is no rule to hide from it unless
 * the person says so. Our choice.
 */
const MOSTLY = 0.5;

/** The place on a cloth's upper edge that shows most, or is nearest to showing. */
interface ClothTop {
  /** Id of the cloth. */
  readonly id: string;
  readonly at: PlanPoint;
  /** How high it stands there, and how tall a thing may stand there unseen. [m] */
  readonly height: number;
  readonly hidden: number;
}

/** What one of a plan's eyes sees of the yard, whatever is put up in it. */
export interface EyeReach {
  readonly id: string;
  /** Share of the ground, 0 to 1, where nothing of use can be hidden from it. */
  readonly bare: number;
  /** Whether cloth can be hidden from it in most of the yard. */
  readonly canBeHiddenFrom: boolean;
}

/** How tall a thing may stand unseen in every cell, and what each eye sees of the yard. */
export interface HiddenHeights {
  readonly grid: GridSpec;
  /** Index = j·columns + i. [m] 0: cannot be hidden; Infinity: hidden at any height. */
  readonly heights: Float64Array;
  /** Share of the yard's ground, 0 to 1, where nothing of use can be hidden from whom it is about. */
  readonly bare: number;
  /** In the plan's order. */
  readonly reaches: readonly EyeReach[];
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
  const sight = sightLinesOf(eye === null ? plan : seenBy(plan, [eye]));
  const grid = gridOf(plan, { cell: CELL, height: 0 });
  const heights = hiddenHeightGrid(sight, grid);
  const tops = things.filter(isCloth).map((feature) => topOf(feature, sight));
  return { grid, heights, bare: bareShare(heights, maskOf(plan, grid)), reaches: eyeReaches(plan), tops };
}

/** What every eye of a plan sees of its yard: it hangs on the eyes, walls and ground alone, on nothing asked for. */
export function eyeReaches(plan: Plan): EyeReach[] {
  const grid = gridOf(plan, { cell: CELL, height: 0 });
  const mask = maskOf(plan, grid);
  return sightLinesOf(plan).onlookers.map((id): EyeReach => {
    const bare = bareShare(hiddenHeightGrid(sightLinesOf(seenBy(plan, [id])), grid), mask);
    return { id, bare, canBeHiddenFrom: bare <= MOSTLY };
  });
}

/** The plan with some of its onlookers. */
export function seenBy(plan: Plan, eyes: readonly string[]): Plan {
  return { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || eyes.includes(id)) };
}

function bareShare(heights: Float64Array, mask: Uint8Array): number {
  let [bare, all] = [0, 0];
  for (let index = 0; index < heights.length; index++) {
    if (mask[index] === 1) continue;
    all++;
    if (heights[index] < LEAST_USEFUL) bare++;
  }
  return all > 0 ? bare / all : 0;
}

function topOf(cloth: Cloth, sight: SightLines): ClothTop {
  const tops = topEdge(cloth).map(([x, y, height]): ClothTop => ({
    id: cloth.id,
    at: [x, y],
    height,
    hidden: hiddenHeightAt(sight, [x, y]).height,
  }));
  return tops.reduce((most, top) => (top.height - top.hidden > most.height - most.hidden ? top : most));
}
