import type { Map as LeafletMap } from 'leaflet';
import { distance } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { undoLabel } from '../../state/edit.ts';
import { aside, pin, selection, stage, tool } from '../../state/view.ts';
import { plan, preview } from '../../state/yard.ts';
import { pointerPoint } from '../leaflet/leaflet-map.ts';
import { chosenGrips } from './chosen-grips.ts';
import { choosePoint, finishGrip, pickUp, previewGrip, snapped, snappedGrip } from './drawing.ts';
import { drawnPlan } from './drawn-plan.ts';
import type { Grip } from './grips.ts';
import { featureAt } from './hit.ts';
import { isLocked, offerUndo, sayLocked } from './idle-lock.ts';
import { aim, crossHair, draft, reach, wantsPoint } from './in-hand.ts';
import { centreLine } from './outline.ts';

/** A press that slips less than this is a tap. [px] */
const TAP_SLIP_PX = 6;

interface Press {
  readonly pointerId: number;
  readonly at: PlanPoint;
  readonly clientX: number;
  readonly clientY: number;
  /** What a drag from here would move; `null` where it moves the paper. */
  readonly drag: { readonly id: string; readonly grip: Grip } | null;
  /** A drag from here draws a box from corner to corner. */
  readonly boxes: boolean;
  /** It would move something, were the drawing not locked. */
  readonly locked: boolean;
  slipped: boolean;
  /** A preview of the drag has been shown; when it is gone before the pointer is up, someone called the drag off. */
  shown: boolean;
}

/** A finger, and a grip, is at something from farther away than the tip of a pointer: within 44 px across. */
const BROAD = 1.4;
const broadly = (event: PointerEvent): number => (event.pointerType === 'touch' ? BROAD : 1) * reach.value;

/** Grips of what is chosen, nearest first wins. */
function gripNear(at: PlanPoint, within: number): { readonly id: string; readonly grip: Grip } | null {
  const chosen = chosenGrips();
  if (chosen === null) return null;
  const near = chosen.grips
    .filter((grip) => distance(grip.at, at) <= within)
    .sort((a, b) => distance(a.at, at) - distance(b.at, at));
  return near.length > 0 ? { id: chosen.id, grip: near[0] } : null;
}

/** Whether a box tool waits for its first corner. */
function beginsBox(): boolean {
  const under = draft.value;
  return under !== null && under.box && !under.asking && under.points.length === 0;
}

/** The whole of a chosen feature, held by its corner nearest to the pointer. */
function bodyUnder(at: PlanPoint, within: number): { readonly id: string; readonly grip: Grip } | null {
  const hit = featureAt(drawnPlan.value.features, at, within);
  if (!hit || !selection.value.includes(hit.id)) return null;
  const anchors = hit.kind === 'canopy' ? [hit.center] : centreLine(hit);
  const anchor = anchors.reduce((best, point) => (distance(point, at) < distance(best, at) ? point : best));
  return { id: hit.id, grip: { part: 'whole', at: anchor } };
}

/** What a press holds: a grip or the body of what is chosen, unless a point is wanted or the drawing is locked. */
function pressOf(map: LeafletMap, event: PointerEvent): Press {
  const at = pointerPoint(map, event);
  const held =
    wantsPoint.value || tool.value !== null
      ? null
      : (gripNear(at, BROAD * reach.value) ?? bodyUnder(at, broadly(event)));
  const locked = held !== null && event.pointerType === 'touch' && isLocked();
  const { pointerId, clientX, clientY } = event;
  const boxes = event.pointerType !== 'touch' && beginsBox();
  const drag = locked ? null : held;
  return { pointerId, at, clientX, clientY, drag, boxes, locked, slipped: false, shown: false };
}

/** Where a drag brings its grip: as far as the pointer has come since the press. */
function targetOf(map: LeafletMap, event: PointerEvent, from: Press, id: string, grip: Grip): PlanPoint {
  const to = pointerPoint(map, event);
  return snappedGrip(id, grip, [grip.at[0] + to[0] - from.at[0], grip.at[1] + to[1] - from.at[1]]);
}

