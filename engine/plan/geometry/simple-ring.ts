import { distance, openRing } from './shapes.ts';
import type { PlanPoint } from '../types.ts';

/**
 * Where an outline meets itself, `null` if it is simple: edges that cross or touch, corners visited twice, an edge that
 * runs back along the one before. Exact comparisons, so an outline that merely comes near itself passes.
 */
export function selfMeeting(outline: readonly PlanPoint[]): PlanPoint | null {
  const ring = openRing(outline);
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    const a = ring[i];
    const b = ring[(i + 1) % n];
    if (runsBack(a, b, ring[(i + 2) % n])) return b;
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const meeting = meetingPoint(a, b, ring[j], ring[(j + 1) % n]);
      if (meeting !== null) return meeting;
    }
  }
  return null;
}

/** Whether all corners of a ring lie on one line, to a nanometre. */
export function onOneLine(ring: readonly PlanPoint[]): boolean {
  const [a, ...rest] = openRing(ring);
  const far = rest.reduce((best, point) => (distance(a, point) > distance(a, best) ? point : best), a);
  return rest.every((point) => Math.abs(side(a, far, point)) <= 1e-9 * distance(a, far));
}

/** A point that two segments share, ends included; `null` if there is none. */
function meetingPoint(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): PlanPoint | null {
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return null;
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return null;
  const sideA = side(c, d, a);
  const sideB = side(c, d, b);
  const sideC = side(a, b, c);
  const sideD = side(a, b, d);
  if (sideA * sideB > 0 || sideC * sideD > 0) return null;
  if (sideA === 0 && sideB === 0) return [c, d].find((point) => between(point, a, b)) ?? a;
  const along = sideA / (sideA - sideB);
  return [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])];
}

function runsBack(a: PlanPoint, b: PlanPoint, c: PlanPoint): boolean {
  return side(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}

/** Positive when p lies to the left of the line from a to b. */
function side(a: PlanPoint, b: PlanPoint, p: PlanPoint): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}

function between(p: PlanPoint, a: PlanPoint, b: PlanPoint): boolean {
  return (
    Math.min(a[0], b[0]) <= p[0] &&
    p[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= p[1] &&
    p[1] <= Math.max(a[1], b[1])
  );
}
