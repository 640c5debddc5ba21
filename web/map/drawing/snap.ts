import { distance, pointToMillimetre, toMillimetre } from '../../../engine/index.ts';
import type { PlanPoint } from '../../../engine/index.ts';

/** Where every drawn point lands unless it lands on something already drawn. [m] */
export const DRAWING_GRID = 0.05;

/** What a point was drawn to, said on screen beside it. */
type SnapKind = 'corner' | 'edge' | 'right angle' | 'in line' | 'grid';

export interface Snapped {
  readonly at: PlanPoint;
  readonly kind: SnapKind;
  /** A helping line from what was snapped to, to the point; absent for corner and grid. */
  readonly guide?: readonly [PlanPoint, PlanPoint];
}

export interface SnapTo {
  /** Lines already drawn; a closed one repeats its first point, a single point is a line of one. */
  readonly lines: readonly (readonly PlanPoint[])[];
  /** Points of the thing being drawn, in order: the last one is what lengths and right angles are taken from. */
  readonly drawn: readonly PlanPoint[];
  /** How near counts. [m] */
  readonly reach: number;
}

/**
 * Draws a raw point to the nearest corner, else to a right angle with the leg before (or to the plan's axes), else to
 * an edge, else to the 0.05 m grid. All in metres: what is drawn does not depend on the zoom, only `reach` does.
 */
export function snap(raw: PlanPoint, to: SnapTo): Snapped {
  const corner = nearestCorner(raw, to);
  if (corner) return { at: corner, kind: 'corner' };
  const from = to.drawn[to.drawn.length - 1];
  if (from) {
    const square = onRightAngle(raw, from, to);
    if (square) return square;
  }
  const edge = nearestEdge(raw, to);
  if (edge) return edge;
  return { at: onGrid(raw), kind: 'grid' };
}

/** The nearest point of the drawing grid. */
export function onGrid(point: PlanPoint): PlanPoint {
  return [gridded(point[0]), gridded(point[1])];
}

function gridded(value: number): number {
  return toMillimetre(Math.round(value / DRAWING_GRID) * DRAWING_GRID);
}

function nearestCorner(raw: PlanPoint, { lines, drawn, reach }: SnapTo): PlanPoint | undefined {
  let best: PlanPoint | undefined;
  let bestDistance = reach;
  for (const line of [...lines, drawn.slice(0, -1)]) {
    for (const point of line) {
      const away = distance(point, raw);
      if (away <= bestDistance) {
        best = point;
        bestDistance = away;
      }
    }
  }
  return best;
}

function nearestEdge(raw: PlanPoint, { lines, reach }: SnapTo): Snapped | undefined {
  let best: Snapped | undefined;
  let bestDistance = reach;
  for (const line of lines) {
    for (let i = 1; i < line.length; i += 1) {
      const a = line[i - 1];
      const b = line[i];
      const length = distance(a, b);
      if (length === 0) continue;
      const along = ((raw[0] - a[0]) * (b[0] - a[0]) + (raw[1] - a[1]) * (b[1] - a[1])) / length;
      const kept = Math.min(length, Math.max(0, gridded(along)));
      const at = pointToMillimetre([a[0] + ((b[0] - a[0]) * kept) / length, a[1] + ((b[1] - a[1]) * kept) / length]);
      const away = distance(at, raw);
      if (away <= bestDistance) {
        best = { at, kind: 'edge', guide: [a, b] };
        bestDistance = away;
      }
    }
  }
  return best;
}

/** Along the plan's axes or at right angles to (or in line with) the leg before, its length on the grid. */
function onRightAngle(raw: PlanPoint, from: PlanPoint, { drawn, reach }: SnapTo): Snapped | undefined {
  const before = drawn[drawn.length - 2];
  const directions: { readonly ux: number; readonly uy: number; readonly kind: SnapKind }[] = [];
  if (before && (before[0] !== from[0] || before[1] !== from[1])) {
    const length = distance(before, from);
    const ux = (from[0] - before[0]) / length;
    const uy = (from[1] - before[1]) / length;
    directions.push({ ux: -uy, uy: ux, kind: 'right angle' }, { ux, uy, kind: 'in line' });
  }
  directions.push({ ux: 1, uy: 0, kind: 'right angle' }, { ux: 0, uy: 1, kind: 'right angle' });
  const dx = raw[0] - from[0];
  const dy = raw[1] - from[1];
  for (const { ux, uy, kind } of directions) {
    const along = dx * ux + dy * uy;
    const aside = Math.abs(dx * uy - dy * ux);
    if (aside > reach || Math.abs(along) < reach) continue;
    const kept = gridded(along);
    const at = pointToMillimetre([from[0] + ux * kept, from[1] + uy * kept]);
    return { at, kind, guide: [from, at] };
  }
  return undefined;
}
