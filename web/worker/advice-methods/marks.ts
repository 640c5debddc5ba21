import { shadowMarks } from '../../../engine/index.ts';
import type { Outcome, Plan, ShadowMark, ShadowMarksResult, Units } from '../../../engine/index.ts';

export interface MarksArgs {
  readonly plan: Plan;
  readonly marks: readonly ShadowMark[];
  readonly units: Units;
}

/**
 * `survey marks --json`: edges of shadows as they were found on the ground against those of the plan, and what would
 * cure it.
 */
export function marks({ plan, marks: found, units }: MarksArgs): Outcome<ShadowMarksResult> {
  return shadowMarks(plan, found, units);
}
