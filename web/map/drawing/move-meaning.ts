import { signal } from '@preact/signals';
import type { Plan, PlanPoint } from '../../../engine/index.ts';

/**
 * What taking a whole thing elsewhere means where it is not simply moved: while a place for a pot is looked for, it
 * goes there in an option and the yard stays. A card sets it as long as it is open.
 */
export interface MoveMeaning {
  /** The plan with the thing there; `null` where moving this thing means nothing special. */
  plan(id: string, to: PlanPoint): Plan | null;
  /** Makes it so. @param undo `merge` for a run of nudges */
  commit(id: string, to: PlanPoint, undo: 'now' | 'merge'): void;
}

export const moveMeaning = signal<MoveMeaning | null>(null);
