/** A number found out in the yard and how far it may be off, in the same unit. */
export interface Estimate {
  readonly value: number;
  readonly pm: number;
}

/** What was asked cannot be told; `reason` says why and what would help, in one or two sentences. */
export interface Refusal {
  readonly ok: false;
  readonly reason: string;
}

/** A finding with the remarks that go with it (may be empty), or a refusal. */
export type Finding<T> = { readonly ok: true; readonly value: T; readonly notes: readonly string[] } | Refusal;

export function found<T>(value: T, notes: readonly string[] = []): Finding<T> {
  return { ok: true, value, notes };
}

export function refused(reason: string): Refusal {
  return { ok: false, reason };
}

/** What a formula makes of its inputs, and how far it may be off by them. */
export function estimateOf(formula: (values: readonly number[]) => number, inputs: readonly Estimate[]): Estimate {
  return { value: formula(inputs.map(({ value }) => value)), pm: spreadOf(formula, inputs) };
}

/**
 * How far a result may be off when each input may be off by its own ±, independently: the root of the sum of squares of
 * what each input alone does. Half of each input's way up and down, so a bend of the formula within the ± is seen.
 * @param formula From the inputs, in the order of `inputs`, to the result. May give NaN beyond its range; that side is
 *   left out.
 */
export function spreadOf(formula: (values: readonly number[]) => number, inputs: readonly Estimate[]): number {
  const values = inputs.map((input) => input.value);
  const middle = formula(values);
  let squares = 0;
  inputs.forEach(({ value, pm }, index) => {
    const at = (shifted: number): number => formula(values.map((other, k) => (k === index ? shifted : other)));
    const steps = [at(value - pm), at(value + pm)].filter(Number.isFinite).map((result) => Math.abs(result - middle));
    const moved = steps.length > 0 ? steps.reduce((sum, step) => sum + step, 0) / steps.length : 0;
    squares += moved * moved;
  });
  return Math.sqrt(squares);
}
