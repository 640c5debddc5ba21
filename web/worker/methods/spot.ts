import { spotOf, withOptions } from '../../../engine/index.ts';
import type { Outcome, Period, Plan, PlanPoint, SpotResult } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface SpotArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  readonly period: Period;
  /** [m] */
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
}

/** `spot --json`. */
export function spot({ plan, options, period, at, height }: SpotArgs, { weather }: Task): Outcome<SpotResult> {
  const built = withOptions(plan, options);
  return built.ok ? spotOf(built.plan, at, { height, period, weather }) : built;
}
