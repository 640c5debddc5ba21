import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { nameOf, sheetOf, withOptions, withoutUndefined, type Cloth, isCloth } from '../../../engine/index.ts';
import type { FrameChoice, Plan, SheetResult } from '../../../engine/index.ts';
import { calledOf, change } from '../../map/drawing/feature-edits.ts';
import { say } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { openYard, plan } from '../../state/yard.ts';

/** A canopy or screen that a sheet can be made for. */
export interface Buildable {
  readonly thing: Cloth;
  /** The option that adds it; `null`: it stands in the yard. */
  readonly optionId: string | null;
  readonly title: string;
}

export const buildables: ReadonlySignal<readonly Buildable[]> = computed(() => {
  const { features, options = [] } = plan.value;
  return [
    ...features.filter(isCloth).map((thing) => ({ thing, optionId: null, title: nameOf(plan.value, thing.id) })),
    ...options.flatMap(({ id, adds = [] }) =>
      adds.filter(isCloth).map((thing) => ({
        thing,
        optionId: id,
        title: `${nameOf(plan.value, thing.id)}, option ${id}`,
      })),
    ),
  ];
});

const picked = signal<string | null>(null);

/** What was picked here, else what is selected on the drawing, else the first there is. */
export const chosen: ReadonlySignal<Buildable | null> = computed(() => {
  const all = buildables.value;
  const of = (id: string | null | undefined): Buildable | undefined => all.find(({ thing }) => thing.id === id);
  return of(picked.value) ?? of(selection.value[0]) ?? all[0] ?? null;
});

export function pick(id: string): void {
  picked.value = id;
  selection.value = [id];
}

/** The yard in which the chosen thing stands. */
export const builtPlan: ReadonlySignal<Plan> = computed(() => {
  const optionId = chosen.value?.optionId ?? null;
  if (optionId === null) return plan.value;
  const built = withOptions(plan.value, [optionId]);
  return built.ok ? built.plan : plan.value;
});

export const sheet: ReadonlySignal<SheetResult | null> = computed(() =>
  chosen.value ? sheetOf(builtPlan.value, chosen.value.thing.id) : null,
);

/** What anchors wait for; empty when they are worked out. */
export const unknowns: ReadonlySignal<readonly ('ground' | 'gust')[]> = computed(() => {
  const frame = chosen.value?.thing.frame;
  const known = sheet.value?.ok === true && sheet.value.sheet.anchors.ground !== null;
  return [
    ...(known ? [] : (['ground'] as const)),
    ...(frame?.gust === undefined && plan.value.climate.gust === undefined ? (['gust'] as const) : []),
  ];
});

/** The same in the words of the margin. */
export function unknownWords(): string {
  return `Anchors not worked out: ${unknowns.value.map((what) => `${what}?`).join(' ')}`;
}

/** Prefix of what is kept on this machine about the chosen thing. */
export const keptPrefix: ReadonlySignal<string> = computed(
  () => `${openYard.value.id}/${chosen.value?.thing.id ?? ''}/`,
);

/** Changes how the chosen thing is to be built. @returns a sentence when that cannot be */
export function changeFrame(changes: Partial<FrameChoice>): string | null {
  const thing = chosen.value?.thing;
  if (!thing) return null;
  const frame = withoutUndefined({ ...thing.frame, ...changes });
  return change(thing.id, `Change how ${calledOf(thing)} is built`, {
    frame: Object.keys(frame).length === 0 ? undefined : frame,
  });
}

/** The same for boxes that show no sentence of their own. */
export function chooseFrame(changes: Partial<FrameChoice>): void {
  const fault = changeFrame(changes);
  if (fault !== null) say(fault, 'problem');
}
