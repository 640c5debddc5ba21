import type { ShadeSink } from './row-sweep.ts';

/** What adding up to an open total in another order leaves where all of it was taken. */
const ROUNDING = 1e-11;

/**
 * What shade takes from each cell of a grid, Σ (1 − share)·weight by channel. Shade that is the same along a run of
 * cells goes into differences (one add where it changes, whatever the length); shade that varies, cell by cell.
 * Channels stand side by side: number c of a cell is at index·channels + c.
 */
export class ShadeSums implements ShadeSink {
  readonly columns: number;
  readonly rows: number;
  private readonly channels: readonly Float64Array[];
  /** Change of the shade from the cell to the left. */
  private readonly steps: Float64Array;
  private readonly cells: Float64Array;
  /** The pass's weight by channel, and the sum of those opened so far. */
  private readonly weights: Float64Array;
  private readonly totals: Float64Array;

  constructor(columns: number, rows: number, channels: readonly Float64Array[]) {
    this.columns = columns;
    this.rows = rows;
    this.channels = channels;
    this.steps = new Float64Array(columns * rows * channels.length);
    this.cells = new Float64Array(columns * rows * channels.length);
    this.weights = new Float64Array(channels.length);
    this.totals = new Float64Array(channels.length);
  }

  /**
   * Counts a pass as open to every cell; what is stepped or added until the next is its shade.
   * @returns Whether it weighs anything.
   */
  open(pass: number): boolean {
    const { totals, weights } = this;
    const weighs = this.reopen(pass);
    for (let c = 0; c < weights.length; c++) totals[c] += weights[c];
    return weighs;
  }

  /** Turns again to a pass already counted, to change its shade. @returns Whether it weighs anything. */
  reopen(pass: number): boolean {
    const { channels, weights } = this;
    let weighs = false;
    for (let c = 0; c < channels.length; c++) {
      weights[c] = channels[c][pass];
      if (weights[c] !== 0) weighs = true;
    }
    return weighs;
  }

  step(j: number, i: number, change: number): void {
    const { steps, weights } = this;
    const channels = weights.length;
    const at = (j * this.columns + i) * channels;
    for (let c = 0; c < channels; c++) steps[at + c] += change * weights[c];
  }

  addCells(j: number, from: number, to: number, share: number, kept: Float64Array): void {
    const { cells, weights } = this;
    const channels = weights.length;
    let at = (j * this.columns + from) * channels;
    if (channels === 1) {
      const weight = share * weights[0];
      for (let i = 0; i < to - from; i++) cells[at++] += weight * (1 - kept[i]);
      return;
    }
    for (let i = 0; i < to - from; i++) {
      const taken = share * (1 - kept[i]);
      for (let c = 0; c < channels; c++) cells[at + c] += taken * weights[c];
      at += channels;
    }
  }

  /** Takes `taken` of the pass's weight from one cell. */
  addCell(j: number, i: number, taken: number): void {
    const { cells, weights } = this;
    const at = (j * this.columns + i) * weights.length;
    for (let c = 0; c < weights.length; c++) cells[at + c] += taken * weights[c];
  }

  /** What is left of the open totals. @returns One array a channel, index = j·columns + i. */
  left(): Float64Array[] {
    return this.channels.map((_, c) => this.leftOf(c));
  }

  private leftOf(channel: number): Float64Array {
    const { columns, rows, steps, cells } = this;
    const channels = this.channels.length;
    const open = this.totals[channel];
    const nothing = ROUNDING * Math.abs(open);
    const left = new Float64Array(columns * rows);
    for (let j = 0; j < rows; j++) {
      let along = 0;
      for (let index = j * columns; index < (j + 1) * columns; index++) {
        along += steps[index * channels + channel];
        const rest = open - along - cells[index * channels + channel];
        left[index] = Math.abs(rest) <= nothing ? 0 : rest;
      }
    }
    return left;
  }
}
