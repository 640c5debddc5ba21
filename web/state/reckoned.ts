import { computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { Plan, Weather } from '../../engine/index.ts';
import { bareSite } from './bare-site.ts';
import { weatherInUse } from './weather.ts';
import { shownPlan } from './yard.ts';

/**
 * What a reckoning needs of a plan: no name, no picture, no diary, no past years. The same object while none of that
 * changes, nor the weather it is made after.
 */
export const reckonedPlan: ReadonlySignal<Plan> = steady(() => {
  const { site, season, climate, features, options, plants, units } = shownPlan.value;
  return { site: bareSite(site), season, climate, features, options, plants, units };
});

/** The yard as it is drawn, whatever its options. The same object while a person only tries things. */
export const drawnPlan: ReadonlySignal<Plan> = steady(() => {
  const { site, season, climate, features, plants, units } = shownPlan.value;
  return { site: bareSite(site), season, climate, features, plants, units };
});

/** The plan as the sky alone sees it: place, season, climate. The same object while a person only draws. */
export const skyPlan: ReadonlySignal<Plan> = steady(() => {
  const { site, season, climate } = shownPlan.value;
  return { site: bareSite(site), season, climate, features: NO_FEATURES };
});

const NO_FEATURES: Plan['features'] = [];

/**
 * A plan computed from parts; gives the last object again while all of its parts are the same, and the weather that
 * goes along with it.
 */
function steady(parts: () => Omit<Plan, 'format' | 'version'>): ReadonlySignal<Plan> {
  let last: Plan | null = null;
  let lastWeather: Weather | undefined;
  return computed(() => {
    const weather = weatherInUse.value;
    const next: Plan = { format: 'shadewright-plan', version: 1, ...parts() };
    const before = last;
    if (
      before &&
      weather === lastWeather &&
      (Object.keys(next) as (keyof Plan)[]).every((key) => next[key] === before[key])
    )
      return before;
    last = next;
    lastWeather = weather;
    return next;
  });
}
