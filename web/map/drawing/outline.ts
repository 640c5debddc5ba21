import { canopyRing, distance, isClosed, openRing, pathStripes } from '../../../engine/index.ts';
import type { Feature, PlanPoint } from '../../../engine/index.ts';

/**
 * What each kind of feature covers on the paper, in metres: closed shapes as open rings, either winding.
 */
export function footprint(feature: Feature): readonly (readonly PlanPoint[])[] {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
      return pathStripes(feature.path, feature.thickness);
    case 'building':
    case 'bed':
    case 'keepout':
    case 'ground':
      return [feature.outline];
    case 'canopy':
      return [canopyRing(feature)];
    case 'tree':
      return [circle(feature.at, feature.crownWidth / 2)];
    case 'plant':
      return [circle(feature.at, feature.spread / 2)];
    case 'screen':
    case 'eye':
    case 'reading':
      return [];
  }
}

/**
 * The line a person drew: what snaps, what is hit, and what a thin feature is drawn with. Closed shapes repeat their
 * first point.
 */
export function centreLine(feature: Feature): readonly PlanPoint[] {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'screen':
    case 'eye':
      return feature.path;
    case 'building':
    case 'bed':
    case 'keepout':
    case 'ground':
      return closed(feature.outline);
    case 'canopy':
      return closed(canopyRing(feature));
    case 'tree':
    case 'plant':
    case 'reading':
      return [feature.at];
  }
}

/** A circle as a ring of corners that lie on it. [m] */
export function circle(centre: PlanPoint, radius: number, corners = 48): readonly PlanPoint[] {
  return Array.from({ length: corners }, (_, k): PlanPoint => {
    const angle = (2 * Math.PI * k) / corners;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

/** A ring carried outwards by `by` along every edge, corners mitred: the drip line of eaves. [m] */
export function outset(outline: readonly PlanPoint[], by: number): readonly PlanPoint[] {
  const ring = openRing(outline);
  const edges = ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length];
    const length = distance(a, b);
    return { a, ux: (b[0] - a[0]) / length, uy: (b[1] - a[1]) / length };
  });
  return edges.map(({ a, ux, uy }, i): PlanPoint => {
    const before = edges[(i + edges.length - 1) % edges.length];
    const cross = before.ux * uy - before.uy * ux;
    const mitre = Math.abs(cross) < 1e-6 ? 0 : (by * (1 - (before.ux * ux + before.uy * uy))) / cross;
    return [a[0] + by * before.uy + mitre * before.ux, a[1] - by * before.ux + mitre * before.uy];
  });
}

function closed(ring: readonly PlanPoint[]): readonly PlanPoint[] {
  return isClosed(ring) ? ring : [...ring, ring[0]];
}
