/** Edits of options: what may be tried, and taking one over into the yard. */

import type { Feature, Plan, PlanPoint, Problem, YardOption } from '../types.ts';
import { applyOption } from '../yards/options.ts';
import { withoutDeadChanges } from './edit-feature.ts';

export function addOption(plan: Plan, option: YardOption): Plan {
  return { ...plan, options: [...(plan.options ?? []), option] };
}

export function removeOption(plan: Plan, optionId: string): Plan {
  const rest = plan.options?.filter((option) => option.id !== optionId);
  return rest === undefined || rest.length === plan.options?.length
    ? plan
    : withoutDeadChanges({ ...plan, options: rest });
}

/** The option also adds a thing. */
export function addToOption(plan: Plan, optionId: string, feature: Feature): Plan {
  return mapOption(plan, optionId, (option) => ({ ...option, adds: [...(option.adds ?? []), feature] }));
}

/** The option puts a plant elsewhere; with no point it leaves it where it is. */
export function moveInOption(plan: Plan, optionId: string, plantId: string, at: PlanPoint | undefined): Plan {
  return mapOption(plan, optionId, (option) => {
    const others = Object.entries(option.moves ?? {}).filter(([id]) => id !== plantId);
    return { ...option, moves: Object.fromEntries(at === undefined ? others : [...others, [plantId, at]]) };
  });
}

/**
 * Makes an option's changes part of the yard: they go into `features`, the option goes, and other options forget what
 * is no longer there. An option that cannot be applied leaves the plan as it is; `withOptions` says why.
 */
export function acceptOption(plan: Plan, optionId: string): Plan {
  const index = (plan.options ?? []).findIndex((option) => option.id === optionId);
  const option = plan.options?.[index];
  if (option === undefined) return plan;
  const problems: Problem[] = [];
  const features = applyOption(plan.features, option, `/options/${index}`, problems);
  return problems.length > 0
    ? plan
    : withoutDeadChanges({ ...plan, features, options: plan.options?.toSpliced(index, 1) });
}

function mapOption(plan: Plan, optionId: string, change: (option: YardOption) => YardOption): Plan {
  const index = (plan.options ?? []).findIndex((option) => option.id === optionId);
  const option = plan.options?.[index];
  if (option === undefined) return plan;
  const next = change(option);
  return next === option ? plan : { ...plan, options: plan.options?.with(index, next) };
}
