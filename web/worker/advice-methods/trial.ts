import { createTrial, gridOf, withOptions } from '../../../engine/index.ts';
import type { Canopy, GridSpec, Outcome, Period, Plan, Screen, Trial, TrialScore } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface TrialArgs {
  /** The yard; its option holds all that is tried but the cloth. */
  readonly plan: Plan;
  readonly option: string;
  readonly cloth: readonly (Canopy | Screen)[];
  readonly period: Period;
  /** [m] */
  readonly cell: number;
  /** [m] */
  readonly height: number;
}

/** What the cloth does, while it is moved about. */
export interface TrialAnswer extends Omit<TrialScore, 'hotLoad'> {
  readonly grid: GridSpec;
  /** [MJ/m²] NaN off the property. */
  readonly hotLoad: Float64Array;
}

/** The yard laid out last: as long as only the cloth moves, each move costs only what it changes. */
let kept: { readonly key: string; readonly trial: Trial } | null = null;

export function trial(
  { plan, option, cloth, period, cell, height }: TrialArgs,
  { weather }: Task,
): Outcome<TrialAnswer> {
  const key = JSON.stringify([plan, option, period, cell, height, weather?.months]);
  if (kept?.key !== key) {
    const built = withOptions(plan, [option]);
    if (!built.ok) return built;
    const laidOut = createTrial(built.plan, period, gridOf(built.plan, { cell, height }), weather);
    if (!laidOut.ok) return laidOut;
    kept = { key, trial: laidOut.value };
  }
  const { hotLoad, ...score } = kept.trial.score(cloth);
  return {
    ok: true,
    value: { ...score, grid: kept.trial.grid, hotLoad: Float64Array.from(hotLoad, (load) => load ?? NaN) },
  };
}
