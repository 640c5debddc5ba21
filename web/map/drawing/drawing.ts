import { computed, effect, untracked } from '@preact/signals';
import {
  addFeature,
  addToOption,
  freshId,
  moveInOption,
  pointToMillimetre,
  toMillimetre,
} from '../../../engine/index.ts';
import type { Feature, FeatureChanges, Plan, PlanPoint } from '../../../engine/index.ts';
import { readOut, say, toolHint } from '../../state/speech.ts';
import { aside, selection, shownOptions, slipHeight, stage, tool } from '../../state/view.ts';
import { plan, preview, units } from '../../state/yard.ts';
import { askedPoint } from '../laid-on/overlays.ts';
import { beginDraft, nextStep, place, takeBack } from './draft.ts';
import { drawnPlan } from './drawn-plan.ts';
import { commitChecked, calledById, nudge } from './feature-edits.ts';
import { YARD_EDGE, takeGrip } from './grips.ts';
import type { Grip } from './grips.ts';
import { aim, crossHair, draft, held, reach, typingWanted } from './in-hand.ts';
import { moveMeaning } from './move-meaning.ts';
import { centreLine } from './outline.ts';
import { snap } from './snap.ts';
import type { Snapped } from './snap.ts';
import { shapeOf, toolById } from './tools.ts';
import type { ToolId } from './tools.ts';
import { typedPoints } from './typed-points.ts';

effect(() => {
  const taken = toolById(tool.value);
  const under = draft.peek();
  if (under?.tool.id === taken?.id) return;
  draft.value = taken ? beginDraft(taken) : null;
  held.value = null;
});

/** Whoever asked for a point has gone with their stage or their card: nobody waits for it any more. */
effect(() => {
  void [stage.value, aside.value];
  untracked(() => {
    askedPoint.value = null;
    held.value = null;
  });
});

const hint = computed(() => {
  const hand = crossHair.value ? 'cross-hair' : 'pointer';
  if (askedPoint.value) return askedPoint.value.hint;
  if (draft.value) return nextStep(draft.value, hand);
  if (!held.value) return null;
  const { part } = held.value.grip;
  const where =
    part === 'height' || part === 'rise'
      ? 'a place as much higher or lower on the paper'
      : part === 'drop'
        ? 'a place as far out as it is to hang down'
        : 'its new place';
  return (
    `${hand === 'cross-hair' ? `Bring ${where} under the cross and tap Here.` : `Click ${where}.`} Escape ` +
    `leaves it as it was.`
  );
});

effect(() => {
  const words = hint.value;
  toolHint.value = words;
  if (words !== null) untracked(() => readOut(words));
});

/** Lines that a point can be drawn to, without those of the thing being moved. */
function snapLines(except: string | null): readonly (readonly PlanPoint[])[] {
  const { features, site } = drawnPlan.peek();
  const edge = except === YARD_EDGE ? [] : [[...site.boundary, site.boundary[0]]];
  return [...edge, ...features.filter(({ id, kind }) => id !== except && kind !== 'reading').map(centreLine)];
}

/** However far out the paper is, nothing farther than this draws a point to itself. [m] */
const FARTHEST_SNAP = 0.3;

/** Draws a raw point to what is near it, as the thing under way needs it. */
export function snapped(raw: PlanPoint): Snapped {
  if (askedPoint.value?.exact) return { at: pointToMillimetre(raw), kind: 'grid' };
  return snap(raw, {
    lines: snapLines(held.value?.id ?? null),
    drawn: draft.value?.points ?? [],
    reach: Math.min(FARTHEST_SNAP, reach.value),
  });
}

/** Where a grip dragged by the pointer lands: what it was taken by moves, not the pointer's slip beside it. */
export function snappedGrip(id: string, grip: Grip, raw: PlanPoint): PlanPoint {
  if (grip.part === 'turn' || grip.part === 'height' || grip.part === 'rise' || grip.part === 'drop') return raw;
  return snap(raw, { lines: snapLines(id), drawn: [], reach: Math.min(FARTHEST_SNAP, reach.value) }).at;
}

/**
 * Takes a tool up, or puts it down when it is in the hand already.
 * @param byKey the next point will be typed, not pointed at
 */
export function takeUp(id: ToolId, byKey: boolean): void {
  typingWanted.value = byKey;
  selection.value = [];
  slipHeight.value = 'line';
  tool.value = tool.value === id ? null : id;
}

/** A point has been chosen, by whatever hand: it goes to whoever waits for one. */
export function choosePoint(at: PlanPoint): void {
  const asked = askedPoint.value;
  if (asked) {
    askedPoint.value = null;
    asked.take(at);
  } else if (held.value) {
    putDown(at);
  } else if (draft.value) {
    draft.value = place(draft.value, at);
  }
}

