import type { SharedLeaves } from '../../load/leaf/heat-day.ts';
import type { Outcome, Verdict } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { withOptions } from '../../plan/yards/options.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { doubtInputs } from './inputs.ts';
import { createRayYard } from './rays.ts';
import type { RayHarm } from './suffered.ts';
import type { DoubtInput } from './types.ts';
import { rayVerdicts } from './verdicts.ts';

/** What a plant suffers, and the verdict on it. */
export interface JudgedHarm extends Pick<RayHarm, 'id' | 'worth' | 'harm'> {
  readonly verdict: Verdict;
}

/** A yard's plants as drawn, and under each shift of each input in doubt. */
export interface ShiftedYard {
  readonly base: readonly JudgedHarm[];
  readonly inputs: readonly { readonly input: DoubtInput; readonly under: readonly (readonly JudgedHarm[])[] }[];
}

/** @param shareLeaves of all the yards of one question */
export function shiftedYard(
  plan: Plan,
  weather: Weather | undefined,
  shareLeaves: SharedLeaves,
  progress: (done: number) => void,
): Outcome<ShiftedYard> {
  const yard = createRayYard(plan, weather, shareLeaves);
  if (!yard.ok) return yard;
  const verdicts = rayVerdicts(plan, weather);
  if (!verdicts.ok) return verdicts;
  const drawn = yard.value.base;
  const judged = (harms: readonly RayHarm[]) =>
    harms.map((now, k): JudgedHarm => ({
      id: now.id,
      worth: now.worth,
      harm: now.harm,
      verdict: verdicts.value(drawn[k], now),
    }));
  const inputs: { input: DoubtInput; under: (readonly JudgedHarm[])[] }[] = [];
  const list = doubtInputs(plan);
  for (const input of list) {
    progress(inputs.length / list.length);
    const under: (readonly JudgedHarm[])[] = [];
    for (const shift of input.shifts) {
      const harms = yard.value.under(shift, input.feature);
      if (!harms.ok) return harms;
      under.push(judged(harms.value));
    }
    inputs.push({ input, under });
  }
  return { ok: true, value: { base: judged(drawn), inputs } };
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
