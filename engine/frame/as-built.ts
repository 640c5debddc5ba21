import type { Plan, Problem } from '../plan/types.ts';

/** Measured numbers by the id of the sheet's `asBuilt` field; a field left out was not measured. [m] */
export type AsBuiltNumbers = Readonly<Record<string, number>>;

/**
 * The plan with a canopy or screen as it was really built, and what changed in sentences.
 * @param optionId The option that adds it; absent: it stands in `features`.
 */
export function withAsBuilt(
  plan: Plan,
  id: string,
  measured: AsBuiltNumbers,
  optionId?: string,
): { ok: true; plan: Plan; changes: readonly string[] } | { ok: false; problems: readonly Problem[] } {
  throw new Error(`Not yet for ${id}, ${Object.keys(measured).join()}, ${optionId}, ${plan.name}.`);
}
