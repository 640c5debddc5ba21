import { potGround, potNamed, potThere as judge } from '../../../engine/index.ts';
import type { Outcome, Period, Plan, PlanPoint, PotGround, PotThere } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';
import { lastOf } from './last-of.ts';

interface PotThereArgs {
  readonly plan: Plan;
  /** Id of the pot's plant, and where it is held. [m] */
  readonly plant: string;
  readonly at: PlanPoint;
  readonly period: Period;
}

/** While only the pot is dragged the ground stays. */
const groundLaidOut = lastOf<PotGround>();

/** How a pot would fare at one place. */
export function potThere({ plan, plant, at, period }: PotThereArgs, { weather }: Task): Outcome<PotThere> {
  const pot = potNamed(plan, plant);
  if (!pot.ok) return pot;
  const others = plan.features.filter(({ id }) => id !== plant);
  const ground = groundLaidOut([plan.site, others, pot.value.pot], () => potGround(plan, pot.value));
  return judge(plan, pot.value, at, ground, { period, weather });
}
