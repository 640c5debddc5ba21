import { lengthInCrown } from '../../../scene/crown.ts';
import { fadingIn } from '../../../scene/fading.ts';
import { TOUCH } from '../../../scene/ties.ts';
import { decay } from '../../decay.ts';
import type { GridCrown } from '../grid-solids.ts';
import type { GridSpec } from '../grid-spec.ts';
import { BODY_EDGE, type CurvedShadow, NOWHERE, OPAQUE_EDGE, type ShadowEdges } from './shadow-edges.ts';

/**
 * A crown's shadow in one pass. What its row's chord is:
 *
 * - `whole`: a round crown above the plane throws an ellipse. The chord is centred on u + lean·(j − v), half of it
 *   squared is wide − narrowing·(j − v)²; the cell's share is e^−(depth·√(half² − distance from the middle²)).
 * - Else a stadium holds the shadow: a disc under the foot, one under the top, and the band between them. It is the
 *   very shadow of a column; for the rest each cell asks `lengthInCrown`.
 */
interface CrownShadow extends CurvedShadow {
  readonly solid: GridCrown;
  readonly whole: boolean;
  /** A trunk: its stadium is an opaque run, and no cell is asked. */
  readonly opaque: boolean;
  /** −ln(openness) over the crown's depth. [1/m] */
  readonly fading: number;
  u: number;
  v: number;
  lean: number;
  wide: number;
  narrowing: number;
  depth: number;
  /** From the disc under the foot to the one under the top, and from a disc's middle to the band's side. [cells] */
  runU: number;
  runV: number;
  sideU: number;
  sideV: number;
}

/** The shadows of round bodies, pass by pass: their edges, and what they leave of the beam cell by cell. */
export class CrownShadows {
  private readonly grid: GridSpec;
  private readonly shadows: readonly CrownShadow[];
  /** Shadows with a row on the grid in this pass. */
  private readonly cast: CrownShadow[] = [];
  private dx = 0;
  private dy = 0;
  private dz = 1;

  constructor(crowns: readonly GridCrown[], grid: GridSpec) {
    this.grid = grid;
    this.shadows = crowns.map((solid) => {
      const { kind, base, openness } = solid.crown;
      return {
        solid,
        whole: kind === 'round' && base >= grid.height && openness > 0,
        opaque: kind === 'column' && openness === 0,
        fading: fadingIn(openness, solid.crown.top - base),
        firstRow: 0,
        lastRow: 0,
        leftEdge: 0,
        rightEdge: 0,
        u: 0,
        v: 0,
        lean: 0,
        wide: 0,
        narrowing: 0,
        depth: 0,
        runU: 0,
        runV: 0,
        sideU: 0,
        sideV: 0,
      };
    });
  }

  /**
   * Lays the shadows of a pass out and adds their edges.
   * @param reachU, reachV Level way of a beam per metre of height. [cells/m]
   */
  addTo(edges: ShadowEdges, dx: number, dy: number, dz: number, reachU: number, reachV: number): void {
    this.dx = dx;
    this.dy = dy;
    this.dz = dz;
    this.cast.length = 0;
    for (let c = 0; c < this.shadows.length; c++) {
      const shadow = this.shadows[c];
      if (isElsewhere(shadow.solid, reachU, reachV, edges)) continue;
      const spread = shadow.whole ? this.layEllipse(shadow, reachU, reachV) : layStadium(shadow, reachU, reachV);
      const low = Math.min(shadow.v, shadow.v + shadow.runV) - spread;
      const high = Math.max(shadow.v, shadow.v + shadow.runV) + spread;
      if (edges.addCurves(shadow, shadow.opaque ? OPAQUE_EDGE : BODY_EDGE, c, low, high)) this.cast.push(shadow);
    }
  }

  /** @returns How far the ellipse reaches up and down from its centre. [cells] */
  private layEllipse(shadow: CrownShadow, reachU: number, reachV: number): number {
    const { crown, u, v, foot, top } = shadow.solid;
    const h = (top - foot) / 2;
    const ux = this.dx / crown.radius;
    const uy = this.dy / crown.radius;
    const uz = this.dz / h;
    const squared = ux * ux + uy * uy + uz * uz;
    // For the beam to a cell (di, dj) off the centre, (half its length inside · squared)² = squared − qu·di² +
    // 2·quv·di·dj − qv·dj².
    const scale = (this.grid.cell / crown.radius) ** 2;
    const qu = (uz * uz + uy * uy) * scale;
    const qv = (uz * uz + ux * ux) * scale;
    const quv = ux * uy * scale;
    shadow.u = u - (foot + h) * reachU;
    shadow.v = v - (foot + h) * reachV;
    shadow.lean = quv / qu;
    shadow.wide = squared / qu;
    shadow.narrowing = (qv - (quv * quv) / qu) / qu;
    shadow.depth = (2 * Math.sqrt(qu) * shadow.fading) / squared;
    return Math.sqrt(shadow.wide / shadow.narrowing);
  }

