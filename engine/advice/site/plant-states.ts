import { type PlantHarm, harmOf } from '../../load/harm-of.ts';
import { plantLoadsOf } from '../../load/load-of.ts';
import { isTooDark } from '../../load/light-class.ts';
import { plantFeatures, rowOf } from '../../load/planted.ts';
import type { Outcome, PlantLoad } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather.ts';
import type { PlantState } from './site-types.ts';

export interface PlantStanding {
  readonly id: string;
  readonly worth: number;
  readonly state: PlantState;
  readonly tooDark: boolean;
}

/** How every plant of a yard stands: harm over the heat days, the season's nine, the verdict of the heatwave day. */
export function plantStandings(plan: Plan, weather?: Weather): Outcome<PlantStanding[]> {
  const harms = harmOf(plan, weather);
  if (!harms.ok) return harms;
  const loads = plantLoadsOf(plan, { weather });
  if (!loads.ok) return loads;
  const harmById = new Map(harms.value.map((harm) => [harm.id, harm]));
  const features = new Map(plantFeatures(plan).map((feature) => [feature.id, feature]));
  return {
    ok: true,
    value: loads.value.map((load) => {
      const feature = features.get(load.id);
      const row = feature && rowOf(plan, feature);
      const harm = harmById.get(load.id);
      return { id: load.id, worth: harm?.worth ?? 0, state: stateOf(load, harm), tooDark: row !== undefined && isTooDark(row, topOf(load)) };
    }),
  };
}

function topOf(load: PlantLoad): PlantLoad | NonNullable<PlantLoad['sides']>[number] {
  return load.sides?.[0] ?? load;
}

function stateOf(load: PlantLoad, harm: PlantHarm | undefined): PlantState {
  const top = topOf(load);
  return {
    sunHours: load.sunHours, morningHours: load.morningHours, afternoonHours: load.afternoonHours, hotHours: load.hotHours, beamDose: load.beamDose,
    hotLoad: load.hotLoad, dailyLight: load.dailyLight, skyView: load.skyView, grade: load.grade,
    harm: harm?.harm ?? null, scorchDose: load.scorchDose, peak: load.peak, verdict: load.verdict, topLight: top.dailyLight, topSunHours: top.sunHours,
  };
}
