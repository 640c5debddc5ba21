/** Steps on the way of a pot: by how many a piece of ground lies above another. */
import { openRing, pointInRing } from '../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';

/** So far on the level is as much work as one step. Our choice. [m] */
export const STEP_AS_FAR = 2;

/** From one place to another, up; below 0 down. */
export function stepsBetween(plan: Plan, from: PlanPoint, to: PlanPoint): number {
  return stepsUpTo(plan, to) - stepsUpTo(plan, from);
}

/** Of the pieces of ground that hold a point the last counts, as for what lies on it. */
function stepsUpTo({ features }: Plan, at: PlanPoint): number {
  const under = features.findLast((feature) => feature.kind === 'ground' && pointInRing(at, openRing(feature.outline)));
  return (under?.kind === 'ground' ? under.steps : undefined) ?? 0;
}

const FEW = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

/** "two steps up", "one step down"; empty on the level. */
export function stepsWords(steps: number): string {
  const count = Math.abs(steps);
  return count === 0 ? '' : `${FEW[count] ?? count} ${count === 1 ? 'step' : 'steps'} ${steps > 0 ? 'up' : 'down'}`;
}

/** The way to carry in words: "7.5 m away, two steps down". @param far its length, told */
export function wayWords(far: string, steps: number): string {
  return `${far} away${steps === 0 ? '' : `, ${stepsWords(steps)}`}`;
}
