import { loadOf, withOptions } from '../../../engine/index.ts';
import type { LoadResult, Outcome, Period, Plan } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface LoadArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  readonly period: Period;
  /** [m] */
  readonly cell: number;
  /** [m] */
  readonly height: number;
}

export function load({ plan, options, period, cell, height }: LoadArgs, task: Task): Outcome<LoadResult> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  return loadOf(built.plan, { period, cell, height, progress: task.progress, weather: task.weather });
}
