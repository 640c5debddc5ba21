/**
 * Plane geometry of a plan, in metres, x right, y up. Rings are lists of corners; a function that needs an open,
 * counter-clockwise ring says so and `openRing` makes one.
 */

import { meanOf } from '../numbers/mean.ts';
import { ROUNDING } from '../numbers/tolerances.ts';
import type { PlanPoint } from '../types.ts';
import { DEGREE } from './angles.ts';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Distance of two points. Ours: Turf's is on a globe. [m] */
export function distance(a: PlanPoint, b: PlanPoint): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** Smallest box, sides along x and y, around at least one point. [m] */
export function boundsOf(points: readonly PlanPoint[]): Bounds {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const [x, y] of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Area with the sign of the winding: positive counter-clockwise, seen with y up. The ring may repeat its first point.
 * Ours: Turf's is on a globe. [m²]
 */
export function signedArea(ring: readonly PlanPoint[]): number {
  if (ring.length === 0) return 0;
  // From the first corner, so that a small yard far from the origin loses no digits.
  const [x0, y0] = ring[0];
  let twice = 0;
  for (let i = 0; i < ring.length; i++) {
    const [ax, ay] = ring[i];
    const [bx, by] = ring[(i + 1) % ring.length];
    twice += (ax - x0) * (by - y0) - (bx - x0) * (ay - y0);
  }
  return twice / 2;
}

/** Area of a simple ring, either winding. [m²] */
export function area(ring: readonly PlanPoint[]): number {
  return Math.abs(signedArea(ring));
}

/**
 * Centre of mass of a simple ring's area, either winding; of a ring without area the mean of its corners. Ours: what
 * Turf calls so is always the mean of the corners.
 */
export function centroid(ring: readonly PlanPoint[]): PlanPoint {
  const corners = cleanPath(ring);
  const [x0, y0] = corners[0];
  let twice = 0;
  let sumX = 0;
  let sumY = 0;
  for (let i = 0; i < corners.length; i++) {
    const ax = corners[i][0] - x0;
    const ay = corners[i][1] - y0;
    const bx = corners[(i + 1) % corners.length][0] - x0;
    const by = corners[(i + 1) % corners.length][1] - y0;
    const cross = ax * by - bx * ay;
    twice += cross;
    sumX += (ax + bx) * cross;
    sumY += (ay + by) * cross;
  }
  if (Math.abs(twice) < 1e-12) return meanPoint(corners);
  return [x0 + sumX / (3 * twice), y0 + sumY / (3 * twice)];
}

/** The path without points that equal the one before. A closed path stays closed. */
export function cleanPath(path: readonly PlanPoint[]): PlanPoint[] {
  return path.filter((point, i) => i === 0 || !samePoint(point, path[i - 1]));
}

/** Whether a path's last point equals its first and it encloses something. */
export function isClosed(path: readonly PlanPoint[]): boolean {
  const points = cleanPath(path);
  return points.length > 3 && samePoint(points[0], points[points.length - 1]);
}

/** The outline's corners once each, counter-clockwise seen with y up; starts at the first corner given. */
export function openRing(outline: readonly PlanPoint[]): PlanPoint[] {
  const ring = cleanPath(outline);
  while (ring.length > 1 && samePoint(ring[0], ring[ring.length - 1])) ring.pop();
  return signedArea(ring) < 0 ? [ring[0], ...ring.slice(1).reverse()] : ring;
}

/** An open ring with its first corner again at the end: the line round it. */
export function closedRing(ring: readonly PlanPoint[]): PlanPoint[] {
  return [...ring, ring[0]];
}

/** The line round an outline, which need not be clean or closed. */
export function lineRound(outline: readonly PlanPoint[]): PlanPoint[] {
  return closedRing(openRing(outline));
}

/** Length of a path along its segments. Ours: Turf's is on a globe. [m] */
export function pathLength(path: readonly PlanPoint[]): number {
  let length = 0;
  for (let i = 1; i < path.length; i++) length += distance(path[i - 1], path[i]);
  return length;
}

/**
 * Whether a point lies inside a simple ring, either winding. A point within `edge` of the outline counts as inside. [m]
 * Ours: asked for every cell, ray and place tried, where Turf would allocate and take no `edge`.
 */
export function pointInRing(point: PlanPoint, ring: readonly PlanPoint[], edge = 0): boolean {
  const x = point[0];
  const y = point[1];
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const a = ring[i];
    const b = ring[j];
    if (edge > 0 && mayBeNear(point, a, b, edge) && distanceToSegment(point, a, b) <= edge) return true;
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
  }
  return inside;
}

/** Whether a point lies within `edge` of a segment's box: quickly told, and of most points `false`. [m] */
function mayBeNear(point: PlanPoint, a: PlanPoint, b: PlanPoint, edge: number): boolean {
  const x = point[0];
  const y = point[1];
  return (
    x >= Math.min(a[0], b[0]) - edge &&
    x <= Math.max(a[0], b[0]) + edge &&
    y >= Math.min(a[1], b[1]) - edge &&
    y <= Math.max(a[1], b[1]) + edge
  );
}

