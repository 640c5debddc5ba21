import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { HarmPairs } from './harm-pairs.ts';
import type { Gains } from './responses.ts';
import type { TurnedLattice } from './turned-lattice.ts';
import type { TurnedRays } from './turned-rays.ts';

/**
 * Where the harmful rays cross the level plane at one height: the cell of each pair, −1 off the lattice or not at all.
 */
export interface PlaneCrossings {
  readonly height: number;
  readonly cellU: Int32Array;
  readonly cellV: Int32Array;
}

export function planeCrossings(rays: TurnedRays, pairs: HarmPairs, height: number): PlaneCrossings {
  const { columns, rows } = rays.lattice;
  const cellU = new Int32Array(pairs.count).fill(-1);
  const cellV = new Int32Array(pairs.count).fill(-1);
  for (let p = 0; p < pairs.count; p++) {
    const view = pairs.view[p];
    const reach = (height - rays.pointZ[view]) / rays.dz[p];
    if (reach <= 0) continue;
    const u = Math.floor(rays.pointU[view] + reach * rays.du[p]);
    const v = Math.floor(rays.pointV[view] + reach * rays.dv[p]);
    if (u < 0 || v < 0 || u >= columns || v >= rows) continue;
    cellU[p] = u;
    cellV[p] = v;
  }
  return { height, cellU, cellV };
}

/**
 * Summed-area table over the plane of the most that cloth there would spare: each pair's ray where it crosses, and each
 * ray of the sky by what hiding it may cool; (columns + 1) × (rows + 1) nodes.
 */
export function payoffSums(
  rays: TurnedRays,
  pairs: HarmPairs,
  { height, cellU, cellV }: PlaneCrossings,
  gains: Gains,
  density: number,
  into: Float64Array,
): void {
  const { columns, rows } = rays.lattice;
  const width = columns + 1;
  const hides = hidesOf(rays.skyPowers.roof, density);
  into.fill(0);
  for (let p = 0; p < pairs.count; p++) if (cellU[p] >= 0) into[(cellV[p] + 1) * width + cellU[p] + 1] += gains.once[p];
  const last = rays.skyZ.length - 1;
  for (let view = 0; view < pairs.views.length; view++) {
    const { sky, skyView } = pairs.views[view];
    const rise = height - rays.pointZ[view];
    if (rise <= 0 || gains.bySky[view] <= 0) continue;
    const gain = gains.bySky[view] / skyView;
    for (let k = 0; k < last; k++) {
      const reach = rise / rays.skyZ[k];
      const u = Math.floor(rays.pointU[view] + reach * rays.skyU[k]);
      const v = Math.floor(rays.pointV[view] + reach * rays.skyV[k]);
      if (u >= 0 && v >= 0 && u < columns && v < rows) into[(v + 1) * width + u + 1] += gain * sky[k] * hides[k];
    }
  }
  sumUp(into, 0, width, rows);
}

/**
 * The most that hiding the ray straight up from every point may spare: it belongs to no cell, so every bound holds it.
 * [K·h/day]
 */
export function overheadGain(pairs: HarmPairs, gains: Gains, density: number): number {
  return pairs.views.reduce(
    (sum, { sky, skyView }, view) =>
      sum + (skyView > 0 ? (density * gains.bySky[view] * sky[sky.length - 1]) / skyView : 0),
    0,
  );
}

/** Share of each ray of the sky that cloth so many times as thick hides. */
export function hidesOf(powers: Float64Array, density: number): Float64Array {
  return powers.map((power) => 1 - (1 - density) ** power);
}

/** Sum of a table over a × b cells from node (i, j). */
export function sumOver(
  sums: Float64Array,
  start: number,
  width: number,
  i: number,
  j: number,
  a: number,
  b: number,
): number {
  const low = start + j * width + i;
  const high = low + b * width;
  return sums[high + a] - sums[high] - sums[low + a] + sums[low];
}

export function sumUp(sums: Float64Array, start: number, width: number, rows: number): void {
  for (let j = 1; j <= rows; j++) {
    const row = start + j * width;
    let along = 0;
    for (let i = 1; i < width; i++) {
      along += sums[row + i];
      sums[row + i] = along + sums[row - width + i];
    }
  }
}

/**
 * Sums over every upright plane of the lattice, for curtains: one table a line, lateral nodes × bins of height between
 * `breaks`. `along` 'u': planes v = line, lateral u.
 */
export interface CurtainSums {
  readonly lines: number;
  readonly lateral: number;
  readonly breaks: readonly number[];
  /** [line][lateral node][break] */
  readonly sums: Float64Array;
}

