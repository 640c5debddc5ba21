import {
  changeFeature,
  duplicateFeature,
  featureOf,
  freshId,
  moveFeature,
  removeFeature,
  shownName,
} from '../../../engine/index.ts';
import type { Feature, FeatureChanges, Plan, PlanPoint } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { planProblems } from '../../state/plan-checks.ts';
import { say } from '../../state/speech.ts';
import { selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { YARD_EDGE } from './grips.ts';
import { toolById } from './tools.ts';
import type { ToolId } from './tools.ts';

/** Commits an edit unless it breaks the thing edited. @returns a sentence when the plan stayed as it was */
export function commitChecked(label: string, next: Plan, id: string, undo: 'now' | 'merge' = 'now'): string | null {
  const fault = newFault(next, id);
  if (fault !== null) return fault;
  return commitEdit(label, next, undo) ? null : 'This yard can be looked at here, not changed.';
}

/** The first error of one feature that an edit would bring into the plan. */
function newFault(next: Plan, id: string): string | null {
  const pointer = pointerOf(next, id);
  const concerns = (problem: { readonly pointer: string; readonly severity: string }): boolean =>
    problem.severity === 'error' && (problem.pointer === pointer || problem.pointer.startsWith(`${pointer}/`));
  const problems = planProblems(next);
  return problems === null
    ? 'The page is still opening: try that again in a moment.'
    : (problems.find(concerns)?.message ?? null);
}

/** Where a feature stands in the file, among the yard's own or among what an option adds. */
function pointerOf({ features, options }: Plan, id: string): string {
  if (id === YARD_EDGE) return '/site/boundary';
  const index = features.findIndex((feature) => feature.id === id);
  if (index >= 0) return `/features/${index}`;
  const at = options?.findIndex((option) => option.adds?.some((feature) => feature.id === id)) ?? -1;
  return `/options/${at}/adds/${options?.[at]?.adds?.findIndex((feature) => feature.id === id)}`;
}

/** Changes keys of one feature. @returns a sentence when the change would break it */
export function change(id: string, label: string, changes: FeatureChanges): string | null {
  return commitChecked(label, changeFeature(plan.value, id, changes), id);
}

/** Moves everything chosen by whole centimetres; a run of nudges is one step of undo. [m] */
export function nudge(by: PlanPoint): void {
  const ids = selection.value.filter((id) => id !== YARD_EDGE);
  if (ids.length === 0) return;
  const next = ids.reduce((moved, id) => moveFeature(moved, id, by), plan.value);
  commitEdit(`Nudge ${ids.map(calledById).join(', ')}`, next, 'merge');
}

export function deleteFeatures(ids: readonly string[]): void {
  const names = ids.map(calledById).join(', ');
  const next = ids.reduce(removeFeature, plan.value);
  if (next === plan.value || !commitEdit(`Delete ${names}`, next)) return;
  selection.value = [];
  say(`Deleted ${names}. Undo brings it back.`);
}

/** A copy of one feature half a metre to the right and down, chosen. */
export function duplicate(id: string): void {
  const original = featureOf(plan.value, id);
  if (!original) return;
  const copy = freshId(plan.value, toolIdOf(original));
  if (commitEdit(`Duplicate ${calledById(id)}`, duplicateFeature(plan.value, id, copy, [0.5, -0.5])))
    selection.value = [copy];
}

/** What a thing is called in sentences: its name, else its kind. */
export function calledById(id: string): string {
  if (id === YARD_EDGE) return "yard's edge";
  const feature = featureOf(plan.value, id);
  return feature ? calledOf(feature) : 'it';
}

export function calledOf(feature: Feature): string {
  return feature.name === undefined ? (toolById(toolIdOf(feature))?.noun ?? feature.kind) : shownName(feature.name);
}

function toolIdOf(feature: Feature): ToolId {
  return feature.kind === 'plant' && feature.container ? 'pot' : feature.kind;
}
