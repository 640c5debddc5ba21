import { withOptions } from '../../../engine/index.ts';
import type { Outcome, Plan } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** A yard, and the ids of those of its options that stand as built. */
export interface AsBuilt {
  readonly plan: Plan;
  readonly options: readonly string[];
}

/** Answers of the yard with the options that were asked for. */
export function asBuilt<Args, Value>(
  answer: (plan: Plan, args: Args, task: Task) => Outcome<Value>,
): (args: Args & AsBuilt, task: Task) => Outcome<Value> {
  return (args, task) => {
    const built = withOptions(args.plan, args.options);
    return built.ok ? answer(built.plan, args, task) : built;
  };
}

/** A value that cannot fail, as an answer. */
export function sure<Value>(value: Value): Outcome<Value> {
  return { ok: true, value };
}

/** Numbers as they are sent: NaN where there is none. */
export function sentNumbers(values: readonly (number | null)[]): Float64Array {
  return Float64Array.from(values, (value) => value ?? NaN);
}
