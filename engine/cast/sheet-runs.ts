import type { Sheet } from '../scene/solids.ts';
import { gridSheet } from './grid-solids.ts';
import type { GridSpec } from './grid-spec.ts';
import type { Directions } from './passes.ts';
import { MOST_CORNERS } from './shadows.ts';

/**
 * The shadow of one sheet in every pass: on each line (pass·rows + j) the cells `from` up to, not including, `to`, none
 * where they are equal; only rows `firstRow` to `lastRow` of a pass can have any.
 */
export class SheetRuns {
  share = 1;
  readonly from: Int16Array;
  readonly to: Int16Array;
  readonly firstRow: Int16Array;
  readonly lastRow: Int16Array;
  private readonly grid: GridSpec;
  private readonly directions: Directions;
  private readonly corners = new Float64Array(2 * MOST_CORNERS);

  constructor(grid: GridSpec, directions: Directions) {
    const { count } = directions;
    this.grid = grid;
    this.directions = directions;
    this.from = new Int16Array(count * grid.rows);
    this.to = new Int16Array(count * grid.rows);
    this.firstRow = new Int16Array(count);
    this.lastRow = new Int16Array(count).fill(-1);
  }

  /** Lays the sheet's shadows out. @param live Which passes it stands in (1) or not (0). Null: no sheet. */
  lay(sheet: Sheet | null, live: Uint8Array): void {
    const { grid, directions, from, to, firstRow, lastRow, corners } = this;
    const { count, x, y, z } = directions;
    const { corners: space, share } = sheet === null ? { corners: new Float64Array(0), share: 1 } : gridSheet(sheet, grid);
    this.share = share;
    const edge = grid.columns - 1;
    for (let k = 0; k < count; k++) {
      // Empty what was laid here before.
      for (let line = k * grid.rows + firstRow[k], end = k * grid.rows + lastRow[k]; line <= end; line++) from[line] = to[line];
      firstRow[k] = 0;
      lastRow[k] = -1;
      if (live[k] === 0 || space.length === 0) continue;
      const reachU = x[k] / (z[k] * grid.cell);
      const reachV = y[k] / (z[k] * grid.cell);
      let used = 0;
      let low = Infinity;
      let high = -Infinity;
      let left = Infinity;
      let right = -Infinity;
      for (let n = 0; n < space.length; n += 3) {
        const u = space[n] - space[n + 2] * reachU;
        const v = space[n + 1] - space[n + 2] * reachV;
        corners[used++] = u;
        corners[used++] = v;
        if (v < low) low = v;
        if (v > high) high = v;
        if (u < left) left = u;
        if (u > right) right = u;
      }
      if (!(high > 0 && low <= grid.rows - 1 && right > 0 && left <= edge)) continue;
      const first = low <= 0 ? 0 : Math.ceil(low);
      const last = high > grid.rows - 1 ? grid.rows - 1 : Math.ceil(high) - 1;
      firstRow[k] = first;
      lastRow[k] = last;
      const base = k * grid.rows;
      for (let j = first; j <= last; j++) {
        from[base + j] = grid.columns;
        to[base + j] = 0;
      }
      // Each row between a convex polygon's lowest and highest corner meets two of its edges.
      for (let n = 0, m = used - 2; n < used; m = n, n += 2) {
        const lower = corners[n + 1] < corners[m + 1] ? n : m;
        const upper = lower === n ? m : n;
        const av = corners[lower + 1];
        const bv = corners[upper + 1];
        if (!(bv > 0 && av <= grid.rows - 1) || av === bv) continue;
        const start = av <= 0 ? 0 : Math.ceil(av);
        const end = bv > grid.rows - 1 ? grid.rows - 1 : Math.ceil(bv) - 1;
        const slope = (corners[upper] - corners[lower]) / (bv - av);
        let u = corners[lower] + (start - av) * slope;
        for (let line = base + start; line <= base + end; line++) {
          const i = u <= 0 ? 0 : u > edge ? grid.columns : Math.ceil(u);
          if (i < from[line]) from[line] = i;
          if (i > to[line]) to[line] = i;
          u += slope;
        }
      }
    }
  }
}
