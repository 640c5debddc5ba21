import { doubtOf } from '../../../engine/index.ts';
import type { DoubtResult, Outcome, Plan, Units } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `doubt --json`: what hangs on each number that is not taped. */
export function doubt(
  { plan, units }: { readonly plan: Plan; readonly units: Units },
  task: Task,
): Outcome<DoubtResult> {
  return doubtOf(plan, { units, progress: task.progress, weather: task.weather });
}
