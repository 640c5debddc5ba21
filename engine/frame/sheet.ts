import type { Canopy, Plan, Screen } from '../plan/types.ts';
import type { CostResult, SheetResult } from './types.ts';

/**
 * The build sheet of a canopy or a screen of the plan's `features` (apply options first), in the plan's units.
 * Problems: no such thing, a rail or post longer than the longest tube, a rail that would sag past L/90.
 */
export function sheetOf(plan: Plan, id: string): SheetResult {
  throw new Error(`No sheet yet for ${id} of ${plan.name}.`);
}

/** What the sheet of a canopy or screen would cost, to the cent the same as `sheetOf`'s. It need not be in the plan. */
export function costOf(thing: Canopy | Screen, plan: Plan): CostResult {
  throw new Error(`No cost yet for ${thing.id} of ${plan.name}.`);
}
