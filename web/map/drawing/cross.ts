import { effect, untracked } from '@preact/signals';
import type { Map as LeafletMap } from 'leaflet';
import type { PlanPoint } from '../../../engine/index.ts';
import { toLatLng, toPlanPoint } from '../leaflet/lat-lng.ts';
import { snapped } from './drawing.ts';
import { aim, crossHair, held, wantsPoint } from './in-hand.ts';

/** Zoom at which the cross can be placed without a magnifying glass: 32 px a metre. */
const CLOSE_ENOUGH = 5;

/** The fixed cross in the middle of the map, under which the paper is brought. */
export interface Cross {
  /** Brings the paper under the cross so that it stands exactly at a point. [m] */
  moveTo(at: PlanPoint): void;
  /** Moves it by millimetres and more, from the yard's origin where it stood nowhere. [m] */
  nudge(by: PlanPoint): void;
  /** Keeps it at its point while a point is wanted, however the paper moves. The function it returns ends that. */
  follow(): () => void;
}

export function crossOver(map: LeafletMap): Cross {
  const isUsed = (): boolean => crossHair.value && wantsPoint.value;

  function centreOn(at: PlanPoint): void {
    map.setView(toLatLng(at), undefined, { animate: false });
  }

  function moveTo(at: PlanPoint): void {
    aim.value = { at, kind: 'grid' };
    centreOn(at);
  }

  function nudge(by: PlanPoint): void {
    const from = aim.peek()?.at ?? [0, 0];
    moveTo([Math.round((from[0] + by[0]) * 1000) / 1000, Math.round((from[1] + by[1]) * 1000) / 1000]);
  }

  function comeClose(): void {
    if (map.getZoom() < CLOSE_ENOUGH) map.setZoom(CLOSE_ENOUGH, { animate: false });
  }

  /** It begins at what is held, else in the middle of what is seen, near enough to place it. */
  function start(): void {
    comeClose();
    moveTo(held.peek()?.grip.at ?? snapped(toPlanPoint(map.getCenter())).at);
  }

  function follow(): () => void {
    const onDrag = (): void => {
      if (isUsed()) aim.value = snapped(toPlanPoint(map.getCenter()));
    };
    const onDragEnd = (): void => {
      if (isUsed() && aim.value) centreOn(aim.value.at);
    };
    map.on('drag', onDrag).on('dragend', onDragEnd);
    // Made after the paper's own, and so told after it: the paper has been fitted when the cross is put back.
    const resized = new ResizeObserver(() => {
      if (!isUsed() || !aim.value) return;
      comeClose();
      centreOn(aim.value.at);
    });
    resized.observe(map.getContainer());
    // It waits in the middle of the map from the moment a point is wanted.
    const stop = effect(() => {
      if (isUsed()) untracked(start);
      else if (!wantsPoint.value) aim.value = null;
    });
    return () => {
      stop();
      resized.disconnect();
      map.off('drag', onDrag).off('dragend', onDragEnd);
    };
  }

  return { moveTo, nudge, follow };
}
