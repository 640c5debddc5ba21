/** Points, paths and outlines of the file, and what is said of those that enclose nothing or cross themselves. */

import { DEFAULTS } from '../defaults.ts';
import { LIMITS, cellCount } from '../file/limits.ts';
import { boundsOf, cleanPath, distance, onOneLine, openRing } from '../geometry/shapes.ts';
import { selfMeeting } from '../geometry/turf.ts';
import { toMillimetre } from '../numbers/rounding.ts';
import type { LineForm, OutlineForm, PathForm } from '../schema/form.ts';
import { show } from '../schema/say.ts';
import type { PlanPoint } from '../types.ts';
import type { Spot } from './spot.ts';
import { called, wrong } from './spot.ts';

export function readPoint(value: unknown, spot: Spot): PlanPoint | undefined {
  if (isNear(value)) return value;
  if (!isPoint(value)) return wrong(spot, `${called(spot)} must be two numbers in metres, [x, y].`);
  return wrong(
    spot,
    `${called(spot)} is at [${value.join(', ')}] m, more than ${LIMITS.coordinate} m from the plan's origin.`,
  );
}

/** A list of points as its form wants it; `undefined` when it or any of them is wrong. */
export function readPoints(
  form: PathForm | OutlineForm | LineForm,
  value: unknown,
  spot: Spot,
): readonly PlanPoint[] | undefined {
  if (!Array.isArray(value)) return wrong(spot, `${called(spot)} must be a list, got ${show(value)}.`);
  if (value.length > LIMITS.pointsPerPath)
    return wrong(spot, `${called(spot)} has ${value.length} points; at most ${LIMITS.pointsPerPath} are read.`);
  const points = value.flatMap((item: unknown, index): PlanPoint[] => {
    if (isNear(item)) return [item];
    const name = `point ${index + 1} of ${called(spot)}`;
    readPoint(item, { ...spot, pointer: `${spot.pointer}/${index}`, name });
    return [];
  });
  if (points.length < value.length) return undefined;
  const fault = faultOf(form, points, called(spot));
  return fault === null ? points : wrong(spot, fault);
}

function faultOf(form: PathForm | OutlineForm | LineForm, points: readonly PlanPoint[], name: string): string | null {
  switch (form.form) {
    case 'line':
      return points.length === 2 && distance(points[0], points[1]) > 0 ? null : `${name} must be two different points.`;
    case 'path': {
      const distinct = cleanPath(points).length;
      const wanted = form.least === 1 ? 'one point' : 'two different points';
      return distinct >= form.least
        ? null
        : `${name} must have at least ${wanted}, got ${distinct === 0 ? 'none' : 'one'}.`;
    }
    case 'outline':
      return outlineFault(points, name) ?? cellFault(points, form.cells);
  }
}

/** What keeps an outline from being simple and enclosing something. */
function outlineFault(outline: readonly PlanPoint[], name: string): string | null {
  const ring = openRing(outline);
  if (ring.length < 3) return `${name} must have at least three corners, got ${ring.length}.`;
  if (onOneLine(ring)) return `${name} encloses no ground: its corners lie on one line.`;
  const meeting = selfMeeting(ring);
  return meeting === null
    ? null
    : `${name} crosses or touches itself at [${toMillimetre(meeting[0])}, ${toMillimetre(meeting[1])}] m.`;
}

/** A grid over the box of an outline must not be too large to work out. */
function cellFault(outline: readonly PlanPoint[], cells: OutlineForm['cells']): string | null {
  if (cells === undefined) return null;
  const { minX, minY, maxX, maxY } = boundsOf(outline);
  const cell = DEFAULTS[cells];
  const count = cellCount(maxX - minX, maxY - minY, cell);
  return count <= LIMITS.cells
    ? null
    : `${Math.round(maxX - minX)} by ${Math.round(maxY - minY)} m are ${count} cells of ${cell} m; at most ` +
        `${LIMITS.cells} can be worked out.`;
}

function isNear(value: unknown): value is PlanPoint {
  return isPoint(value) && Math.abs(value[0]) <= LIMITS.coordinate && Math.abs(value[1]) <= LIMITS.coordinate;
}

function isPoint(value: unknown): value is PlanPoint {
  return Array.isArray(value) && value.length === 2 && Number.isFinite(value[0]) && Number.isFinite(value[1]);
}
