import type { Plan } from '../types.ts';

/** What is shown and assumed where no unit is typed. */
export type Units = 'metric' | 'imperial';

/** The units a plan is shown in; metric where it does not say. */
export function unitsOf(plan: Plan): Units {
  return plan.units ?? 'metric';
}
