import { computed } from '@preact/signals';
import type { Period } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { heat } from '../../state/results.ts';
import { mapHeight, monthDay, periodKind, pin, selection, shownOptions, stage } from '../../state/view.ts';

/** A plant's crown ends here; its top is looked at from just above. [m] */
const ABOVE = 0.01;

/** Hours are those of one day: the heatwave day, or the date under the bead. */
const oneDay = computed((): Period =>
  periodKind.value === 'heatwave' ? { kind: 'heatwave' } : { kind: 'day', date: monthDay.value },
);

/** The chosen plant as the newest grading knows it. */
const chosenPlant = computed(() => heat.value.shown?.value.plants.find(({ id }) => id === selection.value[0]) ?? null);

/** The day at the top of the chosen plant, step by step. */
export const plantHours = liveAnswer('spot', () => {
  const plant = chosenPlant.value;
  if (!plant || stage.value !== 'heat') return null;
  return {
    plan: reckonedPlan.value,
    options: shownOptions.value,
    period: oneDay.value,
    at: plant.at,
    height: plant.height + ABOVE,
  };
});

/** The day at the pinned spot, at the map's height. */
export const pinHours = liveAnswer('spot', () => {
  const at = pin.value;
  if (!at || stage.value !== 'heat') return null;
  return { plan: reckonedPlan.value, options: shownOptions.value, period: oneDay.value, at, height: mapHeight.value };
});
