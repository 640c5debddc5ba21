import { type HarmPairs, harmOfPair, type Response } from './harm-pairs.ts';
import type { CurtainPlace, RoofPlace } from './candidates.ts';
import { type PlaneCrossings, sumOver, type TurnedRays } from './plane-sums.ts';

/** A beam meets cloth only beyond this from its point, as everywhere. [m] */
const TOUCH = 1e-9;
const EDGE = 1e-9;

/** What a roof alone spares. @param sky `skySums` at its height [K·h/day] */
export function sparedByRoof(rays: TurnedRays, pairs: HarmPairs, response: Response, { cellU, cellV }: PlaneCrossings, sky: Float64Array, { i, j, a, b, height }: RoofPlace): number {
  const { density, terms } = response;
  const width = rays.lattice.columns + 1;
  const size = width * (rays.lattice.rows + 1);
  const [right, front] = [i + a, j + b];
  let harm = 0;
  for (let view = 0; view < pairs.views.length; view++) {
    const { skyView } = pairs.views[view];
    let taken = sumOver(sky, view * size, width, i, j, a, b);
    if (height > rays.pointZ[view] && isWithin(rays.pointU[view], i, right) && isWithin(rays.pointV[view], j, front)) taken += overhead(pairs, view);
    const hidden = skyView > 0 ? (density * taken) / skyView : 0;
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      const crossed = cellU[p] >= i && cellU[p] < right && cellV[p] >= j && cellV[p] < front ? 1 : 0;
      harm += harmOfPair(pairs, terms, p, crossed, hidden);
    }
  }
  return pairs.harm - harm;
}

/** What a roof (or none) and curtains of one density spare together. [K·h/day] */
export function sparedByCloth(rays: TurnedRays, pairs: HarmPairs, response: Response, roof: RoofPlace | null, curtains: readonly CurtainPlace[]): number {
  const { density, terms } = response;
  const passes = [1, 1 - density, (1 - density) ** 2];
  const last = rays.skyZ.length - 1;
  let harm = 0;
  for (let view = 0; view < pairs.views.length; view++) {
    const { sky, skyView } = pairs.views[view];
    const u = rays.pointU[view];
    const v = rays.pointV[view];
    const z = rays.pointZ[view];
    let taken = 0;
    for (let k = 0; k < last; k++) {
      if (sky[k] === 0) continue;
      let met = roof !== null && meetsRoof(roof, u, v, z, rays.skyU[k], rays.skyV[k], rays.skyZ[k]) ? 1 : 0;
      for (const curtain of curtains) if (meetsCurtain(curtain, u, v, z, rays.skyU[k], rays.skyV[k], rays.skyZ[k])) met++;
      if (met > 0) taken += sky[k] * (1 - passes[met]);
    }
    if (roof !== null && roof.height > z && isWithin(u, roof.i, roof.i + roof.a) && isWithin(v, roof.j, roof.j + roof.b)) taken += overhead(pairs, view) * density;
    const hidden = skyView > 0 ? taken / skyView : 0;
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      let met = roof !== null && meetsRoof(roof, u, v, z, rays.du[p], rays.dv[p], rays.dz[p]) ? 1 : 0;
      for (const curtain of curtains) if (meetsCurtain(curtain, u, v, z, rays.du[p], rays.dv[p], rays.dz[p])) met++;
      harm += harmOfPair(pairs, terms, p, met, hidden);
    }
  }
  return pairs.harm - harm;
}

/** What the ray straight up brings. */
function overhead(pairs: HarmPairs, view: number): number {
  const { sky } = pairs.views[view];
  return sky[sky.length - 1];
}

function isWithin(value: number, low: number, high: number): boolean {
  return value >= low - EDGE && value <= high + EDGE;
}

function meetsRoof({ i, j, a, b, height }: RoofPlace, u: number, v: number, z: number, du: number, dv: number, dz: number): boolean {
  const reach = (height - z) / dz;
  if (reach <= TOUCH) return false;
  const x = u + reach * du - i;
  const y = v + reach * dv - j;
  return x >= 0 && x < a && y >= 0 && y < b;
}

function meetsCurtain(curtain: CurtainPlace, u: number, v: number, z: number, du: number, dv: number, dz: number): boolean {
  return curtain.along === 'u' ? meetsUpright(curtain, v, u, z, dv, du, dz) : meetsUpright(curtain, u, v, z, du, dv, dz);
}

/** @param start, go The point and the way across the curtain's plane. @param side, aside Along it. */
function meetsUpright({ line, from, cells, bottom, top }: CurtainPlace, start: number, side: number, z: number, go: number, aside: number, dz: number): boolean {
  if (Math.abs(go) < EDGE) return false;
  const reach = (line - start) / go;
  if (reach <= TOUCH) return false;
  const height = z + reach * dz;
  if (height < bottom || height >= top) return false;
  const lane = side + reach * aside - from;
  return lane >= 0 && lane < cells;
}
