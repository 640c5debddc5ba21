import type { Plan } from '../../../plan/types.ts';
import type { Units } from '../../../plan/units/units.ts';
import { coolWords, potsToCool, rootsReachWords } from '../pots.ts';
import type { TomorrowPlant, TomorrowTask } from './types.ts';

/** Pots whose roots would die that day: what cools them, done before the sun is on them. */
export function potTasks(plan: Plan, plants: readonly TomorrowPlant[], units: Units): TomorrowTask[] {
  return potsToCool(plants).map((pots) => ({
    at: 'the evening before',
    plants: pots.plants,
    advice: { basis: 'our estimate', text: `${coolWords(plan, pots)}. ${rootsReachWords(plan, pots, units)}` },
  }));
}
