import { computed } from '@preact/signals';
import { withOptions } from '../../../engine/index.ts';
import { shownOptions } from '../../state/view.ts';
import { plan, shownPlan } from '../../state/yard.ts';

/** The yard as the map shows it: with a drag under way, and with the options being looked at as if they were built. */
export const drawnPlan = computed(() => {
  const base = shownPlan.value;
  const kept = plan.value.options ?? [];
  // An option that only the drag under way brings is looked at, too.
  const begun =
    base === plan.value
      ? []
      : (base.options ?? []).filter(({ id }) => !kept.some((each) => each.id === id)).map(({ id }) => id);
  const shown = [...shownOptions.value, ...begun];
  if (shown.length === 0) return base;
  const tried = withOptions(base, shown);
  return tried.ok ? tried.plan : base;
});
