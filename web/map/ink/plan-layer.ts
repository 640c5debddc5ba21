import type { LatLngTuple, Map as LeafletMap } from 'leaflet';
import { boundsOf, lieOf } from '../../../engine/index.ts';
import type { Feature, Plan, Site, Underlay } from '../../../engine/index.ts';
import { toLatLng, toLatLngs } from '../leaflet/lat-lng.ts';
import { LayerGroup, polygon, polyline, svgOverlay } from '../leaflet/leaflet.ts';
import { inkOf, isGuessed } from './ink.ts';
import { exact } from './panes.ts';
import type { Renderers } from './panes.ts';

/** Paper is ruled this far beyond the yard. [m] */
const PAPER_MARGIN = 30;

export interface PlanLayer {
  /** Makes the map show `next`, touching only what differs from what it showed. */
  show(next: Plan): void;
}

/**
 * The plan on the map. Plans share what did not change, so a feature that is the same object is left alone,
 * and an edit or an undo costs what it changed.
 */
export function createPlanLayer(map: LeafletMap, renderers: Renderers): PlanLayer {
  const drawn = new Map<string, { readonly feature: Feature; readonly ink: LayerGroup }>();
  const paper = new LayerGroup().addTo(map);
  const edge = new LayerGroup().addTo(map);
  const underlay = new LayerGroup().addTo(map);
  let site: Site | null = null;

  function showFeatures(features: readonly Feature[]): void {
    const wanted = new Map(features.map((feature) => [feature.id, feature]));
    for (const [id, { feature, ink }] of drawn) {
      if (wanted.get(id) === feature) continue;
      ink.remove();
      drawn.delete(id);
    }
    for (const [id, feature] of wanted) {
      if (drawn.has(id)) continue;
      drawn.set(id, { feature, ink: new LayerGroup(inkOf(feature, renderers)).addTo(map) });
    }
  }

  function showSite(next: Site): void {
    if (next.boundary !== site?.boundary || next.how !== site?.how) {
      paper.clearLayers();
      edge.clearLayers();
      for (const layer of ruling(next, renderers)) paper.addLayer(layer);
      edge.addLayer(
        polygon(
          toLatLngs(next.boundary),
          exact(renderers, 'ground', `ink boundary${isGuessed(next) ? ' guessed' : ''}`),
        ),
      );
    }
    if (next.underlay !== site?.underlay) layUnderlay(underlay, next.underlay);
    site = next;
  }

  return {
    show(next) {
      showSite(next.site);
      showFeatures(next.features);
    },
  };
}

/** Lays the picture that the yard is drawn over, once it is decoded. */
function layUnderlay(onto: LayerGroup, picture: Site['underlay']): void {
  onto.clearLayers();
  if (!picture || !picture.image.startsWith('data:image/')) return;
  const image = new Image();
  image.addEventListener('load', () => {
    const height = (picture.width * image.naturalHeight) / image.naturalWidth;
    const [x, y] = picture.at;
    const { opacity } = lieOf(picture);
    onto.clearLayers();
    onto.addLayer(
      svgOverlay(turnedPicture(picture, image), [toLatLng([x, y]), toLatLng([x + picture.width, y + height])], {
        pane: 'underlay',
        className: 'underlay',
        opacity,
      }),
    );
  });
  image.src = picture.image;
}

/**
 * Turned about its lower left corner, where `at` holds it, within a box that is not: Leaflet moves the box by a
 * transform, and a turn of the box itself would turn that way too.
 */
function turnedPicture(picture: Underlay, { naturalWidth, naturalHeight }: HTMLImageElement): SVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  const image = document.createElementNS(SVG, 'image');
  const attributes = {
    href: picture.image,
    width: naturalWidth,
    height: naturalHeight,
    transform: `rotate(${lieOf(picture).turn} 0 ${naturalHeight})`,
  };
  for (const [name, value] of Object.entries(attributes)) image.setAttribute(name, String(value));
  svg.setAttribute('viewBox', `0 0 ${naturalWidth} ${naturalHeight}`);
  svg.setAttribute('aria-hidden', 'true');
  svg.append(image);
  return svg;
}

const SVG = 'http://www.w3.org/2000/svg';

/** Paper ruled in metres, every fifth line stronger. */
function ruling({ boundary }: Site, renderers: Renderers) {
  const box = boundsOf(boundary);
  const left = 5 * Math.floor((box.minX - PAPER_MARGIN) / 5);
  const right = 5 * Math.ceil((box.maxX + PAPER_MARGIN) / 5);
  const low = 5 * Math.floor((box.minY - PAPER_MARGIN) / 5);
  const high = 5 * Math.ceil((box.maxY + PAPER_MARGIN) / 5);
  const fine: LatLngTuple[][] = [];
  const strong: LatLngTuple[][] = [];
  for (let x = left; x <= right; x += 1)
    (x % 5 === 0 ? strong : fine).push(
      toLatLngs([
        [x, low],
        [x, high],
      ]),
    );
  for (let y = low; y <= high; y += 1)
    (y % 5 === 0 ? strong : fine).push(
      toLatLngs([
        [left, y],
        [right, y],
      ]),
    );
  return [
    polyline(fine, exact(renderers, 'paper', 'ruling')),
    polyline(strong, exact(renderers, 'paper', 'ruling strong')),
  ];
}
