import { unitsOf } from '../../plan/units/units.ts';
import { table } from '../text/plain-text.ts';
import { planOf, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** A plan that comes this far has no problem; what is left to tell are the warnings. */
export const check: Verb = {
  name: 'check',
  summary: 'every problem and warning in the plan, with the path to it',
  plan: 'required',
  common: [],
  options: [],
  examples: ['check demo', 'check demo:lane --json'],
  run: runCheck,
};

function runCheck(request: VerbRequest): VerbResult {
  const plan = planOf(request);
  const { warnings } = request;
  const told = warnings.map(({ pointer, message }) => ({ pointer, message }));
  const name = plan.name === undefined ? 'The plan' : `“${plan.name}”`;
  const count =
    warnings.length === 0
      ? 'no problem, no warning'
      : `no problem, ${warnings.length} ${warnings.length === 1 ? 'warning' : 'warnings'}`;
  const head =
    `${name}: ${count}. ${plan.features.length} things drawn, ${plan.options?.length ?? 0} options, ` +
    `shown in ${unitsOf(plan)} units.`;
  const text =
    warnings.length === 0
      ? head
      : `${head}\n\n${table(
          request.page.columns,
          ['where', 'warning'],
          told.map(({ pointer, message }) => [pointer, message]),
        )}`;
  return { ok: true, json: { problems: [], warnings: told }, text };
}
