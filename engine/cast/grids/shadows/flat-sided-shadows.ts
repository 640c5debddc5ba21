import { SEGMENT } from '../../../scene/outline.ts';
import { gridClothShare, type GridCloth, type GridLid, type GridPrism } from '../grid-solids.ts';
import type { ShadowEdges } from './shadow-edges.ts';

/** Most corners of a sheet cut by the plane. */
export const MOST_CORNERS = 5;

/**
 * Adds the shadow of a prism: its outline, with every edge by which a beam enters swept away from the sun.
 * ```
 *        b ←── exit ──                 a point right of an entry edge, closer than the shadow is long, has a beam
 *        │ inside                      that enters there; so each entry edge adds a parallelogram, and the parts
 *  swept │ entry                       of chains that cancel (the entry edge itself, sides two of them share) are
 *  ·←────a                             never added. How often the chain covers a cell is its number of crossings.
 * ```
 * @param dx, dy The sun's direction on the plan. @param reachU, reachV Level way of a beam per metre of height.
 *   [cells/m]
 * @param touch What of a beam's length does not count. [cells]
 */
export function addPrismShadow(
  edges: ShadowEdges,
  prism: GridPrism,
  dx: number,
  dy: number,
  reachU: number,
  reachV: number,
  touch: number,
): void {
  const { outline, before, after, top, share } = prism;
  const farU = top * reachU - touch * dx;
  const farV = top * reachV - touch * dy;
  if (
    isOutside(
      edges,
      prism.minU - Math.max(0, farU),
      prism.minV - Math.max(0, farV),
      prism.maxU - Math.min(0, farU),
      prism.maxV - Math.min(0, farV),
    )
  )
    return;
  const nearU = touch * dx;
  const nearV = touch * dy;
  for (let e = 0, at = 0; at < outline.length; e++, at += SEGMENT) {
    const au = outline[at];
    const av = outline[at + 1];
    const bu = outline[at + 2];
    const bv = outline[at + 3];
    if (!isEntry(outline, at, dx, dy)) {
      edges.add(au - nearU, av - nearV, bu - nearU, bv - nearV, share);
      continue;
    }
    edges.add(au - farU, av - farV, bu - farU, bv - farV, share);
    if (before[e] < 0 || !isEntry(outline, before[e] * SEGMENT, dx, dy))
      edges.add(au - nearU, av - nearV, au - farU, av - farV, share);
    if (after[e] < 0 || !isEntry(outline, after[e] * SEGMENT, dx, dy))
      edges.add(bu - farU, bv - farV, bu - nearU, bv - nearV, share);
  }
}

/** Most edges a prism's shadow can have. */
export function mostPrismEdges(prism: GridPrism): number {
  return 3 * (prism.outline.length / SEGMENT);
}

/** Adds the shadow of a lid: its outline, carried along the beam down to the plane. */
export function addLidShadow(edges: ShadowEdges, lid: GridLid, reachU: number, reachV: number): void {
  const { outline, top } = lid;
  const farU = top * reachU;
  const farV = top * reachV;
  if (isOutside(edges, lid.minU - farU, lid.minV - farV, lid.maxU - farU, lid.maxV - farV)) return;
  for (let at = 0; at < outline.length; at += SEGMENT) {
    edges.add(outline[at] - farU, outline[at + 1] - farV, outline[at + 2] - farU, outline[at + 3] - farV, 0);
  }
}

/**
 * Adds the shadow of a sheet: its corners carried along the beam down to the plane.
 * @param dx, dy, dz The sun's direction.
 * @param corners Room for its corners on the plane, 2 numbers each.
 */
export function addClothShadow(
  edges: ShadowEdges,
  sheet: GridCloth,
  dx: number,
  dy: number,
  dz: number,
  reachU: number,
  reachV: number,
  corners: Float64Array,
): void {
  const { corners: space } = sheet;
  let minU = Infinity;
  let minV = Infinity;
  let maxU = -Infinity;
  let maxV = -Infinity;
  let used = 0;
  for (let k = 0; k < space.length; k += 3) {
    const u = space[k] - space[k + 2] * reachU;
    const v = space[k + 1] - space[k + 2] * reachV;
    corners[used++] = u;
    corners[used++] = v;
    if (u < minU) minU = u;
    if (u > maxU) maxU = u;
    if (v < minV) minV = v;
    if (v > maxV) maxV = v;
  }
  if (isOutside(edges, minU, minV, maxU, maxV)) return;
  const share = gridClothShare(sheet, dx, dy, dz);
  let twiceArea = 0;
  for (let k = 0, last = used - 2; k < used; last = k, k += 2) {
    twiceArea +=
      (corners[last] - corners[0]) * (corners[k + 1] - corners[1]) -
      (corners[k] - corners[0]) * (corners[last + 1] - corners[1]);
  }
  // An upright cloth turns its shadow over when the sun changes sides.
  for (let k = 0, last = used - 2; k < used; last = k, k += 2) {
    if (twiceArea > 0) edges.add(corners[last], corners[last + 1], corners[k], corners[k + 1], share);
    else if (twiceArea < 0) edges.add(corners[k], corners[k + 1], corners[last], corners[last + 1], share);
  }
}

function isOutside(edges: ShadowEdges, minU: number, minV: number, maxU: number, maxV: number): boolean {
  return maxU < 0 || maxV < 0 || minU > edges.columns - 1 || minV > edges.rows - 1;
}

/** Whether beams enter by an edge: the sun stands to its left, the inside. */
function isEntry(outline: Float64Array, at: number, dx: number, dy: number): boolean {
  return dy * (outline[at + 2] - outline[at]) > dx * (outline[at + 3] - outline[at + 1]);
}
