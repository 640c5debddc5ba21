/** Lines and polygons of a GeoJSON file (RFC 7946), or of one that holds plan metres in its form. */

import { planPointOf } from '../../geometry/lon-lat.ts';
import { isRecord } from '../../schema/say.ts';
import type { Plan, PlanPoint } from '../../types.ts';
import type { Outline, OutlinesRead } from './types.ts';

/** Degrees lie this near to the site's own, or the numbers are metres. [°] */
const NEAR_SITE = 0.2;

interface Found {
  readonly name: string | null;
  readonly points: readonly PlanPoint[];
  readonly closed: boolean;
}

export function geoJsonOutlines(text: string, plan: Plan): OutlinesRead {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return { ok: false, message: 'The GeoJSON is no JSON: it may have been cut off.' };
  }
  if (!isRecord(json) || typeof json.type !== 'string')
    return { ok: false, message: 'The file is no GeoJSON: it has no "type".' };
  const things = json.type === 'FeatureCollection' && Array.isArray(json.features) ? json.features : [json];
  const found = things.flatMap((thing) => outlinesOf(thing));
  const { latitude, longitude } = plan.site;
  const onGlobe = found
    .flatMap(({ points }) => points)
    .every(([x, y]) => Math.abs(x - longitude) < NEAR_SITE && Math.abs(y - latitude) < NEAR_SITE);
  const outlines = found.map((one): Outline => ({
    ...one,
    points: onGlobe ? one.points.map((point) => planPointOf(plan, point)) : one.points,
  }));
  return { ok: true, outlines, left: things.filter((thing) => outlinesOf(thing).length === 0).length };
}

function outlinesOf(thing: unknown): Found[] {
  if (!isRecord(thing)) return [];
  const geometry = thing.type === 'Feature' && isRecord(thing.geometry) ? thing.geometry : thing;
  const name = isRecord(thing.properties) && typeof thing.properties.name === 'string' ? thing.properties.name : null;
  const lineIn = (value: unknown): Found[] => {
    const points = pathIn(value);
    return points === null ? [] : [{ name, points, closed: false }];
  };
  const ringIn = (value: unknown): Found[] => {
    const points = pathIn(value);
    // Its last point is its first again.
    return points === null ? [] : [{ name, points: points.slice(0, -1), closed: true }];
  };
  const parts = Array.isArray(geometry.coordinates) ? (geometry.coordinates as readonly unknown[]) : [];
  switch (geometry.type) {
    case 'LineString':
      return lineIn(parts);
    case 'MultiLineString':
      return parts.flatMap(lineIn);
    case 'Polygon':
      return ringIn(parts[0]);
    case 'MultiPolygon':
      return parts.flatMap((polygon) => (Array.isArray(polygon) ? ringIn(polygon[0]) : []));
    default:
      return [];
  }
}

function pathIn(value: unknown): PlanPoint[] | null {
  if (!Array.isArray(value) || value.length < 2) return null;
  const points = value.map((point: unknown): PlanPoint | null =>
    Array.isArray(point) && Number.isFinite(point[0]) && Number.isFinite(point[1])
      ? [Number(point[0]), Number(point[1])]
      : null,
  );
  return points.every((point) => point !== null) ? points : null;
}