/** The sums over the planes along u and over those along v. */
export interface CurtainTables {
  readonly u: CurtainSums;
  readonly v: CurtainSums;
}

/** @param heights at which curtains may begin or end [m] */
export function curtainTables(
  { columns, rows }: TurnedLattice,
  heights: readonly number[],
  rays: TurnedRays,
  pairs: HarmPairs,
  gains: { readonly u: Gains; readonly v: Gains },
  density: number,
): CurtainTables {
  const breaks = [...new Set(heights)].sort((a, b) => a - b);
  const table = (lines: number, cells: number): CurtainSums => ({
    lines,
    lateral: cells + 1,
    breaks,
    sums: new Float64Array(lines * (cells + 1) * breaks.length),
  });
  const tables = { u: table(rows + 1, columns), v: table(columns + 1, rows) };
  fillCurtainSums(rays, pairs, gains.u, density, 'u', tables.u);
  fillCurtainSums(rays, pairs, gains.v, density, 'v', tables.v);
  return tables;
}

function fillCurtainSums(
  rays: TurnedRays,
  pairs: HarmPairs,
  { once: gainOfPair, bySky }: Gains,
  density: number,
  along: 'u' | 'v',
  table: CurtainSums,
): void {
  const [pointAcross, pointAside, pairAcross, pairAside, skyAcross, skyAside] =
    along === 'u'
      ? [rays.pointV, rays.pointU, rays.dv, rays.du, rays.skyV, rays.skyU]
      : [rays.pointU, rays.pointV, rays.du, rays.dv, rays.skyU, rays.skyV];
  const hides = hidesOf(rays.skyPowers[along], density);
  for (let p = 0; p < pairs.count; p++) {
    const view = pairs.view[p];
    if (gainOfPair[p] > 0)
      strewOver(
        table,
        gainOfPair[p],
        pointAcross[view],
        pointAside[view],
        rays.pointZ[view],
        pairAcross[p],
        pairAside[p],
        rays.dz[p],
      );
  }
  for (let view = 0; view < pairs.views.length; view++) {
    const { sky, skyView } = pairs.views[view];
    if (bySky[view] <= 0) continue;
    const gain = bySky[view] / skyView;
    for (let k = 0; k < sky.length - 1; k++) {
      if (sky[k] > 0)
        strewOver(
          table,
          gain * sky[k] * hides[k],
          pointAcross[view],
          pointAside[view],
          rays.pointZ[view],
          skyAcross[k],
          skyAside[k],
          rays.skyZ[k],
        );
    }
  }
  sumUpCurtains(table);
}

/**
 * Adds a gain to every upright plane that a ray crosses below the highest break.
 * @param start, go Across the planes, the point's and the ray's.
 */
function strewOver(
  { lines, lateral, breaks, sums }: CurtainSums,
  gain: number,
  start: number,
  side: number,
  z0: number,
  go: number,
  aside: number,
  dz: number,
): void {
  if (Math.abs(go) < ROUNDING) return;
  const depth = breaks.length;
  const top = breaks[depth - 1];
  const forward = go > 0 ? 1 : -1;
  for (let line = go > 0 ? Math.floor(start) + 1 : Math.ceil(start) - 1; line >= 0 && line < lines; line += forward) {
    const reach = (line - start) / go;
    const z = z0 + reach * dz;
    if (z >= top) return;
    if (z < breaks[0]) continue;
    const lane = Math.floor(side + reach * aside);
    if (lane < 0 || lane >= lateral - 1) continue;
    let bin = 1;
    while (z >= breaks[bin]) bin++;
    sums[(line * lateral + lane + 1) * depth + bin] += gain;
  }
}

function sumUpCurtains({ lines, lateral, breaks: { length: depth }, sums }: CurtainSums): void {
  for (let line = 0; line < lines; line++) {
    for (let lane = 1; lane < lateral; lane++) {
      const at = (line * lateral + lane) * depth;
      let up = 0;
      for (let bin = 1; bin < depth; bin++) {
        up += sums[at + bin];
        sums[at + bin] = up + sums[at - depth + bin];
      }
    }
  }
}

/** Sum over a curtain. @param low, high Indices of `breaks`. */
export function sumOfCurtain(
  { lateral, breaks: { length: depth }, sums }: CurtainSums,
  line: number,
  from: number,
  cells: number,
  low: number,
  high: number,
): number {
  const at = (line * lateral + from) * depth;
  const end = at + cells * depth;
  return sums[end + high] - sums[end + low] - sums[at + high] + sums[at + low];
}
