import { cheaperFirst } from '../../../engine/index.ts';
import type { CheaperFirst, Outcome, Plan, Units } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** What cheaper cures than cloth would do in the yard: moving and wrapping pots, water, clay. */
export function cheaper(
  { plan, units }: { readonly plan: Plan; readonly units: Units },
  { weather }: Task,
): Outcome<CheaperFirst> {
  return cheaperFirst(plan, { units, weather });
}
