import { type Cloth, createTrial, gridOf, withOptions } from '../../../engine/index.ts';
import type { GridSpec, Outcome, Period, Plan, Trial, TrialScore } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';
import { sentNumbers } from './as-built.ts';
import { lastOf } from './last-of.ts';

interface TrialArgs {
  /** The yard; its option holds all that is tried but the cloth. */
  readonly plan: Plan;
  readonly option: string;
  readonly cloth: readonly Cloth[];
  readonly period: Period;
  /** [m] */
  readonly cell: number;
  /** [m] */
  readonly height: number;
}

/** What the cloth does, while it is moved about. */
interface TrialAnswer extends Omit<TrialScore, 'hotLoad'> {
  readonly grid: GridSpec;
  /** [MJ/m²] NaN off the property. */
  readonly hotLoad: Float64Array;
}

/** As long as only the cloth moves, each move costs only what it changes. */
const yardLaidOut = lastOf<Outcome<Trial>>();

export function trial(
  { plan, option, cloth, period, cell, height }: TrialArgs,
  { weather }: Task,
): Outcome<TrialAnswer> {
  const laidOut = yardLaidOut([plan, option, period, cell, height, weather?.months], () => {
    const built = withOptions(plan, [option]);
    return built.ok ? createTrial(built.plan, period, gridOf(built.plan, { cell, height }), weather) : built;
  });
  if (!laidOut.ok) return laidOut;
  const { hotLoad, ...score } = laidOut.value.score(cloth);
  return { ok: true, value: { ...score, grid: laidOut.value.grid, hotLoad: sentNumbers(hotLoad) } };
}
