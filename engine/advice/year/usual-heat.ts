import { monthOf } from '../../plan/defaults.ts';
import type { Plan } from '../../plan/types.ts';

/** A hot day as one in ten is: so many standard deviations above the month's mean high. */
const ONE_IN_TEN = 1.28;

/**
 * The plan with heat days no hotter than one day in ten of their months: what is to be expected every summer is planned
 * by these, not by the worst day of the year.
 */
export function withUsualHeat(plan: Plan): Plan {
  const { climate } = plan;
  const hottest = climate.months.toSorted((a, b) => b.high - a.high)[0];
  const raised = hottest.high + ONE_IN_TEN * monthOf(hottest).spread;
  return { ...plan, climate: { ...climate, heatwaveHigh: Math.min(climate.heatwaveHigh, raised) } };
}