/** Whether a point lies inside a ring and more than `edge` from its outline. [m] */
export function strictlyInRing(point: PlanPoint, ring: readonly PlanPoint[], edge: number): boolean {
  return pointInRing(point, ring) && distanceToEdge(point, ring) > edge;
}

/** Distance of a point from the nearest point of a segment. [m] */
export function distanceToSegment(point: PlanPoint, a: PlanPoint, b: PlanPoint): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const along = alongSegment(point, a, dx, dy);
  return Math.hypot(a[0] + along * dx - point[0], a[1] + along * dy - point[1]);
}

/** The point of a segment nearest to a point. */
export function nearestOnSegment(point: PlanPoint, a: PlanPoint, b: PlanPoint): PlanPoint {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const along = alongSegment(point, a, dx, dy);
  return [a[0] + along * dx, a[1] + along * dy];
}

/** Distance of a point from the line round a ring, from inside or outside. [m] */
export function distanceToEdge(point: PlanPoint, ring: readonly PlanPoint[]): number {
  return distanceToPath(point, closedRing(ring));
}

/** Distance of a point from a path of one point or more (an open one: repeat the first point to close it). [m] */
export function distanceToPath(point: PlanPoint, path: readonly PlanPoint[]): number {
  let least = distance(point, path[0]);
  for (let i = 1; i < path.length; i++) least = Math.min(least, distanceToSegment(point, path[i - 1], path[i]));
  return least;
}

/** Above 0 where a point lies to the left of the line from a to b: twice the triangle's area. [m²] */
export function sideOf(a: PlanPoint, b: PlanPoint, point: PlanPoint): number {
  return (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]);
}

/**
 * Whether two paths cross; paths that only touch do not. Ours: asked for every place tried for cloth and post, and
 * Turf counts a touch.
 */
export function pathsCross(a: readonly PlanPoint[], b: readonly PlanPoint[]): boolean {
  for (let i = 1; i < a.length; i++)
    for (let j = 1; j < b.length; j++) if (segmentsCross(a[i - 1], a[i], b[j - 1], b[j])) return true;
  return false;
}

/** Whether all corners of a ring lie on one line, to a nanometre. */
export function onOneLine(ring: readonly PlanPoint[]): boolean {
  const [a, ...rest] = openRing(ring);
  const far = rest.reduce((best, point) => (distance(a, point) > distance(a, best) ? point : best), a);
  return rest.every((point) => Math.abs(sideOf(a, far, point)) <= ROUNDING * distance(a, far));
}

/** A point turned clockwise about a centre. @param turn [°] */
export function turned(point: PlanPoint, center: PlanPoint, turn: number): PlanPoint {
  const sin = Math.sin(turn * DEGREE);
  const cos = Math.cos(turn * DEGREE);
  const dx = point[0] - center[0];
  const dy = point[1] - center[1];
  return [center[0] + dx * cos + dy * sin, center[1] - dx * sin + dy * cos];
}

/** Distance of a point from a ring's area, 0 inside. [m] */
export function distanceToRing(point: PlanPoint, ring: readonly PlanPoint[]): number {
  return pointInRing(point, ring) ? 0 : distanceToEdge(point, ring);
}

/** Distance between a shape (a ring, or the two ends of a line) and a path; 0 where they cross. [m] */
export function distanceToShape(shape: readonly PlanPoint[], path: readonly PlanPoint[]): number {
  const outline = shape.length > 2 ? closedRing(shape) : shape;
  let least = Infinity;
  for (const point of shape) least = Math.min(least, distanceToPath(point, path));
  for (const point of path)
    least = Math.min(least, shape.length > 2 ? distanceToRing(point, shape) : distanceToPath(point, outline));
  return least > 0 && pathsCross(outline, path) ? 0 : least;
}

/** Whether a shape (a ring, or the two ends of a line) and a ring share ground. */
export function meets(shape: readonly PlanPoint[], ring: readonly PlanPoint[]): boolean {
  return (
    pointInRing(shape[0], ring) ||
    (shape.length > 2 && pointInRing(ring[0], shape)) ||
    pathsCross(shape.length > 2 ? closedRing(shape) : shape, closedRing(ring))
  );
}

/** Where on a segment from a by (dx, dy) the nearest point stands, 0 to 1. */
function alongSegment(point: PlanPoint, a: PlanPoint, dx: number, dy: number): number {
  const squared = dx * dx + dy * dy;
  return squared === 0 ? 0 : Math.min(1, Math.max(0, ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / squared));
}

function segmentsCross(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): boolean {
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}

function samePoint(a: PlanPoint, b: PlanPoint): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** Mean of at least one point. */
export function meanPoint(points: readonly PlanPoint[]): PlanPoint {
  return [meanOf(points.map(([x]) => x)), meanOf(points.map(([, y]) => y))];
}
