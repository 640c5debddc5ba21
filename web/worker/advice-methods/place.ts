import { placeOf } from '../../../engine/index.ts';
import type { Outcome, PlaceResult, Plan } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `place --json`: ranked spots for one pot, in the yard as the plan has it. */
export function place(
  { plan, plant }: { readonly plan: Plan; readonly plant: string },
  { weather }: Task,
): Outcome<PlaceResult> {
  return placeOf(plan, { plant, weather });
}
