import { firstFrom } from '../../../scene/bearings.ts';
import { CROSSING_OF, CROSSINGS, type HarmPairs, harmOfPair } from '../search/harm-pairs.ts';
import { type Response } from '../search/responses.ts';
import { bareHarm } from '../search/bare-harm.ts';
import type { CurtainPlace, RoofPlace } from '../search/candidates.ts';
import { type PlaneCrossings, sumOver } from '../search/plane-sums.ts';
import type { TurnedRays } from '../search/turned-rays.ts';
import { TOUCH } from '../../../scene/ties.ts';

const EDGE = 1e-9;

/**
 * What a roof alone spares. [K·h/day]
 * @param sky `skySums` at its height
 * @param enough what spares no more is not worked out to the end: some value of at most that is told
 */
export function sparedByRoof(
  rays: TurnedRays,
  pairs: HarmPairs,
  response: Response,
  { cellU, cellV, within }: PlaneCrossings,
  sky: Float64Array,
  { i, j, a, b, height }: RoofPlace,
  enough = -Infinity,
): number {
  const { density, bare } = response;
  const { met } = pairs;
  const most = pairs.harm - enough;
  const width = rays.lattice.columns + 1;
  const size = width * (rays.lattice.rows + 1);
  const [right, front] = [i + a, j + b];
  let harm = 0;
  for (let view = 0; view < pairs.views.length && harm < most; view++) {
    const { skyView } = pairs.views[view];
    let taken = sumOver(sky, view * size, width, i, j, a, b);
    if (height > rays.pointZ[view] && isWithin(rays.pointU[view], i, right) && isWithin(rays.pointV[view], j, front))
      taken += density * overhead(pairs, view);
    const hidden = skyView > 0 ? taken / skyView : 0;
    const at = 4 * view;
    let isMet = false;
    if (within[at] < right && within[at + 1] >= i && within[at + 2] < front && within[at + 3] >= j)
      for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
        met[p] = cellU[p] >= i && cellU[p] < right && cellV[p] >= j && cellV[p] < front ? 1 : 0;
        if (met[p] === 1) isMet = true;
      }
    harm += isMet ? metHarm(pairs, response, view, met, hidden) : bareHarm(bare, view, hidden);
  }
  return pairs.harm - harm;
}

/**
 * What a roof (or none) and curtains of one density spare together. [K·h/day]
 * @param enough as of `sparedByRoof`
 */
export function sparedByCloth(
  rays: TurnedRays,
  pairs: HarmPairs,
  response: Response,
  roof: RoofPlace | null,
  curtains: readonly CurtainPlace[],
  enough = -Infinity,
): number {
  const { density, bare } = response;
  const { met } = pairs;
  const most = pairs.harm - enough;
  const { fan } = rays;
  const hides = skyHides(rays, density);
  const skyCount = rays.skyZ.length;
  const ground = groundOf(roof, curtains);
  const bearings: Bearings = { round: false, rightU: 0, rightV: 0, leftU: 0, leftV: 0 };
  let harm = 0;
  for (let view = 0; view < pairs.views.length && harm < most; view++) {
    const { sky, skyView } = pairs.views[view];
    const u = rays.pointU[view];
    const v = rays.pointV[view];
    const z = rays.pointZ[view];
    bearingsOf(ground, u, v, bearings);
    const { round, rightU, rightV, leftU, leftV } = bearings;
    const right = round ? -Math.PI : Math.atan2(rightV, rightU);
    const left = round ? Math.PI : Math.atan2(leftV, leftU);
    const end = firstFrom(fan.bearing, (left < right ? left + 2 * Math.PI : left) + EDGE);
    let taken = 0;
    for (let k = firstFrom(fan.bearing, right - EDGE); k < end; k++) {
      const brings = sky[fan.ray[k]];
      if (brings === 0) continue;
      const met = crossing(roof, curtains, u, v, z, fan.u[k], fan.v[k], fan.z[k]);
      taken += brings * hides[met * skyCount + fan.ray[k]];
    }
    if (
      roof !== null &&
      roof.height > z &&
      isWithin(u, roof.i, roof.i + roof.a) &&
      isWithin(v, roof.j, roof.j + roof.b)
    )
      taken += overhead(pairs, view) * density;
    const hidden = skyView > 0 ? taken / skyView : 0;
    let isMet = false;
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      const du = rays.du[p];
      const dv = rays.dv[p];
      const passesBy = !round && (rightU * dv - rightV * du < -EDGE || du * leftV - dv * leftU < -EDGE);
      met[p] = passesBy ? 0 : crossing(roof, curtains, u, v, z, du, dv, rays.dz[p]);
      if (met[p] !== 0) isMet = true;
    }
    harm += isMet ? metHarm(pairs, response, view, met, hidden) : bareHarm(bare, view, hidden);
  }
  return pairs.harm - harm;
}

