import { tomorrowOf, withOptions } from '../../../engine/index.ts';
import type { Forecast, Outcome, Plan, Tomorrow } from '../../../engine/index.ts';

/** One day's list from a typed forecast, with some options as built. */
export function tomorrow({
  plan,
  options,
  forecast,
}: {
  readonly plan: Plan;
  readonly options: readonly string[];
  readonly forecast: Forecast;
}): Outcome<Tomorrow> {
  const built = withOptions(plan, options);
  return built.ok ? tomorrowOf(built.plan, forecast) : built;
}
