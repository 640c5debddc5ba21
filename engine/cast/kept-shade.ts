import type { ShadeSink } from './row-sweep.ts';

/**
 * The shade of every pass on every row of a grid, kept as it was swept and handed on to a second sink.
 * A line is a pass's row: line = pass·rows + j. On it, `runShare[r]` of the beam is left from cell `runStart[r]` on, for
 * r from `runsOf[line]` up to `runsOf[line + 1]` (before the first: all of it), less what crowns take of single cells:
 * `taken[spanAt[s] + i − spanFrom[s]]` of cell i from `spanFrom[s]` up to `spanTo[s]`, s from `spansOf[line]` on.
 */
export class KeptShade implements ShadeSink {
  readonly runsOf: Int32Array;
  readonly spansOf: Int32Array;
  runStart = new Int32Array(1024);
  runShare = new Float64Array(1024);
  spanFrom = new Int32Array(256);
  spanTo = new Int32Array(256);
  spanAt = new Int32Array(256);
  taken = new Float64Array(4096);
  private readonly rows: number;
  private readonly onto: ShadeSink;
  private pass = 0;
  /** Lines before this one are complete. */
  private line = 0;
  private shade = 0;
  private runs = 0;
  private spans = 0;
  private cells = 0;

  constructor(passes: number, rows: number, onto: ShadeSink) {
    this.runsOf = new Int32Array(passes * rows + 1);
    this.spansOf = new Int32Array(passes * rows + 1);
    this.rows = rows;
    this.onto = onto;
  }

  /** What comes next is the shade of this pass. Passes come in order; those left out have none. */
  open(pass: number): void {
    this.pass = pass;
  }

  /** No more comes. */
  close(): void {
    this.toLine(this.runsOf.length - 1);
  }

  step(j: number, i: number, change: number): void {
    this.onto.step(j, i, change);
    this.toLine(this.pass * this.rows + j);
    if (this.runs === this.runStart.length) {
      this.runStart = grown(this.runStart, Int32Array);
      this.runShare = grown(this.runShare, Float64Array);
    }
    this.shade += change;
    this.runStart[this.runs] = i;
    this.runShare[this.runs++] = 1 - this.shade;
  }

  addCells(j: number, from: number, to: number, share: number, kept: Float64Array): void {
    this.onto.addCells(j, from, to, share, kept);
    this.toLine(this.pass * this.rows + j);
    if (this.spans === this.spanFrom.length) {
      this.spanFrom = grown(this.spanFrom, Int32Array);
      this.spanTo = grown(this.spanTo, Int32Array);
      this.spanAt = grown(this.spanAt, Int32Array);
    }
    while (this.cells + to - from > this.taken.length) this.taken = grown(this.taken, Float64Array);
    this.spanFrom[this.spans] = from;
    this.spanTo[this.spans] = to;
    this.spanAt[this.spans++] = this.cells;
    for (let n = 0; n < to - from; n++) this.taken[this.cells++] = share * (1 - kept[n]);
  }

  private toLine(line: number): void {
    if (line === this.line) return;
    this.shade = 0;
    while (this.line < line) {
      this.line++;
      this.runsOf[this.line] = this.runs;
      this.spansOf[this.line] = this.spans;
    }
  }
}

function grown<T extends Int32Array | Float64Array>(full: T, Kind: new (length: number) => T): T {
  const larger = new Kind(2 * full.length);
  larger.set(full);
  return larger;
}
