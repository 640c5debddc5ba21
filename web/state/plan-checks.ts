import { signal } from '@preact/signals';
import type { Plan, Problem } from '../../engine/index.ts';

const checker = signal<((plan: Plan) => readonly Problem[]) | null>(null);

/** Loads every check there is on a plan: after the first picture, which needs none of them. */
export async function loadPlanChecks(): Promise<void> {
  const { checkPlan } = await import('./plan-reader.ts');
  checker.value = checkPlan;
}

/** Every problem and warning of a plan; `null` in the first moments, while the checks are still being loaded. */
export function planProblems(plan: Plan): readonly Problem[] | null {
  return checker.value?.(plan) ?? null;
}
