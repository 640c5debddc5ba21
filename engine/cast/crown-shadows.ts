import { lengthInCrown, shareOfLength } from '../scene/crown.ts';
import { decay } from './decay.ts';
import type { GridCrown } from './grid-solids.ts';
import type { GridSpec } from './grid-spec.ts';
import type { ShadowEdges } from './shadow-edges.ts';

/** Numbers of one crown's shadow in one pass, side by side in `CrownShadows.shadows`. */
const SHADOW = 8;
/** Centre of the shadow and how far it leans from row to row: the row's chord is centred on u + lean·(j − v). [cells] */
const U = 0;
const V = 1;
const LEAN = 2;
/** Half the chord squared = wide − narrowing·(j − v)². [cells²] */
const WIDE = 3;
const NARROWING = 4;
/** Exponent of e on the chord's middle row per cell of half chord; 0: not a whole round crown, take the plain way. */
const DEPTH = 5;
/** Shadow of a column or of what is cut by the plane: two discs and what lies between. Vector from the near to the far one. [cells] */
const RUN_U = 6;
const RUN_V = 7;

/** Where the edges of a shadow stand that does not meet a row: right of every grid, where no sweep comes. */
const NOWHERE = Infinity;

/**
 * The crowns' shadows of one pass. Each row of a shadow is one run of cells; how much each cell keeps comes from the
 * beam's length in the crown: for a round crown above the plane a square root and a table, else `lengthInCrown`.
 */
export class CrownShadows {
  private readonly grid: GridSpec;
  private readonly crowns: readonly GridCrown[];
  private readonly shadows: Float64Array;
  /** −ln(openness)/depth of each crown. [1/m] */
  private readonly fading: Float64Array;
  /** Crowns with a shadow on the grid in this pass, and their two edges. */
  readonly cast: Int32Array;
  readonly left: Int32Array;
  readonly right: Int32Array;
  castCount = 0;
  private dx = 0;
  private dy = 0;
  private dz = 1;

  constructor(crowns: readonly GridCrown[], grid: GridSpec) {
    this.grid = grid;
    this.crowns = crowns;
    this.shadows = new Float64Array(SHADOW * crowns.length);
    this.fading = Float64Array.from(crowns, ({ crown }) => -Math.log(crown.openness) / (crown.top - crown.base));
    this.cast = new Int32Array(crowns.length);
    this.left = new Int32Array(crowns.length);
    this.right = new Int32Array(crowns.length);
  }

  /** Lays out the crowns' shadows of a pass and adds their edges. @param reachU, reachV Level way of a beam per metre of height. [cells/m] */
  addTo(edges: ShadowEdges, dx: number, dy: number, dz: number, reachU: number, reachV: number): void {
    this.dx = dx;
    this.dy = dy;
    this.dz = dz;
    this.castCount = 0;
    for (let c = 0; c < this.crowns.length; c++) {
      const crown = this.crowns[c];
      const whole = crown.crown.kind === 'round' && crown.crown.base >= this.grid.height && crown.crown.openness > 0;
      const reach = whole ? this.layEllipse(c, crown, reachU, reachV) : this.layStadium(c, crown, reachU, reachV);
      const at = c * SHADOW;
      const { shadows } = this;
      const low = Math.min(shadows[at + V], shadows[at + V] + shadows[at + RUN_V]) - reach;
      const high = Math.max(shadows[at + V], shadows[at + V] + shadows[at + RUN_V]) + reach;
      if (!(high >= 0 && low <= edges.rows - 1)) continue;
      const first = low <= 0 ? 0 : Math.ceil(low);
      const last = high >= edges.rows - 1 ? edges.rows - 1 : Math.floor(high);
      if (last < first) continue;
      this.left[c] = edges.addCrown(c, first, last, 1);
      this.right[c] = edges.addCrown(c, first, last, -1);
      this.cast[this.castCount++] = c;
    }
  }

  /** The ellipse under a round crown that stands wholly above the plane. @returns How far it reaches up and down from its centre. [cells] */
  private layEllipse(c: number, { crown, u, v, foot, top }: GridCrown, reachU: number, reachV: number): number {
    const { shadows, dx, dy, dz } = this;
    const h = (top - foot) / 2;
    const ux = dx / crown.radius;
    const uy = dy / crown.radius;
    const uz = dz / h;
    const squared = ux * ux + uy * uy + uz * uz;
    // Of the beam to the cell (di, dj) off the centre: (half of its length inside · squared)² = squared − qu·di² + 2·quv·di·dj − qv·dj².
    const scale = (this.grid.cell / crown.radius) ** 2;
    const qu = (uz * uz + uy * uy) * scale;
    const qv = (uz * uz + ux * ux) * scale;
    const quv = ux * uy * scale;
    const at = c * SHADOW;
    shadows[at + U] = u - (foot + h) * reachU;
    shadows[at + V] = v - (foot + h) * reachV;
    shadows[at + LEAN] = quv / qu;
    shadows[at + WIDE] = squared / qu;
    shadows[at + NARROWING] = (qv - (quv * quv) / qu) / qu;
    shadows[at + DEPTH] = (2 * Math.sqrt(qu) * this.fading[c]) / squared;
    shadows[at + RUN_U] = 0;
    shadows[at + RUN_V] = 0;
    return Math.sqrt(shadows[at + WIDE] / shadows[at + NARROWING]);
  }

