import { payoffMap } from '../../../engine/index.ts';
import type { Outcome, PayoffMap, Plan } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** What cloth of one height [m] and density would spare through each cell of its plane, over the yard as it is. */
export function payoff(
  {
    plan,
    height,
    density,
    cell,
  }: { readonly plan: Plan; readonly height: number; readonly density: number; readonly cell: number },
  { weather }: Task,
): Outcome<PayoffMap> {
  return payoffMap(plan, { height, density, cell, weather });
}
