/** Things as tests draw them: what matters to a test is said there, the rest is usual. */

import type { PlanPoint, Wall } from '../../engine/plan/types.ts';

/** A wall 2 m high and 0.2 m thick. */
export function wall(id: string, path: readonly PlanPoint[], more: Partial<Wall> = {}): Wall {
  return { id, kind: 'wall', path: [...path], height: 2, thickness: 0.2, ...more };
}