  /** Sets where the edges of every shadow cross a row. */
  setRow(edges: ShadowEdges, j: number): void {
    const { cast } = this;
    for (let n = 0; n < cast.length; n++) {
      const shadow = cast[n];
      if (j < shadow.firstRow || j > shadow.lastRow) continue;
      if (!shadow.whole) {
        setStadiumRow(shadow, edges.u, j);
        continue;
      }
      const dj = j - shadow.v;
      const squared = shadow.wide - shadow.narrowing * dj * dj;
      const half = squared > 0 ? Math.sqrt(squared) : 0;
      const middle = half > 0 ? shadow.u + shadow.lean * dj : NOWHERE;
      edges.u[shadow.leftEdge] = middle - half;
      edges.u[shadow.rightEdge] = middle + half;
    }
  }

  /**
   * Writes the share of the beam that a crown leaves to the cells `from` up to `to` of a row, kept[0] for the cell
   * `from`.
   */
  shares(c: number, j: number, from: number, to: number, kept: Float64Array): void {
    const shadow = this.shadows[c];
    if (!shadow.whole) return this.sharesPlainly(shadow, j, from, to, kept);
    const { depth } = shadow;
    const dj = j - shadow.v;
    const squared = shadow.wide - shadow.narrowing * dj * dj;
    let along = from - shadow.u - shadow.lean * dj;
    for (let n = 0; n < to - from; n++) {
      const half = squared - along * along;
      along += 1;
      kept[n] = half > 0 ? decay(depth * Math.sqrt(half)) : 1;
    }
  }

  private sharesPlainly(shadow: CrownShadow, j: number, from: number, to: number, kept: Float64Array): void {
    const { crown } = shadow.solid;
    const { x0, y0, cell, height } = this.grid;
    const y = y0 + (j + 0.5) * cell;
    for (let i = from; i < to; i++) {
      const length = lengthInCrown(crown, x0 + (i + 0.5) * cell, y, height, this.dx, this.dy, this.dz);
      kept[i - from] = length > TOUCH ? decay(shadow.fading * length) : 1;
    }
  }
}

/** Whether the whole stadium of a crown, which holds its shadow whatever its kind, lies off the grid. */
function isElsewhere(
  { u, v, radius, foot, top }: GridCrown,
  reachU: number,
  reachV: number,
  { columns, rows }: ShadowEdges,
): boolean {
  const nearU = u - foot * reachU;
  const nearV = v - foot * reachV;
  const farU = u - top * reachU;
  const farV = v - top * reachV;
  if (Math.max(nearU, farU) + radius < 0 || Math.min(nearU, farU) - radius > columns - 1) return true;
  return Math.max(nearV, farV) + radius < 0 || Math.min(nearV, farV) - radius > rows - 1;
}

/** @returns The radius of its discs. [cells] */
function layStadium(shadow: CrownShadow, reachU: number, reachV: number): number {
  const { u, v, radius, foot, top } = shadow.solid;
  shadow.u = u - foot * reachU;
  shadow.v = v - foot * reachV;
  shadow.runU = -(top - foot) * reachU;
  shadow.runV = -(top - foot) * reachV;
  const run = Math.sqrt(shadow.runU * shadow.runU + shadow.runV * shadow.runV);
  shadow.sideU = run > 0 ? (-radius * shadow.runV) / run : 0;
  shadow.sideV = run > 0 ? (radius * shadow.runU) / run : 0;
  return radius;
}

/** The chord of a stadium: the widest of its two discs and of the band between them. */
function setStadiumRow(shadow: CrownShadow, u: Float64Array, j: number): void {
  const { runU, runV, sideU, sideV } = shadow;
  const { radius } = shadow.solid;
  const dj = j - shadow.v;
  let low = NOWHERE;
  let high = -NOWHERE;
  const near = radius * radius - dj * dj;
  if (near > 0) {
    high = Math.sqrt(near);
    low = -high;
  }
  const far = radius * radius - (dj - runV) * (dj - runV);
  if (far > 0) {
    const half = Math.sqrt(far);
    low = Math.min(low, runU - half);
    high = Math.max(high, runU + half);
  }
  if (runV !== 0) {
    const one = (dj - sideV) / runV;
    if (one >= 0 && one <= 1) {
      low = Math.min(low, sideU + one * runU);
      high = Math.max(high, sideU + one * runU);
    }
    const other = (dj + sideV) / runV;
    if (other >= 0 && other <= 1) {
      low = Math.min(low, other * runU - sideU);
      high = Math.max(high, other * runU - sideU);
    }
  }
  u[shadow.leftEdge] = low < high ? shadow.u + low : NOWHERE;
  u[shadow.rightEdge] = low < high ? shadow.u + high : NOWHERE;
}
