/** Marks and words at one place of the paper: they do not grow with it. */

import type { Layer } from 'leaflet';
import { boundsOf, shownName } from '../../../engine/index.ts';
import type { Feature, PlanPoint } from '../../../engine/index.ts';
import { centreLine } from '../drawing/outline.ts';
import { toLatLng } from '../leaflet/lat-lng.ts';
import { divIcon, marker } from '../leaflet/leaflet.ts';
import { writeBody } from './names.ts';
import type { NamedBody } from './names.ts';

/** A small mark of our own drawing. */
export function symbol(at: PlanPoint, className: string, paths: readonly string[]): Layer {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('aria-hidden', 'true');
  for (const d of paths) {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('d', d);
    svg.append(path);
  }
  return marker(toLatLng(at), {
    pane: 'marks',
    interactive: false,
    keyboard: false,
    icon: divIcon({ className: `map-symbol ${className}`, html: svg, iconSize: [18, 18] }),
  });
}

/** Whose name comes first where there is not room for all. */
const RANKS: Readonly<Partial<Record<Feature['kind'], number>>> = { plant: 0, bed: 1, canopy: 2, tree: 2, building: 4 };
const OTHER_RANK = 3;

/** A thing's name, on it or beside it, as plain text. @param at its middle */
export function label(feature: Feature, at: PlanPoint, lies: NamedBody['lies'], half?: PlanPoint): Layer[] {
  const name = shownName(feature.name ?? '');
  if (name === '') return [];
  const { minX, maxX, minY, maxY } = boundsOf(centreLine(feature));
  const [across, up] = half ?? [(maxX - minX) / 2, (maxY - minY) / 2];
  const rank = RANKS[feature.kind] ?? OTHER_RANK;
  return [textMark(at, name, 'map-name', { lies, across, up, rank, solid: feature.kind === 'plant' })];
}

/**
 * Words on the paper at one place: always a text node, so that a name can be anything.
 * @param body what they name; without it they lie where they are put
 */
export function textMark(at: PlanPoint, text: string, className: string, body?: NamedBody): Layer {
  const words = document.createElement('span');
  if (body) writeBody(words, body);
  words.textContent = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  // Leaflet stacks marks by their height on the screen, from below zero up: words must not slip under the lines.
  return marker(toLatLng(at), {
    pane: 'marks',
    interactive: false,
    keyboard: false,
    zIndexOffset: 10_000,
    icon: divIcon({ className, html: words, iconSize: [0, 0] }),
  });
}
