import { eyeReaches, gridOf, hiddenHeightGrid, sightLinesOf } from '../../../engine/index.ts';
import type { EyeReach, GridSpec, Outcome, Plan } from '../../../engine/index.ts';

/** How tall a thing may stand unseen in every cell, and what each eye sees of the yard. */
export interface HiddenAnswer {
  readonly grid: GridSpec;
  /** Index = j·columns + i. [m] 0: cannot be hidden; Infinity: hidden at any height. */
  readonly heights: Float64Array;
  readonly reaches: readonly EyeReach[];
}

/** @param eye id of the one eye to hide from; `null`: all of them */
export function hidden({ plan, eye }: { readonly plan: Plan; readonly eye: string | null }): Outcome<HiddenAnswer> {
  const seen = eye === null ? plan : { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || id === eye) };
  const sight = sightLinesOf(seen);
  const grid = gridOf(plan, { cell: 0.25, height: 0 });
  return { ok: true, value: { grid, heights: hiddenHeightGrid(sight, grid), reaches: eyeReaches(plan, sightLinesOf(plan)) } };
}
