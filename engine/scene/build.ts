import type { MonthDay, Plan } from '../plan/types.ts';
import type { Scene } from './solids.ts';

/** The plan's shadow casters as solids (walls, hedges, buildings, trees, canopies, screens; nothing else casts). */
export function buildScene(_plan: Plan): Scene {
  throw new Error('not yet');
}

/** Index into `scene.states` of the yearly state that holds on a day. */
export function stateOf(_scene: Scene, _monthDay: MonthDay): number {
  throw new Error('not yet');
}
