/** Edits of the corners of a path, an outline, or the boundary. Indices count the points as they stand in the file. */

import { closedRing } from '../geometry/shapes.ts';
import type { Plan, PlanPoint } from '../types.ts';
import { mapFeature } from './edit-feature.ts';

/** Whose corners: a thing's by its id, or the site's boundary. */
export type CornersOf = { readonly feature: string } | 'boundary';

/** Puts a corner before the one at `index` (at the end: `index` = number of points). */
export function insertCorner(plan: Plan, whose: CornersOf, index: number, point: PlanPoint): Plan {
  return editCorners(plan, whose, (points) => points.toSpliced(index, 0, point));
}

/** Moves a corner; the last point of a closed list goes with its first. */
export function moveCorner(plan: Plan, whose: CornersOf, index: number, point: PlanPoint): Plan {
  return editCorners(plan, whose, (points) => {
    if (points[index] === undefined) return points;
    const last = points.length - 1;
    const next = points.with(index, point);
    if (repeatsFirst(points) && (index === 0 || index === last)) return next.with(0, point).with(last, point);
    return next;
  });
}

/** Takes a corner out, unless too few would be left. */
export function deleteCorner(plan: Plan, whose: CornersOf, index: number): Plan {
  return editCorners(plan, whose, (points, least) => {
    const closed = repeatsFirst(points);
    const corners = closed ? points.slice(0, -1) : points;
    const at = closed && index === points.length - 1 ? 0 : index;
    if (corners[at] === undefined || corners.length <= least) return points;
    const rest = corners.toSpliced(at, 1);
    return closed ? closedRing(rest) : rest;
  });
}

function editCorners(
  plan: Plan,
  whose: CornersOf,
  edit: (points: readonly PlanPoint[], least: number) => readonly PlanPoint[],
): Plan {
  if (whose === 'boundary') {
    const boundary = edit(plan.site.boundary, 3);
    return boundary === plan.site.boundary ? plan : { ...plan, site: { ...plan.site, boundary } };
  }
  return mapFeature(plan, whose.feature, (feature) => {
    if ('outline' in feature) {
      const outline = edit(feature.outline, 3);
      return outline === feature.outline ? feature : { ...feature, outline };
    }
    if ('path' in feature) {
      const path = edit(feature.path, feature.kind === 'eye' ? 1 : 2);
      return path === feature.path ? feature : { ...feature, path };
    }
    return feature;
  });
}

function repeatsFirst(points: readonly PlanPoint[]): boolean {
  const last = points[points.length - 1];
  return points.length > 2 && points[0][0] === last[0] && points[0][1] === last[1];
}
