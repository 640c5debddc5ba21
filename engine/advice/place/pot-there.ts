import { plantLoadsOf } from '../../load/load-of.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import { plantRowOf } from '../../plan/catalogue/plants.ts';
import { featureOf } from '../../plan/edit/edit-feature.ts';
import { refusal } from '../../plan/problems.ts';
import type { Feature, Plan, PlanPoint, Plant } from '../../plan/types.ts';
import type { Period } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { PotGround } from './ground.ts';
import { withWinter, winterDayOf } from './winter-day.ts';
import { wantsWinterSun } from './winter.ts';

/** How a pot would fare at one place. */
export interface PotThere {
  readonly at: PlanPoint;
  readonly load: PlantLoad;
  /** On a clear day in mid-winter, of a plant that keeps its leaves; `null` of others. [h] */
  readonly winterSunHours: number | null;
  /** Why it cannot stand there, as a clause; `null` where it can. */
  readonly reason: string | null;
}

/** A pot by its plant's id, as long as it stands on the plan. */
export function potNamed(plan: Plan, id: string): Outcome<Plant> {
  const pot = featureOf(plan, id);
  return pot?.kind === 'plant' ? { ok: true, value: pot } : refusal('/features', 'This pot is no longer on the plan.');
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
  const alone = { ...plan, features: aloneWith(plan, { ...pot, at }) };
  const loads = plantLoadsOf(alone, { period, weather });
  if (!loads.ok) return loads;
  const winter = winterOf(alone, pot);
  if (winter !== null && !winter.ok) return winter;
  // At its top, as places are told.
  const winterSunHours = winter?.value[0].sides?.find(({ side }) => side === 'top')?.sunHours ?? null;
  return { ok: true, value: { at, load: loads.value[0], winterSunHours, reason: ground.reasonAt(at) } };
}

/** A clear day in mid-winter for a plant that then wants sun; `null` for others. */
function winterOf(alone: Plan, { plant }: Plant): Outcome<readonly PlantLoad[]> | null {
  const row = plant === undefined ? undefined : plantRowOf(alone, plant);
  if (row === undefined || !wantsWinterSun(row)) return null;
  return plantLoadsOf(withWinter(alone), { period: { kind: 'day', date: winterDayOf(alone) } });
}

/** The yard in which one plant alone is judged: others cast no shade on it. */
function aloneWith({ features }: Plan, pot: Feature): Feature[] {
  return features.flatMap((feature): Feature[] => {
    if (feature.id === pot.id) return [pot];
    if (feature.kind === 'plant' || feature.kind === 'bed') return [];
    return feature.kind === 'tree' ? [{ ...feature, plant: undefined }] : [feature];
  });
}
