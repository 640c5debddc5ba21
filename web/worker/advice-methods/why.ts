import { whyBurnt } from '../../../engine/index.ts';
import type { Outcome, Plan, WhyRequest, WhyResult } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `why --json`: which sun burnt a plant, or that the sun does not explain it. `plan` brings its journal. */
export function why(
  { plan, request }: { readonly plan: Plan; readonly request: WhyRequest },
  { weather }: Task,
): Outcome<WhyResult> {
  return whyBurnt(plan, { ...request, weather });
}
