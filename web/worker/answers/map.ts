import { dayTable, loadOf, spotOf } from '../../../engine/index.ts';
import type { MonthDay, Period, Plan, PlanPoint } from '../../../engine/index.ts';
import type { MethodsOf } from '../methods.ts';
import type { Method, Task } from '../protocol.ts';
import { asBuilt } from './as-built.ts';

interface LoadArgs {
  readonly period: Period;
  /** [m] */
  readonly cell: number;
  /** [m] */
  readonly height: number;
}

interface SpotArgs {
  readonly period: Period;
  /** [m] */
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
}

/** What the map is painted by. */
export const answers = {
  day: ({ plan, monthDay }: { readonly plan: Plan; readonly monthDay: MonthDay | 'heatwave' }, { weather }: Task) =>
    dayTable(plan, monthDay, weather),
  load: asBuilt((plan, { period, cell, height }: LoadArgs, { progress, weather }) =>
    loadOf(plan, { period, cell, height, progress, weather }),
  ),
  spot: asBuilt((plan, { at, height, period }: SpotArgs, { weather }) => spotOf(plan, at, { height, period, weather })),
} satisfies Record<MethodsOf<'map'>, Method>;
