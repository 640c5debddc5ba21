import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { worthOf } from '../../../engine/index.ts';
import type { FeatureOf } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { drawnPlan } from '../../state/reckoned.ts';
import { selection, stage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';

/** Every pot of the yard that can be chosen. */
export const pots: ReadonlySignal<readonly FeatureOf<'plant'>[]> = computed(() =>
  plan.value.features.filter(
    (feature): feature is FeatureOf<'plant'> => feature.kind === 'plant' && feature.container === true,
  ),
);

const asked = signal<string | null>(null);

/**
 * The pot whose places are looked for: the one chosen on the drawing, else the last chosen, else the first that is
 * worth most.
 */
export const pot: ReadonlySignal<FeatureOf<'plant'> | null> = computed(() => {
  const onMap = pots.value.find(({ id }) => selection.value.includes(id));
  const worthiest = pots.value.toSorted((a, b) => worthOf(b) - worthOf(a))[0];
  return onMap ?? pots.value.find(({ id }) => id === asked.value) ?? worthiest ?? null;
});

export function choosePot(id: string): void {
  asked.value = id;
  selection.value = [id];
}

const question = computed(() =>
  stage.value === 'place' && pot.value ? { plan: drawnPlan.value, plant: pot.value.id } : null,
);
export const places = liveAnswer('place', () => question.value);
export const ground = liveAnswer('ground', () => question.value);
