/** How rays from a point of the yard meet cloth of the lattice, and under which bearings it is seen. */

import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import { TOUCH } from '../../../scene/ties.ts';
import type { CurtainPlace, RoofPlace } from '../search/candidates.ts';
import { CROSSING_OF } from '../search/harm-pairs.ts';
import type { TurnedRays } from '../search/turned-rays.ts';

/** How a ray from a point meets a roof and curtains: an index of `CROSSINGS`. */
export function crossing(
  roof: RoofPlace | null,
  curtains: readonly CurtainPlace[],
  u: number,
  v: number,
  z: number,
  du: number,
  dv: number,
  dz: number,
): number {
  const roofs = roof !== null && meetsRoof(roof, u, v, z, du, dv, dz) ? 1 : 0;
  let alongU = 0;
  let alongV = 0;
  for (let c = 0; c < curtains.length; c++) {
    if (!meetsCurtain(curtains[c], u, v, z, du, dv, dz)) continue;
    if (curtains[c].along === 'u') alongU++;
    else alongV++;
  }
  return CROSSING_OF[roofs][alongU][alongV];
}

/** The rectangle of the lattice over which cloth hangs; a curtain's is a line. [cells] */
interface Ground {
  readonly left: number;
  readonly right: number;
  readonly back: number;
  readonly front: number;
}

export function cellsUnder(roof: RoofPlace | null, curtains: readonly CurtainPlace[]): Ground {
  if (roof !== null) return { left: roof.i, right: roof.i + roof.a, back: roof.j, front: roof.j + roof.b };
  const [{ along, line, from, cells }] = curtains;
  return along === 'u'
    ? { left: from, right: from + cells, back: line, front: line }
    : { left: line, right: line, back: from, front: from + cells };
}

/**
 * Bearings under which ground is seen from a point: from the right vector counter-clockwise to the left one, or all
 * `round`.
 */
export interface Bearings {
  round: boolean;
  rightU: number;
  rightV: number;
  leftU: number;
  leftV: number;
}

export function bearingsOf({ left, right, back, front }: Ground, u: number, v: number, into: Bearings): void {
  const before = u < left;
  const beyond = u > right;
  const below = v < back;
  const above = v > front;
  into.round = !before && !beyond && !below && !above;
  into.rightU = (below || (beyond && !above) ? right : left) - u;
  into.rightV = (before || (below && !beyond) ? back : front) - v;
  into.leftU = (above || (beyond && !below) ? right : left) - u;
  into.leftV = (before || (above && !beyond) ? front : back) - v;
}

/** Whether a roof hangs right over a view's point, its edges included. */
export function hangsOver(
  { i, j, a, b, height }: RoofPlace,
  { pointU, pointV, pointZ }: TurnedRays,
  view: number,
): boolean {
  return height > pointZ[view] && isWithin(pointU[view], i, i + a) && isWithin(pointV[view], j, j + b);
}

function isWithin(value: number, low: number, high: number): boolean {
  return value >= low - ROUNDING && value <= high + ROUNDING;
}

function meetsRoof(
  { i, j, a, b, height }: RoofPlace,
  u: number,
  v: number,
  z: number,
  du: number,
  dv: number,
  dz: number,
): boolean {
  const reach = (height - z) / dz;
  if (reach <= TOUCH) return false;
  const x = u + reach * du - i;
  const y = v + reach * dv - j;
  return x >= 0 && x < a && y >= 0 && y < b;
}

function meetsCurtain(
  curtain: CurtainPlace,
  u: number,
  v: number,
  z: number,
  du: number,
  dv: number,
  dz: number,
): boolean {
  return curtain.along === 'u'
    ? meetsUpright(curtain, v, u, z, dv, du, dz)
    : meetsUpright(curtain, u, v, z, du, dv, dz);
}

/** @param start, go The point and the way across the curtain's plane. @param side, aside Along it. */
function meetsUpright(
  { line, from, cells, bottom, top }: CurtainPlace,
  start: number,
  side: number,
  z: number,
  go: number,
  aside: number,
  dz: number,
): boolean {
  if (Math.abs(go) < ROUNDING) return false;
  const reach = (line - start) / go;
  if (reach <= TOUCH) return false;
  const height = z + reach * dz;
  if (height < bottom || height >= top) return false;
  const lane = side + reach * aside - from;
  return lane >= 0 && lane < cells;
}
