import type { LatLngExpression, Point, Renderer } from 'leaflet';
import { boundsOf } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';
import { PANES } from '../ink/panes.ts';
import type { PaneName, Renderers } from '../ink/panes.ts';
import { toLatLng, toPlanPoint } from './lat-lng.ts';
import { LeafletMap, Simple, svg } from './leaflet.ts';

/** Zoom is the binary logarithm of screen pixels a metre: from 4 px to 512 px. */
const ZOOM = { least: 2, most: 9, step: 0.1 };

/** The Leaflet map of a yard: metres, no tiles, no controls of its own, one renderer a pane. */
export interface LeafletYard {
  readonly map: LeafletMap;
  readonly renderers: Renderers;
}

// Every path here names its renderer. Leaflet's own search for one would bring its second way of drawing, on a canvas,
// along.
LeafletMap.include({
  getRenderer(
    this: LeafletMap,
    { options: { renderer } }: { readonly options: { readonly renderer: Renderer } },
  ): Renderer {
    if (!this.hasLayer(renderer)) this.addLayer(renderer);
    return renderer;
  },
});

// Leaflet puts a path's corners on whole pixels, and a curve becomes a stair: on tenths it stays a curve.
LeafletMap.include({
  latLngToLayerPoint(this: LeafletMap, at: LatLngExpression): Point {
    return this.project(at).subtract(this.getPixelOrigin()).multiplyBy(10).round().divideBy(10);
  },
});

export function createLeafletYard(container: HTMLElement): LeafletYard {
  const map = new LeafletMap(container, {
    crs: Simple,
    minZoom: ZOOM.least,
    maxZoom: ZOOM.most,
    zoomSnap: ZOOM.step,
    zoomDelta: 0.5,
    wheelPxPerZoomLevel: 120,
    attributionControl: false,
    zoomControl: false,
    doubleClickZoom: false,
    boxZoom: false,
    // Arrow keys move what is chosen; the map moves by its buttons, by dragging and by the list's "show".
    keyboard: false,
    inertia: false,
    zoomAnimation: !matchMedia('(prefers-reduced-motion: reduce)').matches,
    fadeAnimation: false,
  });
  for (const [name, height] of Object.entries(PANES)) {
    const pane = map.createPane(name);
    pane.style.zIndex = String(height);
    pane.style.pointerEvents = 'none';
  }
  map.setView([0, 0], 5);
  // Padding: shapes reach beyond the view, so that they are not cut while the paper is dragged.
  const renderers = Object.fromEntries(
    (Object.keys(PANES) as PaneName[]).map((pane): [PaneName, Renderer] => [pane, svg({ pane, padding: 0.6 })]),
  ) as Renderers;
  return { map, renderers };
}

/** What is kept free along each edge of the paper. [px] */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Brings a box of points into view as large as it goes, within the margins that leave most room for it. */
export function fitPoints(map: LeafletMap, points: readonly PlanPoint[], tried: readonly Margins[]): void {
  if (points.length === 0) return;
  const { minX, minY, maxX, maxY } = boundsOf(points);
  const { x: width, y: height } = map.getSize();
  const scaleIn = ({ top, right, bottom, left }: Margins): number =>
    Math.min((width - left - right) / (maxX - minX), (height - top - bottom) / (maxY - minY));
  const { top, right, bottom, left } = tried.reduce((best, each) => (scaleIn(each) > scaleIn(best) ? each : best));
  map.fitBounds([toLatLng([minX, minY]), toLatLng([maxX, maxY])], {
    paddingTopLeft: [left, top],
    paddingBottomRight: [right, bottom],
    animate: false,
  });
}

/** Screen pixels a metre. */
export function pixelsPerMetre(map: LeafletMap): number {
  return map.getZoomScale(map.getZoom(), 0);
}

/** Where on the plan a pointer is, not rounded to pixels of the paper. [m] */
export function pointerPoint(
  map: LeafletMap,
  event: { readonly clientX: number; readonly clientY: number },
): PlanPoint {
  const box = map.getContainer().getBoundingClientRect();
  return toPlanPoint(map.containerPointToLatLng([event.clientX - box.left, event.clientY - box.top]));
}