/** What a view counts for of whose pairs some meet cloth. @param met Of each pair, an index of `CROSSINGS`. */
function metHarm(pairs: HarmPairs, { terms, bare }: Response, view: number, met: Uint8Array, hidden: number): number {
  const isFruit = bare.isFruit[view] === 1;
  let harm = isFruit ? 0 : bareHarm(bare, view, hidden);
  for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
    if (isFruit) harm += harmOfPair(pairs, terms, p, met[p], hidden);
    else if (met[p] !== 0) harm += onTop(pairs, terms, p, met[p], hidden);
  }
  return harm;
}

/** What a pair counts for whose ray meets cloth, beyond what it would bare. [K·h/day] */
function onTop(pairs: HarmPairs, terms: Float64Array, p: number, crossed: number, hidden: number): number {
  return harmOfPair(pairs, terms, p, crossed, hidden) - harmOfPair(pairs, terms, p, 0, hidden);
}

const hidesKnown = new WeakMap<TurnedRays, Map<number, Float64Array>>();

/** What cloth of a density hides of each ray of the sky that it meets so: [crossing][ray]. */
function skyHides(rays: TurnedRays, density: number): Float64Array {
  let byDensity = hidesKnown.get(rays);
  if (!byDensity) hidesKnown.set(rays, (byDensity = new Map()));
  let hides = byDensity.get(density);
  if (!hides) {
    const count = rays.skyZ.length;
    hides = Float64Array.from({ length: CROSSINGS.length * count }, (_, at) => {
      const power = powerOf(rays, Math.floor(at / count), at % count);
      return 1 - (1 - density) ** power;
    });
    byDensity.set(density, hides);
  }
  return hides;
}

/** How many times as thick cloth is that a ray of the sky crosses so. @param met Index of `CROSSINGS`. */
function powerOf({ skyPowers: { roof, u, v } }: TurnedRays, met: number, ray: number): number {
  switch (CROSSINGS[met]) {
    case 'none':
      return 0;
    case 'roof':
      return roof[ray];
    case 'u':
      return u[ray];
    case 'v':
      return v[ray];
    case 'roof and u':
      return roof[ray] + u[ray];
    case 'roof and v':
      return roof[ray] + v[ray];
    case 'u and v':
      return u[ray] + v[ray];
    case 'u twice':
      return 2 * u[ray];
    case 'v twice':
      return 2 * v[ray];
  }
}

/** How a ray from a point meets a roof and curtains: an index of `CROSSINGS`. */
function crossing(
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

function groundOf(roof: RoofPlace | null, curtains: readonly CurtainPlace[]): Ground {
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
interface Bearings {
  round: boolean;
  rightU: number;
  rightV: number;
  leftU: number;
  leftV: number;
}

function bearingsOf({ left, right, back, front }: Ground, u: number, v: number, into: Bearings): void {
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

/** What the ray straight up brings. */
function overhead(pairs: HarmPairs, view: number): number {
  const { sky } = pairs.views[view];
  return sky[sky.length - 1];
}

function isWithin(value: number, low: number, high: number): boolean {
  return value >= low - EDGE && value <= high + EDGE;
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
  if (Math.abs(go) < EDGE) return false;
  const reach = (line - start) / go;
  if (reach <= TOUCH) return false;
  const height = z + reach * dz;
  if (height < bottom || height >= top) return false;
  const lane = side + reach * aside - from;
  return lane >= 0 && lane < cells;
}
