import type { Signal } from '@preact/signals';
import type { Map as LeafletMap } from 'leaflet';
import { selection } from '../../state/view.ts';
import { shownPlan } from '../../state/yard.ts';
import { drawnPlan } from '../drawing/drawn-plan.ts';
import { crossHair, draft, held, reach } from '../drawing/in-hand.ts';
import { centreLine } from '../drawing/outline.ts';
import { fitNames } from '../ink/ink.ts';
import { layOverlays } from '../ink/overlay-layers.ts';
import { createPlanLayer } from '../ink/plan-layer.ts';
import { createLeafletYard, fitPoints, pixelsPerMetre } from '../leaflet/leaflet-map.ts';
import type { LeafletYard } from '../leaflet/leaflet-map.ts';

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
    pixels.value = pixelsPerMetre(map);
    reach.value = REACH_PX[isCoarse() ? 'coarse' : 'fine'] / pixels.value;
    // Dots keep their weight on the paper between a fine and a broad nib.
    container.style.setProperty('--dot', `${Math.min(3.2, Math.max(1.3, 0.036 * pixels.value)).toFixed(1)}px`);
    fitNames(container, pixels.value);
  };
  map.on('zoomend', scale);
  const layer = createPlanLayer(map, renderers);
  layer.show(drawnPlan.value);
  fitPoints(map, shownPlan.value.site.boundary);
  scale();
  const stops = [
    drawnPlan.subscribe((next) => {
      layer.show(next);
      fitNames(container, pixels.value);
    }),
    layOverlays(
      map,
      renderers,
      () => drawnPlan.value,
      () => pixels.value,
    ),
    keepInView(map),
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
    if (!touched && !begun) fitPoints(map, drawnPlan.value.site.boundary);
  });
  resized.observe(container);
  return () => resized.disconnect();
}

/** Brings the whole yard into view, and what is chosen beyond it. */
export function showAll(map: LeafletMap): void {
  const chosen = drawnPlan.value.features.filter(({ id }) => selection.value.includes(id)).flatMap(centreLine);
  fitPoints(map, chosen.length > 1 ? [...shownPlan.value.site.boundary, ...chosen] : shownPlan.value.site.boundary);
}
