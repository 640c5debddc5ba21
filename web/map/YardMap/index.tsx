import '../leaflet/leaflet.css';
import './style.css';
import './ink.css';
import './draft-bar.css';
import './cloth-grips.css';
import { untracked, useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { upBearingOf } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { readOut } from '../../state/speech.ts';
import { selection, tool } from '../../state/view.ts';
import { openYard, shownPlan, units } from '../../state/yard.ts';
import { DraftBar, placeWords } from '../controls/DraftBar.tsx';
import { layDrawing } from '../ink/drawing-layers.ts';
import {
  aim,
  choosePoint,
  crossHair,
  draft,
  drawnPlan,
  escape,
  held,
  nudgeChosen,
  reach,
  snapped,
  takeUp,
  typingWanted,
  wantsPoint,
} from '../drawing/drawing.ts';
import { deleteFeatures, duplicate } from '../drawing/feature-edits.ts';
import { finish } from '../drawing/draft.ts';
import { fitNames } from '../ink/ink.ts';
import { keyMeaning } from '../drawing/keys.ts';
import { toLatLng, toPlanPoint } from '../leaflet/lat-lng.ts';
import { createLeafletYard, fitPoints, pixelsPerMetre } from '../leaflet/leaflet-map.ts';
import { NorthArrow } from '../controls/NorthArrow.tsx';
import { centreLine } from '../drawing/outline.ts';
import { layOverlays } from '../ink/overlay-layers.ts';
import { jump } from '../laid-on/overlays.ts';
import { Patterns } from '../ink/Patterns.tsx';
import { createPlanLayer } from '../ink/plan-layer.ts';
import { listenToPointer } from '../drawing/pointer.ts';
import { ScaleBar } from '../controls/ScaleBar.tsx';
import { split } from '../laid-on/split.ts';
import { SplitBar } from '../controls/SplitBar/index.tsx';
import { toolById } from '../drawing/tools.ts';
import type { Map as LeafletMap } from 'leaflet';
import type { LeafletYard } from '../leaflet/leaflet-map.ts';

/** Zoom at which the cross can be placed without a magnifying glass: 32 px a metre. */
const CLOSE_ENOUGH = 5;

/** How near the pointer must come to count as "at" something. [px] */
const REACH_PX = { fine: 9, coarse: 16 };

/** The way out of the drawing leads to the slip beside it. */
const WAY_OUT = '#slip';

/** The one map of the yard. It shows the plan and what others lay over it, and is where things are drawn. */
export function YardMap() {
  const container = useRef<HTMLDivElement>(null);
  const yard = useRef<LeafletYard | null>(null);
  const pixels = useSignal(32);
  const north = useComputed(() => upBearingOf(shownPlan.value));
  const northGuessed = useComputed(() => shownPlan.value.site.how?.upBearing?.by === 'guess');
  const coarse = (): boolean => matchMedia('(pointer: coarse), (max-width: 767px)').matches;

  useEffect(() => {
    const made = createLeafletYard(container.current!);
    const { map, renderers } = made;
    yard.current = made;
    crossHair.value = coarse();
    const onZoom = (): void => {
      pixels.value = pixelsPerMetre(map);
      reach.value = REACH_PX[coarse() ? 'coarse' : 'fine'] / pixels.value;
      // Dots keep their weight on the paper between a fine and a broad nib.
      container.current!.style.setProperty(
        '--dot',
        `${Math.min(3.2, Math.max(1.3, 0.036 * pixels.value)).toFixed(1)}px`,
      );
      fitNames(container.current!, pixels.value);
    };
    let touched = false;
    const onDrag = (): void => {
      touched = true;
      if (crossHair.value && wantsPoint.value) aim.value = snapped(toPlanPoint(map.getCenter()));
    };
    const onDragEnd = (): void => {
      if (crossHair.value && wantsPoint.value && aim.value) centreOn(aim.value.at);
    };
    map.on('zoomend', onZoom).on('drag', onDrag).on('dragend', onDragEnd);
    const layer = createPlanLayer(map, renderers);
    layer.show(drawnPlan.value);
    fitPoints(map, shownPlan.value.site.boundary);
    onZoom();
    const stops = [
      drawnPlan.subscribe((next) => {
        layer.show(next);
        fitNames(container.current!, pixels.value);
      }),
      layOverlays(
        map,
        renderers,
        () => drawnPlan.value,
        () => pixels.value,
      ),
      layDrawing(map, renderers),
      listenToPointer(map, (at) => moveCross(at)),
    ];
    // Until someone moves the paper the whole yard stays in view, however the page around it settles.
    container.current!.addEventListener('wheel', () => (touched = true), { passive: true });
    const resized = new ResizeObserver(() => {
      map.invalidateSize({ pan: false });
      const begun = held.value !== null || (draft.value?.points.length ?? 0) > 0;
      if (!touched && !begun) {
        fitPoints(map, drawnPlan.value.site.boundary);
        startCross(map);
      } else if (wantsPoint.value && crossHair.value && aim.value) centreOn(aim.value.at);
    });
    resized.observe(container.current!);
    return () => {
      resized.disconnect();
      stops.forEach((stop) => stop());
      map.remove();
      yard.current = null;
    };
  }, []);

  useSignalEffect(() => {
    const to = jump.value?.to;
    const map = yard.current?.map;
    if (!map || to === undefined) return;
    if (to === null) fitPoints(map, shownPlan.peek().site.boundary);
    else map.setView(toLatLng(to), Math.max(map.getZoom(), 5.5), { animate: false });
  });

  // Another yard on the table: show all of it.
  useSignalEffect(() => {
    const { id } = openYard.value;
    if (yard.current && id !== undefined) fitPoints(yard.current.map, shownPlan.peek().site.boundary);
  });

  // The cross waits in the middle of the map from the moment a point is wanted.
  useSignalEffect(() => {
    const map = yard.current?.map;
    if (wantsPoint.value && crossHair.value && map) startCross(map);
    else if (!wantsPoint.value) aim.value = null;
  });

  /** The cross begins at what is held, else in the middle of what is seen, near enough to place it. */
  function startCross(map: LeafletMap): void {
    if (!wantsPoint.peek() || !crossHair.peek()) return;
    if (map.getZoom() < CLOSE_ENOUGH) map.setZoom(CLOSE_ENOUGH, { animate: false });
    moveCross(held.peek()?.grip.at ?? untracked(() => snapped(toPlanPoint(map.getCenter())).at));
  }

  function centreOn(at: PlanPoint): void {
    yard.current?.map.setView(toLatLng(at), undefined, { animate: false });
  }

  /** Brings the paper under the cross so that it stands exactly at a point. */
  function moveCross(at: PlanPoint): void {
    aim.value = { at, kind: 'grid' };
    centreOn(at);
  }

  function nudgeCross(by: PlanPoint): void {
    const from = aim.peek()?.at ?? [0, 0];
    moveCross([Math.round((from[0] + by[0]) * 1000) / 1000, Math.round((from[1] + by[1]) * 1000) / 1000]);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const meaning = keyMeaning(event, { waiting: wantsPoint.value, onMap: event.target === container.current });
    if (!meaning) return;
    event.preventDefault();
    switch (meaning.does) {
      case 'tool':
        return takeUp(meaning.tool, true);
      case 'nudge':
        if (!wantsPoint.value) return nudgeChosen(meaning.by);
        crossHair.value = true;
        nudgeCross(meaning.by);
        return readOut(placeWords(aim.value?.at ?? [0, 0], units.value));
      case 'put':
        if (aim.value) choosePoint(aim.value.at);
        return;
      case 'finish':
        if (draft.value) draft.value = finish(draft.value);
        return;
      case 'escape':
        return escape();
      case 'delete':
        return deleteFeatures(selection.value);
      case 'duplicate':
        if (selection.value.length === 1) duplicate(selection.value[0]);
        return;
      case 'zoom':
        yard.current?.map.setZoom(yard.current.map.getZoom() + meaning.by, { animate: false });
        return;
      case 'whole yard':
        return showAll();
    }
  }

  function showAll(): void {
    const map = yard.current?.map;
    if (!map) return;
    const chosen = drawnPlan.value.features.filter(({ id }) => selection.value.includes(id)).flatMap(centreLine);
    fitPoints(map, chosen.length > 1 ? [...shownPlan.value.site.boundary, ...chosen] : shownPlan.value.site.boundary);
  }

  const zoom = (by: number): void => void yard.current?.map.setZoom(yard.current.map.getZoom() + by);
  const waiting = wantsPoint.value;
  return (
    <section
      class={`yard-map${waiting ? ' waiting' : ''}${crossHair.value ? ' by-cross' : ''}`}
      aria-label="Drawing of the yard"
      onKeyDown={onKeyDown}
      onPointerDown={() => (typingWanted.value = false)}
    >
      <a class="map-way-out" href={WAY_OUT}>
        Leave the drawing
      </a>
      <Patterns />
      <div class="map-frame">
        <div ref={container} class="map-paper" role="application" tabIndex={0} aria-label={mapWords(tool.value)} />
        {split.value && yard.current && <SplitBar map={yard.current.map} />}
        {waiting && crossHair.value && (
          <svg class="map-cross" viewBox="-40 -40 80 80" aria-hidden="true">
            <path d="M-38 0H-7M7 0H38M0 -38V-7M0 7V38" />
            <circle r="2" />
          </svg>
        )}
        <div class="map-north">
          <NorthArrow upBearing={north.value} guessed={northGuessed.value} />
        </div>
        <div class="map-scale">
          <ScaleBar pixels={pixels.value} units={units.value} />
        </div>
        <div class="map-buttons">
          <button type="button" aria-label="Closer" onClick={() => zoom(0.5)}>
            +
          </button>
          <button type="button" aria-label="Farther" onClick={() => zoom(-0.5)}>
            −
          </button>
          <button type="button" aria-label="Whole yard" onClick={showAll}>
            <WholeIcon />
          </button>
          <button
            type="button"
            aria-label="Draw with a cross-hair"
            aria-pressed={crossHair.value}
            onClick={() => (crossHair.value = !crossHair.value)}
          >
            <CrossIcon />
          </button>
        </div>
      </div>
      <DraftBar onNudge={nudgeCross} />
    </section>
  );
}

function mapWords(taken: string | null): string {
  const drawing = toolById(taken);
  const doing = drawing
    ? `Drawing a ${drawing.noun}: arrow keys move the cross, Enter places it, Escape ends.`
    : 'Letters take up a tool; arrow keys nudge what is chosen.';
  return `Plan of the yard. ${doing} Everything on it is in the list that follows.`;
}

function CrossIcon() {
  return (
    <svg class="button-icon" viewBox="-12 -12 24 24" aria-hidden="true">
      <path d="M-10 0H-3M3 0H10M0 -10V-3M0 3V10M-6 0A6 6 0 1 1 6 0A6 6 0 1 1 -6 0" />
    </svg>
  );
}

function WholeIcon() {
  return (
    <svg class="button-icon" viewBox="-12 -12 24 24" aria-hidden="true">
      <path d="M-9 -4V-8H-5M5 -8H9V-4M9 4V8H5M-5 8H-9V4M-4 -3H4V3H-4Z" />
    </svg>
  );
}
