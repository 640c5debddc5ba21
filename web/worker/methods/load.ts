import { QUANTITIES, loadOf, withOptions } from '../../../engine/index.ts';
import type { LoadResult, Outcome, Period, Plan, Quantity } from '../../../engine/index.ts';
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

/** `load --json`, the cells as arrays of numbers: NaN off the property and inside taller solids. */
export type MapLoad = Omit<LoadResult, 'cells'> & { readonly cells: Readonly<Record<Quantity, Float64Array>> };

export function load({ plan, options, period, cell, height }: LoadArgs, task: Task): Outcome<MapLoad> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const result = loadOf(built.plan, { period, cell, height, progress: task.progress, weather: task.weather });
  if (!result.ok) return result;
  const cells = Object.fromEntries(
    QUANTITIES.map((name) => [name, Float64Array.from(result.value.cells[name], (value) => value ?? NaN)]),
  );
  return { ok: true, value: { ...result.value, cells: cells as MapLoad['cells'] } };
}
