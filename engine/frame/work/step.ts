import type { Step } from '../types.ts';

/** @param needs Ids of the shopping list and of the tools.  @param cautions Ids of the cautions that go with it. */
export function step(id: string, text: string, needs: readonly string[], cautions: readonly string[]): Step {
  return { id, text, needs, cautions };
}
