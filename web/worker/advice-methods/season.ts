import { seasonOf, withOptions } from '../../../engine/index.ts';
import type { Outcome, Plan, SeasonResult } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `season --json` with some options as built. `plan` brings its journal. */
export function season(
  { plan, options }: { readonly plan: Plan; readonly options: readonly string[] },
  { weather }: Task,
): Outcome<SeasonResult> {
  const built = withOptions(plan, options);
  return built.ok ? seasonOf(built.plan, weather) : built;
}
