import { refusal } from '../problems.ts';
import type { Json } from '../schema/form.ts';
import { PLAN_FORMAT, PLAN_VERSION } from '../schema/plan.ts';
import { isRecord, show } from '../schema/say.ts';

/** By the version it starts from, what turns a plan into one of the next version. Earlier years are brought along. */
export type UpgradeSteps = Readonly<Record<number, (plan: Json) => Json>>;

const STEPS: UpgradeSteps = {};

/** A plan of any version known, brought to the present one; the problem if it is no plan, or too new. */
export function upgradePlan(
  value: unknown,
  steps: UpgradeSteps = STEPS,
  present = PLAN_VERSION,
): { ok: true; value: Json } | ReturnType<typeof refusal> {
  if (!isRecord(value))
    return refusal('', `A plan file holds one object with keys, but this one holds ${show(value)}.`);
  if (value.format !== PLAN_FORMAT) {
    return refusal(
      '/format',
      `This is not a plan file: its format ` +
        `${value.format === undefined ? 'is missing' : `is ${show(value.format)}`}, and it should be "${PLAN_FORMAT}".`,
    );
  }
  const version = value.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refusal(
      '/version',
      `The version of a plan is a whole number from 1 on; here it is ` +
        `${version === undefined ? 'missing' : show(version)}.`,
    );
  }
  if (version > present) {
    return refusal(
      '/version',
      `This plan is of version ${version}, written by a newer program; this one reads versions up to ${present}.`,
    );
  }
  let plan: Json = value;
  for (let at = version; at < present; at++) plan = { ...steps[at](plan), version: at + 1 };
  return { ok: true, value: withPastUpgraded(plan, steps, present) };
}

/** Frozen years that are no plans are left as they are, for the check to name. */
function withPastUpgraded(plan: Json, steps: UpgradeSteps, present: number): Json {
  if (!Array.isArray(plan.past)) return plan;
  let changed = false;
  const past = plan.past.map((year: unknown) => {
    if (!isRecord(year) || !isRecord(year.plan) || year.plan.version === present) return year;
    const upgraded = upgradePlan(year.plan, steps, present);
    if (!upgraded.ok) return year;
    changed = true;
    return { ...year, plan: upgraded.value };
  });
  return changed ? { ...plan, past } : plan;
}
