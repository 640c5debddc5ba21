import { featureOf, plantLoadsOf, potGround } from '../../../engine/index.ts';
import type { Feature, Outcome, Period, Plan, PlantLoad, PlanPoint, PotGround } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface PotThereArgs {
  readonly plan: Plan;
  /** Id of the pot, and where it is held. */
  readonly plant: string;
  readonly at: PlanPoint;
  readonly period: Period;
}

/** How a pot would fare at one place. */
export interface PotThere {
  readonly at: PlanPoint;
  readonly load: PlantLoad;
  /** Why it cannot stand there, as a clause; `null` where it can. */
  readonly reason: string | null;
}

/** The ground laid out last: while only the pot is dragged it stays. */
let kept: { readonly key: string; readonly ground: PotGround } | null = null;

export function potThere({ plan, plant, at, period }: PotThereArgs, { weather }: Task): Outcome<PotThere> {
  const pot = featureOf(plan, plant);
  if (pot?.kind !== 'plant')
    return {
      ok: false,
      problems: [{ pointer: '/features', message: 'This pot is no longer on the plan.', severity: 'error' }],
    };
  const key = JSON.stringify([plan.site, plan.features.filter(({ id }) => id !== plant), pot.pot]);
  if (kept?.key !== key) kept = { key, ground: potGround(plan, pot) };
  const loads = plantLoadsOf({ ...plan, features: aloneWith(plan, { ...pot, at }) }, { period, weather });
  return loads.ok ? { ok: true, value: { at, load: loads.value[0], reason: kept.ground.reasonAt(at) } } : loads;
}

/** The yard in which one plant alone is judged: others cast no shade on it. */
function aloneWith({ features }: Plan, pot: Feature): Feature[] {
  return features.flatMap((feature): Feature[] => {
    if (feature.id === pot.id) return [pot];
    if (feature.kind === 'plant' || feature.kind === 'bed') return [];
    return feature.kind === 'tree' ? [{ ...feature, plant: undefined }] : [feature];
  });
}
