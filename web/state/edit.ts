import { batch, computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { Plan } from '../../engine/index.ts';
import { planProblems } from './plan-checks.ts';
import { notice, readOut, say } from './speech.ts';
import { withinUndo } from './undo-cap.ts';
import { history, openYard, plan, preview } from './yard.ts';

/**
 * How an edit enters the history: `now` as a step of its own; `merge` joins the newest step if that has the same label
 * (nudges, typing).
 */
export type UndoRule = 'now' | 'merge';

const afterEdit = new Set<() => void>();

/** Runs after every change of the plan or of the place in the history; saving hangs here. */
export function onEdit(listener: () => void): () => void {
  afterEdit.add(listener);
  return () => afterEdit.delete(listener);
}

/**
 * Ends an action: makes `next` the plan, names the step, drops any preview, and saves.
 * An edit that changes nothing (the same object) leaves no step and keeps what can be redone; one after which the yard
 * could not be opened again is refused, and why is said.
 * @param label What the person did, as undo will name it: "Move lemon pot".
 * @returns false when nothing was changed: the yard is read-only, or would be no plan.
 */
export function commitEdit(label: string, next: Plan, undo: UndoRule = 'now'): boolean {
  if (isRefused(next)) return false;
  batch(() => {
    preview.value = null;
    if (next === plan.value) return;
    const { steps, cursor } = history.value;
    const kept = steps.slice(0, cursor + 1);
    const newest = kept[cursor];
    const joins = undo === 'merge' && newest.label === label && cursor > 0;
    const grown = withinUndo([...(joins ? kept.slice(0, cursor) : kept), { label, plan: next }]);
    history.value = { steps: grown, cursor: grown.length - 1 };
  });
  announceEdit();
  return true;
}

/** Whether the plan may not become `next`: the preview is dropped then, and a fault is said. */
function isRefused(next: Plan): boolean {
  const fault = newFault(next);
  if (fault === null && openYard.value.readOnly === null) return false;
  preview.value = null;
  if (fault !== null) say(fault, 'problem');
  return true;
}

/** What keeps a plan from being one, where the plan before it was one; `null` while the checks are being loaded. */
function newFault(next: Plan): string | null {
  const faultIn = (of: Plan): string | undefined =>
    planProblems(of)?.find(({ severity }) => severity === 'error')?.message;
  const fault = next === plan.value ? undefined : faultIn(next);
  return fault === undefined || faultIn(plan.value) !== undefined ? null : fault;
}

/**
 * Changes what stands outside the history, such as the picture to trace over: the same in every step, so that no undo
 * takes it away and no redo brings an older one again. Refused like an edit where the yard could not be opened again.
 * @returns false when nothing was changed: the yard is read-only, or would be no plan.
 */
export function commitBeside(change: (plan: Plan) => Plan): boolean {
  if (isRefused(change(plan.value))) return false;
  batch(() => {
    preview.value = null;
    const { steps, cursor } = history.value;
    history.value = { steps: steps.map(({ label, plan: then }) => ({ label, plan: change(then) })), cursor };
  });
  announceEdit();
  return true;
}

/** What "Undo" would take back, or `null`. */
export const undoLabel: ReadonlySignal<string | null> = computed(() =>
  history.value.cursor > 0 ? history.value.steps[history.value.cursor].label : null,
);

/** What "Redo" would bring again, or `null`. */
export const redoLabel: ReadonlySignal<string | null> = computed(
  () => history.value.steps[history.value.cursor + 1]?.label ?? null,
);

export function undo(): void {
  step(-1, undoLabel.value && `Taken back: ${undoLabel.value}.`);
}

export function redo(): void {
  step(1, redoLabel.value && `Done again: ${redoLabel.value}.`);
}

function step(by: 1 | -1, words: string | null): void {
  if (preview.value !== null) {
    preview.value = null;
    readOut('Called off. Nothing has moved.');
    return;
  }
  if (words === null || openYard.value.readOnly !== null) return;
  // What was said of the step before holds no longer.
  if (notice.value?.kind === 'done') notice.value = null;
  goTo(history.value.cursor + by);
  readOut(words);
}

/** Shows the state after the given step; the steps after it can still be redone. */
function goTo(cursor: number): void {
  if (openYard.value.readOnly !== null || cursor < 0 || cursor >= history.value.steps.length) return;
  batch(() => {
    preview.value = null;
    history.value = { ...history.value, cursor };
  });
  announceEdit();
}

function announceEdit(): void {
  for (const listener of afterEdit) listener();
}
