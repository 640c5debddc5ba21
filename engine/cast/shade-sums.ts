/** What adding up to an open total in another order leaves where all of it was taken. */
const ROUNDING = 1e-11;

/**
 * What shade takes from each cell of a grid, Σ (1 − share)·weight by channel. Shade that is the same along a run of
 * cells goes into differences (one add where it changes, whatever the length); shade that varies, cell by cell.
 * Channels stand side by side: number c of a cell is at index·channels + c.
 */
export class ShadeSums {
  readonly columns: number;
  readonly rows: number;
  readonly channels: number;
  /** Change of the shade from the cell to the left. */
  private readonly steps: Float64Array;
  private readonly cells: Float64Array;
  /** The pass's weight by channel. */
  readonly weights: Float64Array;

  constructor(columns: number, rows: number, channels: number) {
    this.columns = columns;
    this.rows = rows;
    this.channels = channels;
    this.steps = new Float64Array(columns * rows * channels);
    this.cells = new Float64Array(columns * rows * channels);
    this.weights = new Float64Array(channels);
  }

  /** From cell i of row j on, `change` more of the pass's weight is taken. */
  step(j: number, i: number, change: number): void {
    const { steps, channels, weights } = this;
    const at = (j * this.columns + i) * channels;
    for (let c = 0; c < channels; c++) steps[at + c] += change * weights[c];
  }

  /** Of the `share` that reaches cells `from` up to `to` of row j, each keeps kept[0…]; the rest is taken. */
  addCells(j: number, from: number, to: number, share: number, kept: Float64Array): void {
    const { cells, channels, weights } = this;
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

  /** What is left of an open total. @returns One number a cell, index = j·columns + i. */
  leftOf(open: number, channel: number): Float64Array {
    const { columns, rows, channels, steps, cells } = this;
    const left = new Float64Array(columns * rows);
    const nothing = ROUNDING * Math.abs(open);
    for (let j = 0; j < rows; j++) {
      let along = 0;
      for (let i = 0; i < columns; i++) {
        const index = j * columns + i;
        along += steps[index * channels + channel];
        const rest = open - along - cells[index * channels + channel];
        left[index] = Math.abs(rest) <= nothing ? 0 : rest;
      }
    }
    return left;
  }
}