  /** A stadium that holds the shadow of any crown: discs under its foot and its top, and what lies between. */
  private layStadium(c: number, { u, v, radius, foot, top }: GridCrown, reachU: number, reachV: number): number {
    const at = c * SHADOW;
    this.shadows[at + U] = u - foot * reachU;
    this.shadows[at + V] = v - foot * reachV;
    this.shadows[at + DEPTH] = 0;
    this.shadows[at + RUN_U] = -(top - foot) * reachU;
    this.shadows[at + RUN_V] = -(top - foot) * reachV;
    return radius;
  }

  /** Sets where the edges of every crown cast in this pass cross a row. */
  setRow(edges: ShadowEdges, j: number): void {
    const { shadows, castCount, cast, left, right } = this;
    for (let n = 0; n < castCount; n++) {
      const c = cast[n];
      const at = c * SHADOW;
      const dj = j - shadows[at + V];
      if (shadows[at + DEPTH] > 0) {
        const squared = shadows[at + WIDE] - shadows[at + NARROWING] * dj * dj;
        const half = squared > 0 ? Math.sqrt(squared) : 0;
        const middle = half > 0 ? shadows[at + U] + shadows[at + LEAN] * dj : NOWHERE;
        edges.u[left[c]] = middle - half;
        edges.u[right[c]] = middle + half;
      } else {
        this.setStadiumRow(edges, c, dj);
      }
    }
  }

  /** The chord of a stadium: the widest of its two discs and of the band between them. */
  private setStadiumRow(edges: ShadowEdges, c: number, dj: number): void {
    const { shadows, crowns } = this;
    const at = c * SHADOW;
    const { radius } = crowns[c];
    const runU = shadows[at + RUN_U];
    const runV = shadows[at + RUN_V];
    let low = Infinity;
    let high = -Infinity;
    const near = radius * radius - dj * dj;
    if (near >= 0) {
      low = -Math.sqrt(near);
      high = -low;
    }
    const far = radius * radius - (dj - runV) * (dj - runV);
    if (far >= 0) {
      low = Math.min(low, runU - Math.sqrt(far));
      high = Math.max(high, runU + Math.sqrt(far));
    }
    const run = Math.hypot(runU, runV);
    if (run > 0) {
      // Sides of the band: from ± radius beside the near disc's middle, on for the run.
      for (let side = -1; side <= 1; side += 2) {
        const sideV = (side * radius * runU) / run;
        const along = runV === 0 ? -1 : (dj - sideV) / runV;
        if (along < 0 || along > 1) continue;
        const crossing = (-side * radius * runV) / run + along * runU;
        low = Math.min(low, crossing);
        high = Math.max(high, crossing);
      }
    }
    edges.u[this.left[c]] = low < high ? shadows[at + U] + low : NOWHERE;
    edges.u[this.right[c]] = low < high ? shadows[at + U] + high : NOWHERE;
  }

  /**
   * Multiplies what a run of cells keeps by a crown's share.
   * @param kept One number a cell, kept[0] for the cell `from`.
   */
  dim(c: number, j: number, from: number, to: number, kept: Float64Array): void {
    const at = c * SHADOW;
    const { shadows } = this;
    const depth = shadows[at + DEPTH];
    if (depth > 0) {
      const dj = j - shadows[at + V];
      const squared = shadows[at + WIDE] - shadows[at + NARROWING] * dj * dj;
      const middle = shadows[at + U] + shadows[at + LEAN] * dj;
      for (let i = from; i < to; i++) {
        const half = squared - (i - middle) * (i - middle);
        if (half > 0) kept[i - from] *= decay(depth * Math.sqrt(half));
      }
      return;
    }
    const { crown } = this.crowns[c];
    const { x0, y0, cell, height } = this.grid;
    const y = y0 + (j + 0.5) * cell;
    for (let i = from; i < to; i++) {
      kept[i - from] *= shareOfLength(crown, lengthInCrown(crown, x0 + (i + 0.5) * cell, y, height, this.dx, this.dy, this.dz));
    }
  }
}
