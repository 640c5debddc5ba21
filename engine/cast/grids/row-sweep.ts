import type { BodyShadows } from './shadows/body-shadows.ts';
import { OPAQUE_EDGE, VEIL_EDGE } from './shadows/shadow-edges.ts';
import type { ShadowEdges } from './shadows/shadow-edges.ts';

/** Takes in the shade of a pass, run by run. */
export interface ShadeSink {
  /** From cell i of row j on, `change` more of the beam is taken (0 at each row's start). */
  step(j: number, i: number, change: number): void;
  /**
   * Of the `share` that the steps leave to cells `from` up to `to` of row j, each keeps kept[0…]; the rest is taken as
   * well.
   */
  addCells(j: number, from: number, to: number, share: number, kept: Float64Array): void;
}

/** So many edges that begin in one row are sorted; fewer are put in their places one by one. */
const MANY = 24;
/** What multiplying by shares and by their inverses leaves of 1. */
const ROUNDING = 1e-13;

/**
 * Sweeps the edges of one pass over the grid, row by row up and along each row, and adds up runs of cells with the same
 * things in the way. The edges that cross a row are kept in order from row to row, where little changes.
 */
export class RowSweep {
  private readonly order: Int32Array;
  /** Edges that begin in the row at hand. */
  private readonly starting: Int32Array;
  /** Bodies over the run at hand. */
  private readonly over: Int32Array;
  private readonly kept: Float64Array;
  private readonly more: Float64Array;

  constructor(columns: number, capacity: number, bodies: number) {
    this.order = new Int32Array(capacity);
    this.starting = new Int32Array(capacity);
    this.over = new Int32Array(bodies);
    this.kept = new Float64Array(columns);
    this.more = new Float64Array(columns);
  }

  /** Hands the shade of a pass on, rows upward and along each row, and empties the edges. */
  run(edges: ShadowEdges, bodies: BodyShadows, sink: ShadeSink): void {
    const { order } = this;
    const { heads, u, slope, lastRow, rows } = edges;
    let active = 0;
    for (let j = 0; j < rows; j++) {
      const before = active;
      if (before === 0 && heads[j] < 0) continue;
      bodies.setRow(edges, j);
      active = 0;
      for (let k = 0; k < before; k++) {
        const id = order[k];
        if (lastRow[id] < j) continue;
        const crossing = u[id] + slope[id];
        u[id] = crossing;
        let m = active++;
        for (; m > 0 && u[order[m - 1]] > crossing; m--) order[m] = order[m - 1];
        order[m] = id;
      }
      active = this.takeIn(edges, heads[j], active);
      heads[j] = -1;
      if (active > 0) this.sweepRow(edges, bodies, sink, j, active);
    }
    edges.count = 0;
  }

  /**
   * Puts the edges that begin in a row among those that cross it already: many by a sort and a merge, so that a
   * crowded yard does not take the square of its edges. @returns how many cross the row now
   */
  private takeIn({ next, u }: ShadowEdges, head: number, active: number): number {
    const { order, starting } = this;
    let count = 0;
    for (let id = head; id >= 0; id = next[id]) starting[count++] = id;
    if (count <= MANY) {
      for (let n = 0; n < count; n++) {
        const crossing = u[starting[n]];
        let m = active + n;
        for (; m > 0 && u[order[m - 1]] > crossing; m--) order[m] = order[m - 1];
        order[m] = starting[n];
      }
      return active + count;
    }
    starting.subarray(0, count).sort((a, b) => u[a] - u[b]);
    let free = active + count - 1;
    let last = active - 1;
    for (let n = count - 1; n >= 0; free--) {
      if (last >= 0 && u[order[last]] > u[starting[n]]) order[free] = order[last--];
      else order[free] = starting[n--];
    }
    return active + count;
  }

  private sweepRow(edges: ShadowEdges, bodies: BodyShadows, sink: ShadeSink, j: number, active: number): void {
    const { order } = this;
    const { u, step, value, columns } = edges;
    let opaque = 0;
    let share = 1;
    let overCount = 0;
    let from = 0;
    let shade = 0;
    for (let k = 0; k < active; k++) {
      const id = order[k];
      const crossing = u[id];
      if (crossing > columns - 1) break;
      const to = crossing <= 0 ? 0 : Math.ceil(crossing);
      if (to > from) {
        const here = shadeOf(opaque, share);
        if (here !== shade) {
          sink.step(j, from, here - shade);
          shade = here;
        }
        if (overCount > 0 && opaque <= 0) this.addBodies(bodies, sink, j, from, to, share, overCount);
        from = to;
      }
      const change = step[id];
      if (change === OPAQUE_EDGE || change === -OPAQUE_EDGE) {
        opaque += change;
      } else if (change === VEIL_EDGE || change === -VEIL_EDGE) {
        share *= value[id];
        if (Math.abs(share - 1) < ROUNDING) share = 1;
      } else {
        overCount = this.toggle(value[id], change > 0, overCount);
      }
    }
    const here = shadeOf(opaque, share);
    if (here !== shade) sink.step(j, from, here - shade);
    if (overCount > 0 && opaque <= 0) this.addBodies(bodies, sink, j, from, columns, share, overCount);
  }

  private toggle(body: number, begins: boolean, overCount: number): number {
    const { over } = this;
    if (begins) {
      over[overCount] = body;
      return overCount + 1;
    }
    for (let n = 0; n < overCount; n++) if (over[n] === body) over[n] = over[overCount - 1];
    return overCount - 1;
  }

  private addBodies(
    bodies: BodyShadows,
    sink: ShadeSink,
    j: number,
    from: number,
    to: number,
    share: number,
    overCount: number,
  ): void {
    const { kept, more, over } = this;
    bodies.shares(over[0], j, from, to, kept);
    for (let n = 1; n < overCount; n++) {
      bodies.shares(over[n], j, from, to, more);
      for (let i = 0; i < to - from; i++) kept[i] *= more[i];
    }
    sink.addCells(j, from, to, share, kept);
  }
}

/**
 * Where two edges meet within rounding they may come in the wrong order: between them nothing shines more than the open
 * sun.
 */
function shadeOf(opaque: number, share: number): number {
  return opaque > 0 ? 1 : share < 1 ? 1 - share : 0;
}
