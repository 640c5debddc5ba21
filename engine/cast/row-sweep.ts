import type { CrownShadows } from './crown-shadows.ts';
import { CROWN_EDGE, OPAQUE_EDGE } from './shadow-edges.ts';
import type { ShadowEdges } from './shadow-edges.ts';
import type { ShadeSums } from './shade-sums.ts';

/** What multiplying by shares and by their inverses leaves of 1. */
const ROUNDING = 1e-13;

/**
 * Sweeps the edges of one pass over the grid, row by row up and along each row, and hands on runs of cells with the
 * same things in the way. The edges that cross a row are kept in order from row to row, where little changes.
 */
export class RowSweep {
  private readonly order: Int32Array;
  /** Crowns over the run at hand. */
  private readonly over: Int32Array;
  private readonly kept: Float64Array;

  constructor(columns: number, capacity: number, crowns: number) {
    this.order = new Int32Array(capacity);
    this.over = new Int32Array(crowns);
    this.kept = new Float64Array(columns);
  }

  /** Adds the shade of a pass to the sums and empties the edges. */
  run(edges: ShadowEdges, crowns: CrownShadows, sums: ShadeSums): void {
    const { order } = this;
    const { heads, next, u, slope, lastRow, rows } = edges;
    let active = 0;
    for (let j = 0; j < rows; j++) {
      let kept = 0;
      for (let k = 0; k < active; k++) {
        const id = order[k];
        if (lastRow[id] < j) continue;
        u[id] += slope[id];
        order[kept++] = id;
      }
      active = kept;
      for (let id = heads[j]; id >= 0; id = next[id]) order[active++] = id;
      heads[j] = -1;
      if (active === 0) continue;
      crowns.setRow(edges, j);
      for (let k = 1; k < active; k++) {
        const id = order[k];
        const crossing = u[id];
        let m = k - 1;
        while (m >= 0 && u[order[m]] > crossing) {
          order[m + 1] = order[m];
          m--;
        }
        order[m + 1] = id;
      }
      this.sweepRow(edges, crowns, sums, j, active);
    }
    edges.count = 0;
  }

  private sweepRow(edges: ShadowEdges, crowns: CrownShadows, sums: ShadeSums, j: number, active: number): void {
    const { order } = this;
    const { u, kind, sign, value, columns } = edges;
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
        const next = shadeOf(opaque, share);
        if (next !== shade) {
          sums.step(j, from, next - shade);
          shade = next;
        }
        if (overCount > 0 && opaque <= 0) this.addCrowns(crowns, sums, j, from, to, share, overCount);
        from = to;
      }
      if (kind[id] === OPAQUE_EDGE) {
        opaque += sign[id];
      } else if (kind[id] === CROWN_EDGE) {
        overCount = this.toggle(value[id], sign[id], overCount);
      } else {
        share *= value[id];
        if (Math.abs(share - 1) < ROUNDING) share = 1;
      }
    }
    const rest = shadeOf(opaque, share);
    if (rest !== shade) sums.step(j, from, rest - shade);
    if (overCount > 0 && opaque <= 0 && from < columns) this.addCrowns(crowns, sums, j, from, columns, share, overCount);
  }

  private toggle(crown: number, sign: number, overCount: number): number {
    const { over } = this;
    if (sign > 0) {
      over[overCount] = crown;
      return overCount + 1;
    }
    for (let n = 0; n < overCount; n++) if (over[n] === crown) over[n] = over[overCount - 1];
    return overCount - 1;
  }

  private addCrowns(crowns: CrownShadows, sums: ShadeSums, j: number, from: number, to: number, share: number, overCount: number): void {
    const { kept, over } = this;
    for (let i = 0; i < to - from; i++) kept[i] = 1;
    for (let n = 0; n < overCount; n++) crowns.dim(over[n], j, from, to, kept);
    sums.addCells(j, from, to, share, kept);
  }
}

/** Where two edges meet within rounding they may come in the wrong order: between them nothing shines more than the open sun. */
function shadeOf(opaque: number, share: number): number {
  return opaque > 0 ? 1 : share < 1 ? 1 - share : 0;
}
