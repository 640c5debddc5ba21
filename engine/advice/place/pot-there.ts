import { plantLoadsOf } from '../../load/load-of.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import { featureOf } from '../../plan/edit/edit-feature.ts';
import type { Feature, Plan, PlanPoint, Plant } from '../../plan/types.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather.ts';
import type { PotGround } from './ground.ts';

/** How a pot would fare at one place. */
export interface PotThere {
  readonly at: PlanPoint;
  readonly load: PlantLoad;
  /** Why it cannot stand there, as a clause; `null` where it can. */
  readonly reason: string | null;
}

/** A pot by its plant's id, as long as it stands on the plan. */
export function potNamed(plan: Plan, id: string): Outcome<Plant> {
  const pot = featureOf(plan, id);
  return pot?.kind === 'plant'
    ? { ok: true, value: pot }
    : {
        ok: false,
        problems: [{ pointer: '/features', message: 'This pot is no longer on the plan.', severity: 'error' }],
      };
}

/**
 * @param pot of the plan
 * @param at where it is held [m]
 * @param ground `potGround` of the same pot in the same yard
 */
export function potThere(
  plan: Plan,
  pot: Plant,
  at: PlanPoint,
  ground: PotGround,
  { period, weather }: { readonly period: Period; readonly weather?: Weather },
): Outcome<PotThere> {
  const loads = plantLoadsOf({ ...plan, features: aloneWith(plan, { ...pot, at }) }, { period, weather });
  return loads.ok ? { ok: true, value: { at, load: loads.value[0], reason: ground.reasonAt(at) } } : loads;
}

/** The yard in which one plant alone is judged: others cast no shade on it. */
function aloneWith({ features }: Plan, pot: Feature): Feature[] {
  return features.flatMap((feature): Feature[] => {
    if (feature.id === pot.id) return [pot];
    if (feature.kind === 'plant' || feature.kind === 'bed') return [];
    return feature.kind === 'tree' ? [{ ...feature, plant: undefined }] : [feature];
  });
}