/** A tap gives a point to whoever wants one, else picks a grip up, else chooses what lies there, or pins the spot. */
function tap(at: PlanPoint, event: PointerEvent, centreOn: (at: PlanPoint) => void): void {
  if (wantsPoint.value) {
    const { at: to } = snapped(at);
    if (crossHair.value) centreOn(to);
    else choosePoint(to);
    return;
  }
  if (tool.value !== null) return;
  const grip = gripNear(at, BROAD * reach.value);
  if (grip) return pickUp(grip.id, grip.grip);
  const hit = featureAt(drawnPlan.value.features, at, broadly(event));
  if (hit) {
    const others = selection.value.filter((id) => id !== hit.id);
    const wasChosen = others.length < selection.value.length;
    selection.value = event.shiftKey ? (wasChosen ? others : [...others, hit.id]) : [hit.id];
    return;
  }
  selection.value = [];
  if (stage.value !== 'draw' || aside.value === 'survey') pin.value = at;
}

/**
 * Pointer events of the map: a tap chooses, places or picks up; a drag of what is chosen edits it as one step;
 * any other drag is the paper's. The function it returns ends the listening.
 * @param centreOn brings a point under the cross
 */
export function listenToPointer(map: LeafletMap, centreOn: (at: PlanPoint) => void): () => void {
  const container = map.getContainer();
  const down = new Set<number>();
  let press: Press | null = null;

  function dropDrag(): void {
    if (press?.drag) preview.value = null;
    if (press?.drag || press?.boxes) map.dragging.enable();
    press = null;
  }

  function onDown(event: PointerEvent): void {
    down.add(event.pointerId);
    if (down.size > 1) return dropDrag();
    if (event.button !== 0) return;
    press = pressOf(map, event);
    if (!press.drag && !press.boxes) return;
    // Before Leaflet's own listener sees the press, so that the paper stays.
    map.dragging.disable();
    container.setPointerCapture(event.pointerId);
  }

  /** Escape or undo during a drag takes its preview away: then it is over, whatever the pointer does. */
  const calledOff = (): boolean => press !== null && press.shown && preview.value === null;

  function onMove(event: PointerEvent): void {
    if (calledOff()) return dropDrag();
    if (press && !press.slipped && slipOf(event, press) > TAP_SLIP_PX) {
      press.slipped = true;
      if (press.locked) sayLocked();
      if (press.boxes) choosePoint(snapped(press.at).at);
    }
    if (press?.drag && press.slipped && press.pointerId === event.pointerId) {
      const { id, grip } = press.drag;
      previewGrip(id, grip, targetOf(map, event, press, id, grip));
      press.shown = true;
    } else if (!crossHair.value && wantsPoint.value && event.pointerType !== 'touch') {
      aim.value = snapped(pointerPoint(map, event));
    }
  }

  function onUp(event: PointerEvent): void {
    down.delete(event.pointerId);
    if (calledOff()) return dropDrag();
    const from = press;
    if (!from || from.pointerId !== event.pointerId) return;
    press = null;
    if (from.drag || from.boxes) map.dragging.enable();
    if (from.boxes && from.slipped) choosePoint(snapped(pointerPoint(map, event)).at);
    else if (!from.slipped) tap(pointerPoint(map, event), event, centreOn);
    else if (from.drag) endDrag(map, event, from, from.drag);
  }

  function onCancel(event: PointerEvent): void {
    down.delete(event.pointerId);
    dropDrag();
  }

  return listen(container, { pointerdown: onDown, pointermove: onMove, pointerup: onUp, pointercancel: onCancel });
}

const slipOf = (event: PointerEvent, from: Press): number =>
  Math.hypot(event.clientX - from.clientX, event.clientY - from.clientY);

function endDrag(map: LeafletMap, event: PointerEvent, from: Press, { id, grip }: NonNullable<Press['drag']>): void {
  const before = plan.value;
  finishGrip(id, grip, targetOf(map, event, from, id, grip));
  if (event.pointerType === 'touch' && plan.value !== before && undoLabel.value !== null) offerUndo(undoLabel.value);
}

/** Listens before anything inside does. The function it returns ends that. */
function listen(to: HTMLElement, listeners: Readonly<Record<string, (event: PointerEvent) => void>>): () => void {
  for (const [name, listener] of Object.entries(listeners))
    to.addEventListener(name as 'pointerdown', listener, { capture: true });
  return () => {
    for (const [name, listener] of Object.entries(listeners))
      to.removeEventListener(name as 'pointerdown', listener, { capture: true });
  };
}
