import type { Outcome } from '../load/types.ts';
import { withOptions } from '../plan/options.ts';
import type { Plan } from '../plan/types.ts';
import type { Weather } from '../sun/weather.ts';
import { type DoubtInput, doubtInputs } from './doubt-inputs.ts';
import { createRayYard, type RayHarm } from './doubt-rays.ts';

/** A yard's plants as drawn, and under each shift of each input in doubt. */
export interface ShiftedYard {
  readonly base: readonly RayHarm[];
  readonly inputs: readonly { readonly input: DoubtInput; readonly under: readonly (readonly RayHarm[])[] }[];
}

export function shiftedYard(plan: Plan, weather?: Weather, progress: (done: number) => void = () => {}): Outcome<ShiftedYard> {
  const yard = createRayYard(plan, weather);
  if (!yard.ok) return yard;
  const inputs: { input: DoubtInput; under: (readonly RayHarm[])[] }[] = [];
  const list = doubtInputs(plan);
  for (const input of list) {
    progress(inputs.length / list.length);
    const under: (readonly RayHarm[])[] = [];
    for (const shift of input.shifts) {
      const harms = yard.value.under(shift, input.feature);
      if (!harms.ok) return harms;
      under.push(harms.value);
    }
    inputs.push({ input, under });
  }
  return { ok: true, value: { base: yard.value.base, inputs } };
}

/** The plan with each of its options alone, by the option's id. */
export function optionPlans(plan: Plan): Outcome<{ readonly id: string; readonly plan: Plan }[]> {
  const value: { id: string; plan: Plan }[] = [];
  for (const { id } of plan.options ?? []) {
    const changed = withOptions(plan, [id]);
    if (!changed.ok) return changed;
    value.push({ id, plan: changed.plan });
  }
  return { ok: true, value };
}

/** Σ worth × harm. [K·h/day] @param ids plants that count; all where none are given */
export function weighedHarm(harms: readonly RayHarm[], ids?: ReadonlySet<string>): number {
  return harms.reduce((sum, { id, worth, harm }) => (ids === undefined || ids.has(id) ? sum + worth * harm : sum), 0);
}
