import { fadingIn } from '../../../scene/fading.ts';
import { lengthInStand } from '../../../scene/stand.ts';
import { TOUCH } from '../../../scene/ties.ts';
import { decay } from '../../decay.ts';
import type { GridStand } from '../grid-solids.ts';
import type { GridSpec } from '../grid-spec.ts';
import { BODY_EDGE, type CurvedShadow, NOWHERE, type ShadowEdges } from './shadow-edges.ts';

/**
 * A bed's shadow in one pass: its outline's hull, swept away from the sun. Within that band each cell asks how long its
 * beam runs inside the bed; where an outline is bent inward the answer may be not at all.
 */
interface StandShadow extends CurvedShadow {
  readonly solid: GridStand;
  /** −ln(openness) over the bed's height. [1/m] */
  readonly fading: number;
  /** The sweep of the whole height. [cells] */
  farU: number;
  farV: number;
}

/** Cells on a shadow's very edge are asked too: their beams may still run inside. [cells] */
const RIM = 1e-6;

/** The shadows of beds, pass by pass: their edges, and what they leave of the beam cell by cell. */
export class StandShadows {
  private readonly grid: GridSpec;
  private readonly shadows: readonly StandShadow[];
  private readonly cast: StandShadow[] = [];
  private dx = 0;
  private dy = 0;
  private dz = 1;

  constructor(stands: readonly GridStand[], grid: GridSpec) {
    this.grid = grid;
    this.shadows = stands.map((solid) => ({
      solid,
      fading: fadingIn(solid.stand.openness, solid.stand.height),
      firstRow: 0,
      lastRow: 0,
      leftEdge: 0,
      rightEdge: 0,
      farU: 0,
      farV: 0,
    }));
  }

  /** Lays the shadows of a pass out and adds their edges, numbered from `first` on. */
  addTo(edges: ShadowEdges, first: number, dx: number, dy: number, dz: number, reachU: number, reachV: number): void {
    this.dx = dx;
    this.dy = dy;
    this.dz = dz;
    this.cast.length = 0;
    for (let c = 0; c < this.shadows.length; c++) {
      const shadow = this.shadows[c];
      const { minU, maxU, minV, maxV, top } = shadow.solid;
      shadow.farU = top * reachU;
      shadow.farV = top * reachV;
      const low = Math.min(minV, minV - shadow.farV) - RIM;
      const high = Math.max(maxV, maxV - shadow.farV) + RIM;
      if (Math.max(maxU, maxU - shadow.farU) + RIM < 0) continue;
      if (Math.min(minU, minU - shadow.farU) - RIM > edges.columns - 1) continue;
      if (edges.addCurves(shadow, BODY_EDGE, first + c, low, high)) this.cast.push(shadow);
    }
  }

  /** Sets where the edges of every shadow cross a row. */
  setRow(edges: ShadowEdges, j: number): void {
    for (let n = 0; n < this.cast.length; n++) {
      const shadow = this.cast[n];
      if (j >= shadow.firstRow && j <= shadow.lastRow) setChord(shadow, edges.u, j);
    }
  }

  /** Writes the share of the beam that bed c leaves to the cells `from` up to `to` of a row. */
  shares(c: number, j: number, from: number, to: number, kept: Float64Array): void {
    const { solid, fading } = this.shadows[c];
    const { x0, y0, cell, height } = this.grid;
    const y = y0 + (j + 0.5) * cell;
    for (let i = from; i < to; i++) {
      const length = lengthInStand(solid.stand, x0 + (i + 0.5) * cell, y, height, this.dx, this.dy, this.dz);
      kept[i - from] = length > TOUCH ? decay(fading * length) : 1;
    }
  }
}

/**
 * The chord of the swept hull: the widest of the hull where it stands, the hull at the sweep's end, and its corners
 * half-way.
 */
function setChord(shadow: StandShadow, u: Float64Array, j: number): void {
  const { farU, farV } = shadow;
  const { hull } = shadow.solid;
  let low = NOWHERE;
  let high = -NOWHERE;
  let au = hull[hull.length - 2];
  let av = hull[hull.length - 1];
  for (let k = 0; k < hull.length; k += 2) {
    const bu = hull[k];
    const bv = hull[k + 1];
    for (let end = 0; end < 2; end++) {
      const v = end === 0 ? j : j + farV;
      if (av > v === bv > v) continue;
      const met = au + ((v - av) / (bv - av)) * (bu - au) - (end === 0 ? 0 : farU);
      if (met < low) low = met;
      if (met > high) high = met;
    }
    const swept = farV === 0 ? -1 : (bv - j) / farV;
    if (swept >= 0 && swept <= 1) {
      const met = bu - swept * farU;
      if (met < low) low = met;
      if (met > high) high = met;
    }
    au = bu;
    av = bv;
  }
  // Beams along the rows sweep the hull along itself.
  if (farV === 0 && low < high) {
    if (farU > 0) low -= farU;
    else high -= farU;
  }
  u[shadow.leftEdge] = low <= high ? low - RIM : NOWHERE;
  u[shadow.rightEdge] = low <= high ? high + RIM : NOWHERE;
}
