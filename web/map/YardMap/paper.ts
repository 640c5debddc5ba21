import { computed, effect } from '@preact/signals';
import type { Signal } from '@preact/signals';
import type { Map as LeafletMap } from 'leaflet';
import type { PlanPoint } from '../../../engine/index.ts';
import { heat } from '../../state/results.ts';
import { aside, selection, stage } from '../../state/view.ts';
import { shownPlan } from '../../state/yard.ts';
import { drawnPlan } from '../drawing/drawn-plan.ts';
import { crossHair, draft, held, reach } from '../drawing/in-hand.ts';
import { centreLine } from '../drawing/outline.ts';
import { placeNames } from '../ink/names.ts';
import { layOverlays } from '../ink/overlay-layers.ts';
import { createPlanLayer } from '../ink/plan-layer.ts';
import { contourLines, hiddenHeightLines, numberedMarks } from '../laid-on/overlays.ts';
import { createLeafletYard, fitPoints, pixelsPerMetre } from '../leaflet/leaflet-map.ts';
import type { LeafletYard, Margins } from '../leaflet/leaflet-map.ts';

/** How near the pointer must come to count as "at" something. [px] */
const REACH_PX = { fine: 9, coarse: 16 };

const isCoarse = (): boolean => matchMedia('(pointer: coarse), (max-width: 767px)').matches;

export interface Paper extends LeafletYard {
  /** Takes it off the page. */
  remove(): void;
}

/** Lays the yard on a map in a box of the page: the plan's ink and what others lay over it. */
export function layPaper(container: HTMLElement, pixels: Signal<number>): Paper {
  const yard = createLeafletYard(container);
  const { map, renderers } = yard;
  crossHair.value = isCoarse();
  const scale = (): void => {
    const perMetre = pixelsPerMetre(map);
    pixels.value = perMetre;
    reach.value = REACH_PX[isCoarse() ? 'coarse' : 'fine'] / perMetre;
    // Dots keep their weight on the paper between a fine and a broad nib.
    container.style.setProperty('--dot', `${Math.min(3.2, Math.max(1.3, 0.036 * perMetre)).toFixed(1)}px`);
    names.place();
  };
  const names = keepNamesApart(map, pixels);
  map.on('zoomend', scale);
  const layer = createPlanLayer(map, renderers);
  layer.show(drawnPlan.value);
  showYard(map);
  scale();
  const stops = [
    drawnPlan.subscribe((next) => {
      layer.show(next);
      names.place();
    }),
    layOverlays(
      map,
      renderers,
      () => drawnPlan.value,
      () => pixels.value,
    ),
    keepInView(map),
    names.stop,
  ];
  return {
    map,
    renderers,
    remove() {
      stops.forEach((stop) => stop());
      map.remove();
    },
  };
}

/** Until someone moves the paper the whole yard stays in view, however the page around it settles. */
function keepInView(map: LeafletMap): () => void {
  const container = map.getContainer();
  let touched = false;
  map.on('drag', () => (touched = true));
  container.addEventListener('wheel', () => (touched = true), { passive: true });
  const resized = new ResizeObserver(() => {
    map.invalidateSize({ pan: false });
    const begun = held.value !== null || (draft.value?.points.length ?? 0) > 0;
    if (!touched && !begun) showYard(map);
  });
  resized.observe(container);
  // In the first questions each answer may change how large it is.
  const boundary = computed(() => JSON.stringify(shownPlan.value.site.boundary));
  const stop = effect(() => {
    void boundary.value;
    if (aside.peek() === 'happened') showYard(map);
  });
  return () => {
    resized.disconnect();
    stop();
  };
}

/** Places names anew, once a frame, whenever what stands on the paper or the paper itself has moved. */
function keepNamesApart(map: LeafletMap, pixels: Signal<number>): { place(): void; stop(): void } {
  let asked = 0;
  const place = (): void => {
    cancelAnimationFrame(asked);
    asked = requestAnimationFrame(() => placeNames(map.getContainer(), pixels.peek()));
  };
  map.on('moveend resize', place);
  const stop = effect(() => {
    // What else has words on the paper, or lies over it: the heat its caption.
    void [numberedMarks.value, contourLines.value, hiddenHeightLines.value, stage.value, heat.value];
    place();
  });
  return {
    place,
    stop() {
      cancelAnimationFrame(asked);
      stop();
    },
  };
}

/** Widest margin round a yard, and what a low or narrow paper has of it. */
const MARGIN = { most: 36, share: 0.1 } as const;
/** What the caption and the scale take at top and foot of a small paper. [px] */
const CAPTION_PX = 58;
const SCALE_PX = 38;

/** Margins that keep a yard clear of what lies over the paper: with its buttons beside it, or under it. */
function marginsOn(map: LeafletMap): readonly Margins[] {
  const { x: width, y: height } = map.getSize();
  const buttons = map.getContainer().parentElement?.querySelector('.map-buttons')?.getBoundingClientRect();
  const [across, up] = [Math.min(MARGIN.most, MARGIN.share * width), Math.min(MARGIN.most, MARGIN.share * height)];
  const top = stage.peek() === 'draw' ? up : Math.max(up, CAPTION_PX);
  if (!buttons || height < 3 * CAPTION_PX) return [{ top: up, right: across, bottom: up, left: across }];
  return [
    { top, right: buttons.width + 2 * BESIDE_PX, bottom: Math.max(up, SCALE_PX), left: Math.min(across, 12) },
    { top, right: across, bottom: buttons.height + 2 * BESIDE_PX, left: across },
  ];
}

/** Between the yard and the buttons. [px] */
const BESIDE_PX = 6;

function fit(map: LeafletMap, points: readonly PlanPoint[]): void {
  fitPoints(map, points, marginsOn(map));
}

/** Brings the whole yard into view. */
export function showYard(map: LeafletMap): void {
  fit(map, shownPlan.peek().site.boundary);
}

/** Brings the whole yard into view, and what is chosen beyond it. */
export function showAll(map: LeafletMap): void {
  const chosen = drawnPlan.value.features.filter(({ id }) => selection.value.includes(id)).flatMap(centreLine);
  fit(map, chosen.length > 1 ? [...shownPlan.value.site.boundary, ...chosen] : shownPlan.value.site.boundary);
}
