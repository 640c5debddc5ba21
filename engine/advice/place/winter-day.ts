/** The day that stands for winter where a pot is placed. */

import type { MonthDay, Plan } from '../../plan/types.ts';

/** The middle of winter at a latitude. */
export function winterDayOf(plan: Plan): MonthDay {
  return plan.site.latitude >= 0 ? '01-15' : '07-15';
}

/** A clear winter month stands in for whatever the climate has: only where the sun stands matters. */
export function withWinter(plan: Plan): Plan {
  const month = Number(winterDayOf(plan).slice(0, 2));
  return {
    ...plan,
    climate: {
      ...plan.climate,
      months: [...plan.climate.months.filter((each) => each.month !== month), { month, high: 15, low: 5, sunshine: 1 }],
    },
  };
}
