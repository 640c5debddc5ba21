import { canopyCorners, cleanPath, distance, isClosed, openRing } from '../../../engine/index.ts';
import type { Canopy, Feature, PlanPoint } from '../../../engine/index.ts';

/**
 * What each kind of feature covers on the paper, in metres: closed shapes as open rings, either winding.
 * A path with a thickness is one ring a segment, carried on by half the thickness past a joint and cut square at its
 * ends,
 * as the engine takes it; a path that ends where it began has no ends.
 */
export function footprint(feature: Feature): readonly (readonly PlanPoint[])[] {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
      return segmentRings(feature.path, feature.thickness);
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

/** Corners of a canopy's roof on the paper. */
function canopyRing(canopy: Canopy): readonly PlanPoint[] {
  return canopyCorners(canopy).map(([x, y]): PlanPoint => [x, y]);
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

function segmentRings(path: readonly PlanPoint[], thickness: number): readonly (readonly PlanPoint[])[] {
  const points = cleanPath(path);
  const loops = isClosed(points);
  const half = thickness / 2;
  return points.slice(1).map((b, i) => {
    const a = points[i];
    const length = distance(a, b);
    const ux = (b[0] - a[0]) / length;
    const uy = (b[1] - a[1]) / length;
    const back = i > 0 || loops ? half : 0;
    const on = i < points.length - 2 || loops ? half : 0;
    const corner = (p: PlanPoint, along: number, aside: number): PlanPoint => [
      p[0] + ux * along - uy * aside,
      p[1] + uy * along + ux * aside,
    ];
    return [corner(a, -back, -half), corner(b, on, -half), corner(b, on, half), corner(a, -back, half)];
  });
}
