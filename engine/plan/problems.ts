import type { Problem } from './types.ts';

/** What is wrong, in one sentence. @param pointer JSON Pointer of a key of the plan, `--option`, or '' for all of it */
export function errorAt(pointer: string, message: string): Problem {
  return { pointer, message, severity: 'error' };
}

/** What is seldom meant, in one sentence. */
export function warningAt(pointer: string, message: string): Problem {
  return { pointer, message, severity: 'warning' };
}

/** What cannot be told or made, for one reason. */
export function refusal(pointer: string, message: string): { readonly ok: false; problems: Problem[] } {
  return { ok: false, problems: [errorAt(pointer, message)] };
}

/** The same about an option of the command line, by its name. */
export function refuseOption(name: string, message: string): ReturnType<typeof refusal> {
  return refusal(`--${name}`, message);
}
