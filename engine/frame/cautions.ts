import type { Caution, RiskyTask } from './types.ts';

/** The cautions that belong beside these tasks, stops first. Every page that tells someone to do one of them shows them. */
export function cautionsFor(tasks: readonly RiskyTask[]): readonly Caution[] {
  throw new Error(`No cautions yet for ${tasks.join()}.`);
}
