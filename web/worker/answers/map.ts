import { dayTable, loadOf, nearWall, QUANTITIES, spotOf } from '../../../engine/index.ts';
import type { LoadResult, MonthDay, Outcome, Period, Plan, PlanPoint, Quantity } from '../../../engine/index.ts';
import type { MethodsOf } from '../methods.ts';
import type { Method, Task } from '../protocol.ts';
import { asBuilt, sentNumbers } from './as-built.ts';

/** `load --json`, the cells as arrays of numbers: NaN off the property and inside taller solids. */
type MapLoad = Omit<LoadResult, 'cells'> & { readonly cells: Readonly<Record<Quantity, Float64Array>> };

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

function loadForMap(plan: Plan, { period, cell, height }: LoadArgs, task: Task): Outcome<MapLoad> {
  const result = loadOf(plan, { period, cell, height, progress: task.progress, weather: task.weather });
  if (!result.ok) return result;
  const cells = Object.fromEntries(QUANTITIES.map((name) => [name, sentNumbers(result.value.cells[name])]));
  return { ok: true, value: { ...result.value, cells: cells as MapLoad['cells'] } };
}

/** What the map is painted by. */
export const answers = {
  day: ({ plan, monthDay }: { readonly plan: Plan; readonly monthDay: MonthDay | 'heatwave' }, { weather }: Task) =>
    dayTable(plan, monthDay, weather),
  load: asBuilt(loadForMap),
  spot: asBuilt((plan, { at, height, period }: SpotArgs, { weather }) => spotOf(plan, at, { height, period, weather })),
  /** `radius` is that of the plant that stands there; 0 for a bare spot. [m] */
  wallNear: asBuilt(
    (plan, { at, radius, period }: Omit<SpotArgs, 'height'> & { readonly radius: number }, { weather }) =>
      nearWall(plan, at, radius, period, weather),
  ),
} satisfies Record<MethodsOf<'map'>, Method>;
