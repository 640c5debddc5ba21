import { computed, signal } from '@preact/signals';
import { triedHeadline, winterWarning } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { drawnPlan } from '../../map/drawing/drawn-plan.ts';
import { askEngine } from '../../state/ask.ts';
import type { ArgsOf, ValueOf } from '../../state/ask.ts';
import { isStale } from '../../state/live.ts';
import { followNewest } from '../../state/newest.ts';
import { drawnPlan as yardPlan } from '../../state/reckoned.ts';
import { heat, period, sunUp } from '../../state/results.ts';
import { stage } from '../../state/view.ts';
import { preview } from '../../state/yard.ts';
import { timesIn } from '../parts/times.ts';
import { places, pot } from './placed.ts';

/** Where the pot stands on the drawing: dragged, in the open option, or in the yard. */
export const potAt = computed<PlanPoint | null>(() => {
  const id = pot.value?.id;
  const drawn = drawnPlan.value.features.find((feature) => feature.id === id);
  return drawn?.kind === 'plant' ? drawn.at : null;
});

function same(a: PlanPoint | null | undefined, b: PlanPoint | null | undefined): boolean {
  return a?.[0] === b?.[0] && a?.[1] === b?.[1];
}

/** Whether it stands elsewhere on the drawing than in the yard. */
export const elsewhere = computed(() => potAt.value !== null && !same(potAt.value, pot.value?.at));

const question = computed<ArgsOf<'potThere'> | null>(() => {
  const [chosen, at] = [pot.value, potAt.value];
  if (stage.value !== 'place' || chosen === null || at === null || (!elsewhere.value && preview.value === null))
    return null;
  return {
    plan: { ...yardPlan.value, features: drawnPlan.value.features },
    plant: chosen.id,
    at,
    period: period.value,
  };
});

const answered = signal<ValueOf<'potThere'> | null>(null);

/** How the pot fares where it is held or stands in the option; rough while it moves. */
export const there = computed(() => (question.value === null ? null : answered.value));
export const isRough = computed(
  () =>
    preview.value !== null ||
    (question.value !== null && !same(there.value?.at, potAt.value)) ||
    (question.value === null && isStale(heat.value)),
);

/** Better or worse than where it stands in the yard, and its hours; empty while neither is known. */
export const triedWords = computed(() => {
  const now = places.value.shown?.value;
  const stay = now?.plant === pot.value?.id ? now?.spots.find((spot) => spot.stay) : undefined;
  if (!there.value || !stay) return '';
  const { load, winterSunHours } = there.value;
  const beside = timesIn(triedHeadline(load, stay.scorchDose, 'metric', sunUp.value));
  return `${beside} ${winterWarning(winterSunHours)}`.trim();
});

export function followPot(): () => void {
  return followNewest(question, (args) => askEngine('potThere', args), answered);
}
