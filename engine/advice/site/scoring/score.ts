import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import { firstFrom } from '../../../scene/bearings.ts';
import { bareHarm } from '../search/bare-harm.ts';
import type { CurtainPlace, RoofPlace } from '../search/candidates.ts';
import { CROSSINGS, type HarmPairs, harmOfPair, parabolaAt, TERMS, TERMS_A_PAIR } from '../search/harm-pairs.ts';
import type { Gains, Response } from '../search/responses.ts';
import type { TurnedRays } from '../search/turned-rays.ts';
import { type Bearings, bearingsOf, cellsUnder, crossing, hangsOver } from './meets.ts';

/** What the bound of a place was added up from, so that it can be told how far the place falls short of it. */
export interface BoundParts {
  /** What the shade spares of a pair at most, by how its ray meets cloth: no more than went into the bound for it. */
  readonly once: readonly Float64Array[];
  /** As `Gains`. */
  readonly bySky: Float64Array;
}

/** @param roof, u, v what went into bounds for roofs, and for curtains along u and along v */
export function boundParts(roof: Gains, u: Gains = roof, v: Gains = roof): BoundParts {
  return {
    once: CROSSINGS.map((crossed) => {
      if (crossed.includes('roof')) return roof.once;
      return crossed.includes('u') ? u.once : v.once;
    }),
    bySky: roof.bySky,
  };
}

/**
 * What a roof (or none) and curtains of one density spare together. [K·h/day]
 * @param bound what they spare at most, added up from `parts`
 * @param enough what spares no more is not worked out to the end: some value of at most that is told
 */
export function sparedByCloth(
  rays: TurnedRays,
  pairs: HarmPairs,
  response: Response,
  roof: RoofPlace | null,
  curtains: readonly CurtainPlace[],
  { once, bySky }: BoundParts,
  bound: number,
  enough: number,
): number {
  const { met, harmOf, firstOf } = pairs;
  const hides = skyHides(rays, response.density);
  const ground = cellsUnder(roof, curtains);
  const bearings: Bearings = { round: false, rightU: 0, rightV: 0, leftU: 0, leftV: 0 };
  let spared = 0;
  // The bound, less by what the views seen so far fall short of their parts of it.
  let most = bound;
  for (let view = 0; view < pairs.views.length && most > enough - ROUNDING; view++) {
    const { skyView } = pairs.views[view];
    bearingsOf(ground, rays.pointU[view], rays.pointV[view], bearings);
    let taken = skyTaken(rays, pairs, view, bearings, roof, curtains, hides);
    if (roof !== null && hangsOver(roof, rays, view)) taken += overhead(pairs, view) * response.density;
    const hidden = skyView > 0 ? taken / skyView : 0;
    const isMet = meetPairs(rays, pairs, view, bearings, roof, curtains);
    let part = bySky[view] * hidden;
    if (isMet) for (let p = firstOf[view]; p < firstOf[view + 1]; p++) if (met[p] > 0) part += once[met[p]][p];
    const harm = isMet ? metHarm(pairs, response, view, hidden) : bareHarm(response.bare, view, hidden);
    spared += harmOf[view] - harm;
    most += harmOf[view] - harm - part;
  }
  return Math.min(spared, most);
}

/** What cloth hides of the sky from a view, straight up left out. @param hides of `skyHides` */
function skyTaken(
  rays: TurnedRays,
  pairs: HarmPairs,
  view: number,
  { round, rightU, rightV, leftU, leftV }: Bearings,
  roof: RoofPlace | null,
  curtains: readonly CurtainPlace[],
  hides: Float64Array,
): number {
  const { fan } = rays;
  const { sky } = pairs.views[view];
  const skyCount = rays.skyZ.length;
  const u = rays.pointU[view];
  const v = rays.pointV[view];
  const z = rays.pointZ[view];
  const right = round ? -Math.PI : Math.atan2(rightV, rightU);
  const left = round ? Math.PI : Math.atan2(leftV, leftU);
  const end = firstFrom(fan.bearing, (left < right ? left + 2 * Math.PI : left) + ROUNDING);
  let taken = 0;
  for (let k = firstFrom(fan.bearing, right - ROUNDING); k < end; k++) {
    const brings = sky[fan.ray[k]];
    if (brings === 0) continue;
    const crossed = crossing(roof, curtains, u, v, z, fan.u[k], fan.v[k], fan.z[k]);
    taken += brings * hides[crossed * skyCount + fan.ray[k]];
  }
  return taken;
}

/** Writes how the rays of a view's pairs meet cloth into `pairs.met`. @returns whether any does */
function meetPairs(
  rays: TurnedRays,
  { met, firstOf }: HarmPairs,
  view: number,
  { round, rightU, rightV, leftU, leftV }: Bearings,
  roof: RoofPlace | null,
  curtains: readonly CurtainPlace[],
): boolean {
  const u = rays.pointU[view];
  const v = rays.pointV[view];
  const z = rays.pointZ[view];
  let isMet = false;
  for (let p = firstOf[view]; p < firstOf[view + 1]; p++) {
    const du = rays.du[p];
    const dv = rays.dv[p];
    const passesBy = !round && (rightU * dv - rightV * du < -ROUNDING || du * leftV - dv * leftU < -ROUNDING);
    met[p] = passesBy ? 0 : crossing(roof, curtains, u, v, z, du, dv, rays.dz[p]);
    if (met[p] !== 0) isMet = true;
  }
  return isMet;
}

/** What a view counts for of whose pairs some meet cloth: `pairs.met` tells how, by an index of `CROSSINGS`. */
function metHarm(pairs: HarmPairs, { terms, bare }: Response, view: number, hidden: number): number {
  const { met, weight, firstOf } = pairs;
  const end = firstOf[view + 1];
  let harm = 0;
  if (bare.isFruit[view] === 1) {
    for (let p = firstOf[view]; p < end; p++) harm += harmOfPair(pairs, terms, p, met[p], hidden);
    return harm;
  }
  for (let p = firstOf[view]; p < end; p++) {
    if (met[p] === 0) continue;
    const open = p * TERMS_A_PAIR;
    const under = open + met[p] * TERMS;
    harm += weight[p] * (Math.max(0, parabolaAt(terms, under, hidden)) - Math.max(0, parabolaAt(terms, open, hidden)));
  }
  return bareHarm(bare, view, hidden) + harm;
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

/** What the ray straight up brings. */
function overhead(pairs: HarmPairs, view: number): number {
  const { sky } = pairs.views[view];
  return sky[sky.length - 1];
}