/** Reads a typed length, point or chain into the thing under way. @returns a sentence when it cannot be read */
export function typePoints(text: string): string | null {
  const under = draft.value;
  const read = typedPoints(text, {
    units: units.value,
    drawn: under?.points ?? [],
    aim: crossHair.value || !under ? undefined : aim.value?.at,
    box: under?.box ?? false,
  });
  if (!read.ok) return read.message;
  for (const at of read.points) choosePoint(at);
  return null;
}

/** Takes a grip of a chosen thing into the hand; the next point is its new place. */
export function pickUp(id: string, grip: Grip): void {
  tool.value = null;
  held.value = { id, grip };
}

function putDown(at: PlanPoint): void {
  const inHand = held.value;
  held.value = null;
  if (inHand) finishGrip(inHand.id, inHand.grip, at);
}

/** A grip taken to its place; a plant that a shown option moves is moved in that option, not in the yard. */
function taken(id: string, grip: Grip, to: PlanPoint): Plan {
  const meant = grip.part === 'whole' ? (moveMeaning.value?.plan(id, to) ?? null) : null;
  if (meant) return meant;
  const option = plan.value.options?.findLast(
    (each) => shownOptions.value.includes(each.id) && each.moves?.[id] !== undefined,
  );
  return option && grip.part === 'whole'
    ? moveInOption(plan.value, option.id, id, to)
    : takeGrip(plan.value, id, grip, to);
}

/** Shows a grip on its way without touching the plan. */
export function previewGrip(id: string, grip: Grip, to: PlanPoint): void {
  preview.value = taken(id, grip, to);
}

const VERBS: Readonly<Partial<Record<Grip['part'], string>>> = {
  whole: 'Move',
  turn: 'Turn',
  height: 'Raise or lower',
  rise: 'Tilt',
  drop: 'Change a drop of',
};

/** Ends a drag or a pair of taps: one step of undo, or a sentence and nothing. */
export function finishGrip(id: string, grip: Grip, to: PlanPoint): void {
  if (grip.part === 'whole' && moveMeaning.value?.plan(id, to)) return moveMeaning.value.commit(id, to, 'now');
  const refused = commitChecked(`${VERBS[grip.part] ?? 'Reshape'} ${calledById(id)}`, taken(id, grip, to), id);
  if (refused !== null) {
    preview.value = null;
    say(refused, 'problem');
  }
}

/** Moves what is chosen a little, by keys. [m] */
export function nudgeChosen(by: PlanPoint): void {
  const [id, ...others] = selection.value;
  const feature = drawnPlan.value.features.find((each) => each.id === id);
  const meaning = moveMeaning.value;
  if (others.length > 0 || !meaning || feature?.kind !== 'plant') return nudge(by);
  const to: PlanPoint = [toMillimetre(feature.at[0] + by[0]), toMillimetre(feature.at[1] + by[1])];
  if (meaning.plan(id, to)) meaning.commit(id, to, 'merge');
  else nudge(by);
}

/**
 * Puts the drawn thing into the plan with its numbers and chooses it; while one option is being tried it goes there.
 * @returns a sentence when it cannot be
 */
export function addDrawn(numbers: FeatureChanges, now: string): string | null {
  const under = draft.value;
  if (!under?.asking) return 'The shape is not finished yet.';
  const id = freshId(plan.value, under.tool.id);
  const feature = { id, ...shapeOf(under.tool, under.points, now), ...numbers } as Feature;
  const [option] = stage.value === 'try' && shownOptions.value.length === 1 ? shownOptions.value : [];
  const next = option === undefined ? addFeature(plan.value, feature) : addToOption(plan.value, option, feature);
  const refused = commitChecked(`Draw ${feature.name ?? under.tool.noun}`, next, id);
  if (refused !== null) return refused;
  draft.value = beginDraft(under.tool, under.box);
  selection.value = [id];
  return null;
}

/** Steps back once: the last point, then the thing in the hand, then the tool, then the choice. */
export function escape(): void {
  if (preview.value) preview.value = null;
  else if (askedPoint.value) askedPoint.value = null;
  else if (held.value) held.value = null;
  else if (draft.value && draft.value.points.length > 0) draft.value = beginDraft(draft.value.tool, draft.value.box);
  else if (tool.value !== null) tool.value = null;
  else selection.value = [];
}

export function stepBack(): void {
  if (draft.value) draft.value = takeBack(draft.value);
}
