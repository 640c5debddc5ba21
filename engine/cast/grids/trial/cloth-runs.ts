import type { ClothSheet } from '../../../scene/solids.ts';
import type { Directions } from '../../passes.ts';
import { gridCloth, gridClothShare } from '../grid-solids.ts';
import type { GridSpec } from '../grid-spec.ts';
import { MOST_CORNERS } from '../shadows/flat-sided-shadows.ts';

const NO_CORNERS = new Float64Array(0);

/** The shadow of one sheet in every pass, a run of cells on each line (pass·rows + j). */
export class ClothRuns {
  /** What the sheet lets through in each pass. */
  readonly share: Float64Array;
  /** 2 a line: the run's first cell and the cell after its last; no run where the second is not the greater. */
  readonly ends: Int16Array;
  /** Rows of each pass that can have a run; none where the last is below the first. */
  readonly firstRow: Int16Array;
  readonly lastRow: Int16Array;
  private readonly grid: GridSpec;
  private readonly directions: Directions;
  private readonly corners = new Float64Array(2 * MOST_CORNERS);

  constructor(grid: GridSpec, directions: Directions) {
    const { count } = directions;
    this.share = new Float64Array(count).fill(1);
    this.grid = grid;
    this.directions = directions;
    this.ends = new Int16Array(2 * count * grid.rows);
    this.firstRow = new Int16Array(count).fill(grid.rows);
    this.lastRow = new Int16Array(count).fill(-1);
  }

  /** Lays the sheet's shadows out. @param live Which passes it stands in (1) or not (0). Null: no sheet. */
  lay(sheet: ClothSheet | null, live: Uint8Array): void {
    const { grid, directions, ends, firstRow, lastRow, corners } = this;
    const { count, x, y, z } = directions;
    const onGrid = sheet === null ? null : gridCloth(sheet, grid);
    const space = onGrid?.corners ?? NO_CORNERS;
    const edge = grid.columns - 1;
    for (let k = 0; k < count; k++) {
      const base = k * grid.rows;
      // Empty what was laid here before.
      if (lastRow[k] >= firstRow[k]) ends.fill(0, 2 * (base + firstRow[k]), 2 * (base + lastRow[k] + 1));
      firstRow[k] = grid.rows;
      lastRow[k] = -1;
      if (live[k] === 0 || onGrid === null || space.length === 0) continue;
      this.share[k] = gridClothShare(onGrid, x[k], y[k], z[k]);
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
      for (let j = first; j <= last; j++) ends[2 * (base + j)] = grid.columns;
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
        for (let at = 2 * (base + start); at <= 2 * (base + end); at += 2) {
          const i = u <= 0 ? 0 : u > edge ? grid.columns : Math.ceil(u);
          if (i < ends[at]) ends[at] = i;
          if (i > ends[at + 1]) ends[at + 1] = i;
          u += slope;
        }
      }
    }
  }
}
