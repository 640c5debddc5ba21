import { compareOptions } from '../../../engine/index.ts';
import type { CompareResult, Outcome, Plan, Units } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `compare --json`: today held against every option of the plan, each alone. */
export function compare(
  { plan, units }: { readonly plan: Plan; readonly units: Units },
  task: Task,
): Outcome<CompareResult> {
  return compareOptions(plan, { units, progress: task.progress, weather: task.weather });
}
