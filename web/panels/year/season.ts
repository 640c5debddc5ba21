import { computed } from '@preact/signals';
import { localDate } from '../../../engine/index.ts';
import type { CivilDate, Plan } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { shownOptions, stage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';

export const noted = computed((): Plan => ({
  ...reckonedPlan.value,
  name: plan.value.name,
  journal: plan.value.journal,
  clay: plan.value.clay,
}));

const reviewed = computed((): Plan => ({
  ...noted.value,
  past: plan.value.past,
  summers: plan.value.summers,
}));

/** The year's advice, worked out while the stage is open. */
export const season = liveAnswer('season', () =>
  stage.value === 'year' ? { plan: noted.value, options: shownOptions.value } : null,
);

/** Readings and damage held against the estimate, worked out while the stage is open. */
export const review = liveAnswer('review', () => (stage.value === 'year' ? { plan: reviewed.value } : null));

/** Today where the yard is. */
export function today(): CivilDate {
  return localDate(Date.now(), plan.value.site.timeZone);
}
