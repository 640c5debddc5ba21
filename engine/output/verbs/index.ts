import type { Verb } from './verb.ts';

/** Every verb of the command line, in the order of the help: add a line to bring in one more. */
export const VERBS: readonly Verb[] = [];
