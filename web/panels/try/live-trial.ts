import { computed, signal } from '@preact/signals';
import { type Plan, isCloth } from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import type { ArgsOf, ValueOf } from '../../state/ask.ts';
import { isStale } from '../../state/live.ts';
import { followNewest } from '../../state/newest.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { heat, period, usualCellHere } from '../../state/results.ts';
import { mapHeight, selection, shownOptions, stage } from '../../state/view.ts';
import { preview } from '../../state/yard.ts';

/** What is asked while cloth of the open option is chosen; `null`: nothing of it is in hand. */
const question = computed<ArgsOf<'trial'> | null>(() => {
  const open = shownOptions.value[0];
  const plan = reckonedPlan.value;
  const adds = plan.options?.find(({ id }) => id === open)?.adds ?? [];
  if (stage.value !== 'try' || !adds.some((thing) => isCloth(thing) && selection.value.includes(thing.id))) return null;
  return {
    plan: withoutCloth(plan, open),
    option: open,
    cloth: adds.filter(isCloth),
    period: period.value,
    cell: usualCellHere.value,
    height: mapHeight.value,
  };
});

const answered = signal<ValueOf<'trial'> | null>(null);

/** What the cloth does where it is now, while the full answer is not there yet. */
export const rough = computed(() =>
  question.value !== null && (preview.value !== null || isStale(heat.value)) ? answered.value : null,
);

export function followCloth(): () => void {
  return followNewest(question, (args) => askEngine('trial', args), answered);
}

function withoutCloth(plan: Plan, option: string): Plan {
  return {
    ...plan,
    options: plan.options
      ?.filter(({ id }) => id === option)
      .map((each) => ({ ...each, adds: each.adds?.filter((thing) => !isCloth(thing)) })),
  };
}
