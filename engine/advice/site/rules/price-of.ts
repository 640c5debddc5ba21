import { costOf } from '../../../frame/sheet.ts';
import type { Canopy, Plan, Screen } from '../../../plan/types.ts';
import { hungOf } from '../kinds/hung.ts';

/**
 * What cloth costs [plan's currency], `null` where no price is known, Infinity where the shop's tube cannot make it.
 * Worked out once a form.
 */
export function priceReader(plan: Plan): (cloth: Canopy | Screen) => number | null {
  const known = new Map<string, number | null>();
  return (cloth) => {
    const form = hungOf(cloth).form();
    let cost = known.get(form);
    if (cost === undefined) {
      const result = costOf(cloth, plan);
      known.set(form, (cost = result.ok ? result.cost.total : Infinity));
    }
    return cost;
  };
}
