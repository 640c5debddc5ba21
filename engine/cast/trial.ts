import type { Scene, Sheet } from '../scene/solids.ts';
import type { GridSpec } from './grid-spec.ts';
import { KeptShade } from './kept-shade.ts';
import { PassCaster } from './pass-caster.ts';
import { directionsOf } from './passes.ts';
import type { Passes } from './passes.ts';
import { ShadeSums } from './shade-sums.ts';
import { SheetRuns } from './sheet-runs.ts';

/** A yard cast once, over which cloth can be tried: each trial costs only what changes from the one before. */
export interface TrialCaster {
  /**
   * Hangs sheets over the yard, in place of those of the call before; an empty list takes them down. They add to the
   * yard as one more feature would: shares multiply.
   * @param hangs 1 for the passes in which they hang, 0 for the others; absent: in all.
   */
  hang(sheets: readonly Sheet[], hangs?: Uint8Array): void;
  /** Σ share·weight over the passes as the yard now stands, like `castGrid`'s. New arrays at every call. */
  sums(): Float64Array[];
}

/**
 * Casts a yard and keeps its shade, run by run. `hang` then compares the new sheets' shadows with the old ones' on each
 * row of each pass and changes the sums where they differ, by what the yard lets through there.
 * Keeps about 30 MB for a season over a yard of 18 × 12 m at 0.25 m, six times as much at 0.1 m. Grids up to 32,767 columns.
 */
export function createTrialCaster(scene: Scene, grid: GridSpec, passes: Passes, channels: readonly Float64Array[]): TrialCaster {
  const directions = directionsOf(scene, passes);
  const sums = new ShadeSums(grid.columns, grid.rows, channels);
  const yard = new KeptShade(passes.count, grid.rows, sums);
  const caster = new PassCaster(scene, grid, directions);
  const bright = new Uint8Array(passes.count);
  for (let k = 0; k < passes.count; k++) {
    if (directions.dark[k] === 1 || !sums.open(k)) continue;
    bright[k] = 1;
    yard.open(k);
    caster.cast(k, yard);
  }
  yard.close();

  let hung: SheetRuns[] = [];
  let spare: SheetRuns[] = [];
  const live = new Uint8Array(passes.count);
  return {
    hang(sheets, hangs) {
      for (let k = 0; k < passes.count; k++) live[k] = bright[k] & (hangs?.[k] ?? 1);
      const next = spare;
      while (next.length < sheets.length) next.push(new SheetRuns(grid, directions));
      next.forEach((runs, n) => runs.lay(sheets[n] ?? null, live));
      const exchange = new SheetExchange(hung, next, grid, yard, sums);
      for (let k = 0; k < passes.count; k++) if (bright[k] === 1) exchange.run(k);
      spare = hung;
      hung = next;
    },
    sums: () => sums.left(),
  };
}

/** Changes the sums from one set of sheets to another. */
class SheetExchange {
  private readonly before: readonly SheetRuns[];
  private readonly after: readonly SheetRuns[];
  private readonly grid: GridSpec;
  private readonly yard: KeptShade;
  private readonly sums: ShadeSums;
  /** Cells at which a sheet's shadow begins or ends on the row at hand. */
  private readonly cuts: Int32Array;

  constructor(before: readonly SheetRuns[], after: readonly SheetRuns[], grid: GridSpec, yard: KeptShade, sums: ShadeSums) {
    this.before = before;
    this.after = after;
    this.grid = grid;
    this.yard = yard;
    this.sums = sums;
    this.cuts = new Int32Array(2 * (before.length + after.length));
  }

  run(pass: number): void {
    const { before, after, grid } = this;
    let first = grid.rows;
    let last = -1;
    for (let n = 0; n < before.length; n++) {
      first = Math.min(first, before[n].firstRow[pass]);
      last = Math.max(last, before[n].lastRow[pass]);
    }
    for (let n = 0; n < after.length; n++) {
      first = Math.min(first, after[n].firstRow[pass]);
      last = Math.max(last, after[n].lastRow[pass]);
    }
    let opened = false;
    for (let j = first; j <= last; j++) {
      const line = pass * grid.rows + j;
      if (this.same(line)) continue;
      if (!opened) this.sums.reopen(pass);
      opened = true;
      this.exchangeRow(line, j);
    }
  }

  /** Whether nothing changes on a line: the same sheets over the same cells. */
  private same(line: number): boolean {
    const { before, after } = this;
    const sheets = Math.max(before.length, after.length);
    for (let n = 0; n < sheets; n++) {
      const was = n < before.length && before[n].from[line] < before[n].to[line];
      const is = n < after.length && after[n].from[line] < after[n].to[line];
      if (was !== is) return false;
      if (!was) continue;
      if (before[n].from[line] !== after[n].from[line] || before[n].to[line] !== after[n].to[line] || before[n].share !== after[n].share) return false;
    }
    return true;
  }

  private exchangeRow(line: number, j: number): void {
    const { before, after, cuts } = this;
    let count = insertCuts(cuts, 0, before, line);
    count = insertCuts(cuts, count, after, line);
    for (let n = 1; n < count; n++) {
      const middle = cuts[n - 1];
      if (cuts[n] === middle) continue;
      const change = shareAt(after, line, middle) - shareAt(before, line, middle);
      if (change !== 0) this.change(line, j, middle, cuts[n], change);
    }
  }

  /** Lets `change` more of what the yard leaves through to cells `from` up to `to` of a line. */
  private change(line: number, j: number, from: number, to: number, change: number): void {
    const { yard, sums, grid } = this;
    const { runsOf, runStart, runShare, spansOf, spanFrom, spanTo, spanAt, taken } = yard;
    let share = 1;
    let r = runsOf[line];
    const runsEnd = runsOf[line + 1];
    for (; r < runsEnd && runStart[r] <= from; r++) share = runShare[r];
    let stepped = -share * change;
    if (stepped !== 0) sums.step(j, from, stepped);
    for (; r < runsEnd && runStart[r] < to; r++) {
      const next = -runShare[r] * change;
      sums.step(j, runStart[r], next - stepped);
      stepped = next;
    }
    if (stepped !== 0 && to < grid.columns) sums.step(j, to, -stepped);
    for (let s = spansOf[line]; s < spansOf[line + 1]; s++) {
      const start = Math.max(from, spanFrom[s]);
      const end = Math.min(to, spanTo[s]);
      for (let i = start; i < end; i++) sums.addCell(j, i, taken[spanAt[s] + i - spanFrom[s]] * change);
    }
  }
}

/** What sheets together leave to a cell of a line. */
function shareAt(sheets: readonly SheetRuns[], line: number, i: number): number {
  let share = 1;
  for (let n = 0; n < sheets.length; n++) if (sheets[n].from[line] <= i && i < sheets[n].to[line]) share *= sheets[n].share;
  return share;
}

/** Puts the ends of sheets' runs on a line among the sorted cuts. @returns How many there are now. */
function insertCuts(cuts: Int32Array, count: number, sheets: readonly SheetRuns[], line: number): number {
  for (let n = 0; n < sheets.length; n++) {
    const from = sheets[n].from[line];
    const to = sheets[n].to[line];
    if (from >= to) continue;
    for (let end = 0; end < 2; end++) {
      const cut = end === 0 ? from : to;
      let m = count++;
      for (; m > 0 && cuts[m - 1] > cut; m--) cuts[m] = cuts[m - 1];
      cuts[m] = cut;
    }
  }
  return count;
}
