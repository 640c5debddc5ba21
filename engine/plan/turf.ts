/**
 * The only door of Turf into the project. Turf takes coordinates for degrees on a globe; what stands here is planar and
 * right for metres. Its area, length, distance, buffer and rotation are not, so they cannot be reached.
 */
import { booleanPointInPolygon } from '@turf/boolean-point-in-polygon';
import { difference as turfDifference } from '@turf/difference';
import { featureCollection, polygon } from '@turf/helpers';
import { intersect as turfIntersect } from '@turf/intersect';
import { kinks as turfKinks } from '@turf/kinks';
import { union as turfUnion } from '@turf/union';
import { area, openRing } from './geometry.ts';
import type { PlanPoint } from './types.ts';

/** A piece of ground: the outer ring first, then its holes; rings open, counter-clockwise. */
export type Region = readonly (readonly PlanPoint[])[];

/** The ground that any of the simple outlines covers. */
export function union(outlines: readonly (readonly PlanPoint[])[]): Region[] {
  const shapes = outlines.map(toTurf);
  if (shapes.length === 0) return [];
  if (shapes.length === 1) return [[openRing(outlines[0])]];
  return toRegions(turfUnion(featureCollection(shapes)));
}

/** The ground that both simple outlines cover. */
export function intersect(a: readonly PlanPoint[], b: readonly PlanPoint[]): Region[] {
  return toRegions(turfIntersect(featureCollection([toTurf(a), toTurf(b)])));
}

/** The ground of the first simple outline that none of the others covers. */
export function difference(outline: readonly PlanPoint[], others: readonly (readonly PlanPoint[])[]): Region[] {
  if (others.length === 0) return [[openRing(outline)]];
  return toRegions(turfDifference(featureCollection([toTurf(outline), ...others.map(toTurf)])));
}

/** Whether a point lies in a region and not in a hole of it; the edge counts as inside. */
export function pointInRegion(point: PlanPoint, region: Region): boolean {
  return booleanPointInPolygon([...point], polygon(region.map(closed)));
}

/** The points where an outline's edges cross each other, each once. */
export function kinks(outline: readonly PlanPoint[]): PlanPoint[] {
  const seen = new Map<string, PlanPoint>();
  for (const { geometry } of turfKinks(toTurf(outline)).features) {
    const [x, y] = geometry.coordinates;
    seen.set(`${x} ${y}`, [x, y]);
  }
  return [...seen.values()];
}

/** Area of regions, holes taken off. [m²] */
export function regionArea(regions: readonly Region[]): number {
  return regions.reduce((sum, [outer, ...holes]) => sum + area(outer) - holes.reduce((hole, ring) => hole + area(ring), 0), 0);
}

function toTurf(outline: readonly PlanPoint[]) {
  return polygon([closed(outline)]);
}

function closed(outline: readonly PlanPoint[]): number[][] {
  const ring = openRing(outline).map(([x, y]) => [x, y]);
  return [...ring, [...ring[0]]];
}

function toRegions(shape: ReturnType<typeof turfUnion>): Region[] {
  if (shape === null) return [];
  const { geometry } = shape;
  const polygons = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
  return polygons.map((rings) => rings.map((ring) => openRing(ring.map(([x, y]): PlanPoint => [x, y]))));
}
