import { computed, effect, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { CompareResult, Plan, YardOption } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { drawnPlan, reckonedPlan } from '../../state/reckoned.ts';
import { shownOptions, stage } from '../../state/view.ts';
import { plan, preview, units } from '../../state/yard.ts';

/** The plan with what comparing needs besides: the shop's prices. Still while something is dragged. */
const pricedPlan: ReadonlySignal<Plan> = computed(() => {
  const { stock } = plan.value;
  return preview.value === null ? { ...reckonedPlan.value, stock } : settled;
});
let settled: Plan = plan.peek();
pricedPlan.subscribe((next) => (settled = next));

/** Today held against every option; asked only while the stage is open and there is something to compare. */
export const comparison = liveAnswer('compare', () =>
  stage.value === 'try' && (plan.value.options?.length ?? 0) > 0
    ? { plan: pricedPlan.value, units: units.value }
    : null,
);

/** What cheaper cures would do in the yard as it is; asked only while the stage is open. */
export const cheaper = liveAnswer('cheaper', () =>
  stage.value === 'try' ? { plan: drawnPlan.value, units: units.value } : null,
);

/** The newest comparison, even if an older one. */
export const compared: ReadonlySignal<CompareResult | null> = computed(() => comparison.value.shown?.value ?? null);

/** The option on the map and in the editor; `null`: the yard as it is. */
export const openOption: ReadonlySignal<YardOption | null> = computed(
  () => plan.value.options?.find(({ id }) => id === shownOptions.value[0]) ?? null,
);

/** Whether the hidden heights are drawn, and the one eye they are for; `null`: all. */
export const hiddenShown = signal(false);
export const hiddenFrom = signal<string | null>(null);

export const hiddenAnswer = liveAnswer('hidden', () =>
  stage.value === 'try' && hiddenShown.value
    ? { plan: reckonedPlan.value, eye: hiddenFrom.value, options: shownOptions.value }
    : null,
);

const kept = signal<string | null>(null);

/**
 * What was tried is on the drawing again when a stage that tries is opened, until it is decided; the function it
 * returns keeps it for the next time and clears the drawing for other stages.
 */
export function keepOpenOption(): () => void {
  const id = kept.peek();
  if (shownOptions.peek().length === 0 && plan.peek().options?.some((each) => each.id === id)) openTheOption(id);
  const stop = effect(() => {
    if (stage.value === 'place' || stage.value === 'try') kept.value = shownOptions.value[0] ?? null;
  });
  return () => {
    stop();
    if (stage.peek() !== 'place' && stage.peek() !== 'try') shownOptions.value = [];
  };
}

export function openTheOption(id: string | null): void {
  shownOptions.value = id === null ? [] : [id];
}

/** "A: A roof over the lemon" */
export function optionWords({ id, name }: YardOption): string {
  return name === undefined ? `Option ${id}` : `${id}: ${name}`;
}
