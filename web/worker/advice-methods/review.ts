import { reviewOf } from '../../../engine/index.ts';
import type { Outcome, Plan, ReviewResult } from '../../../engine/index.ts';

/** `review --json`, with the plan of every correction. `plan` brings its journal and past years. */
export function review({ plan }: { readonly plan: Plan }): Outcome<ReviewResult> {
  return { ok: true, value: reviewOf(plan) };
}
