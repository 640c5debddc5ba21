/** Lines and polylines of a DXF drawing, ASCII, of any release. */

import type { PlanPoint } from '../../types.ts';
import type { Outline, OutlinesRead } from './types.ts';

/** Metres in one unit, by the number that $INSUNITS has for it; a drawing that names none is taken to be in metres. */
const METRES: Readonly<Record<number, number>> = { 1: 0.0254, 2: 0.3048, 4: 0.001, 5: 0.01, 6: 1, 10: 0.9144, 14: 0.1 };

interface Entity {
  readonly type: string;
  readonly groups: readonly (readonly [code: number, value: string])[];
}

export function dxfOutlines(text: string): OutlinesRead {
  const lines = text.split(/\r\n|\r|\n/);
  const groups: (readonly [number, string])[] = [];
  for (let k = 0; k + 1 < lines.length; k += 2) {
    const code = Number(lines[k].trim());
    if (!Number.isInteger(code) || lines[k].trim() === '')
      return { ok: false, message: `Line ${k + 1} of the DXF is no group code: "${lines[k].trim().slice(0, 40)}".` };
    groups.push([code, lines[k + 1].trim()]);
  }
  const entities = entitiesIn(groups);
  if (entities === null) return { ok: false, message: 'The DXF has no section ENTITIES.' };
  const unitAt = groups.findIndex(([code, value]) => code === 9 && value === '$INSUNITS');
  const scale = METRES[unitAt < 0 ? 6 : Number(groups[unitAt + 1]?.[1])] ?? 1;
  const outlines = joined(entities).flatMap((entity) => outlineOf(entity, scale));
  const things = entities.filter(({ type }) => type !== 'VERTEX' && type !== 'SEQEND').length;
  return { ok: true, outlines, left: things - outlines.length };
}

function entitiesIn(groups: readonly (readonly [number, string])[]): Entity[] | null {
  const start = groups.findIndex(([code, value]) => code === 2 && value === 'ENTITIES');
  if (start < 0) return null;
  const entities: { type: string; groups: (readonly [number, string])[] }[] = [];
  for (const [code, value] of groups.slice(start + 1)) {
    if (code === 0 && value === 'ENDSEC') break;
    if (code === 0) entities.push({ type: value, groups: [] });
    else entities.at(-1)?.groups.push([code, value]);
  }
  return entities;
}

interface Shape {
  readonly layer: string | null;
  readonly points: readonly PlanPoint[];
  readonly closed: boolean;
}

/** Each line or polyline with all its corners; an old polyline's follow it as entities of their own. */
function joined(entities: readonly Entity[]): Shape[] {
  const shapes: { layer: string | null; points: PlanPoint[]; closed: boolean }[] = [];
  for (const { type, groups } of entities) {
    const layer = groups.find(([code]) => code === 8)?.[1] ?? null;
    const closed = (Number(groups.find(([code]) => code === 70)?.[1] ?? 0) & 1) === 1;
    if (type === 'LINE')
      shapes.push({ layer, points: [...pointsAt(groups, 10), ...pointsAt(groups, 11)], closed: false });
    else if (type === 'LWPOLYLINE') shapes.push({ layer, points: pointsAt(groups, 10), closed });
    else if (type === 'POLYLINE') shapes.push({ layer, points: [], closed });
    else if (type === 'VERTEX') shapes.at(-1)?.points.push(...pointsAt(groups, 10));
  }
  return shapes;
}

/** Every point whose x has a code; its y has the code ten higher. */
function pointsAt(groups: readonly (readonly [number, string])[], code: number): PlanPoint[] {
  const of = (wanted: number): number[] => groups.filter(([each]) => each === wanted).map(([, value]) => Number(value));
  const [xs, ys] = [of(code), of(code + 10)];
  return xs.slice(0, ys.length).map((x, k): PlanPoint => [x, ys[k]]);
}

function outlineOf({ layer, points, closed }: Shape, scale: number): Outline[] {
  const scaled = points.map(([x, y]): PlanPoint => [x * scale, y * scale]);
  const fits = scaled.length >= 2 && scaled.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y));
  return fits ? [{ name: layer === '0' ? null : layer, points: scaled, closed }] : [];
}
