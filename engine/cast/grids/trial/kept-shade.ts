import type { ShadeSink } from '../row-sweep.ts';

/**
 * The shade of every pass on every row of a grid, kept as it was swept and handed on to a second sink.
 * A line is a pass's row: line = pass·rows + j. What is read together stands side by side, for a trial goes through all
 * of it and waits for memory more than for anything else.
 */
export class KeptShade implements ShadeSink {
  /**
   * 2 a line: where its runs begin in `runs` and its spans in `spans`, counted in runs and spans; they end where the
   * next line's begin.
   */
  readonly lines: Int32Array;
  /**
   * 2 a run: its first cell, and the share of the beam that is left from there on. Before a line's first run all of it
   * is.
   */
  runs = new Float64Array(2048);
  /** 3 a span: its first cell, the cell after its last, and where in `taken` its cells' numbers begin. */
  spans = new Int32Array(1024);
  /** What crowns take of the beam besides, one number a cell of a span. */
  taken = new Float64Array(4096);
  private readonly rows: number;
  private readonly onto: ShadeSink;
  private pass = 0;
  /** Lines before this one are complete. */
  private line = 0;
  private shade = 0;
  private runCount = 0;
  private spanCount = 0;
  private cellCount = 0;

  constructor(passes: number, rows: number, onto: ShadeSink) {
    this.lines = new Int32Array(2 * (passes * rows + 1));
    this.rows = rows;
    this.onto = onto;
  }

  /** What comes next is the shade of this pass. Passes come in order; those left out have none. */
  open(pass: number): void {
    this.pass = pass;
  }

  /** No more comes: gives back the room not needed. */
  close(): void {
    this.toLine(this.lines.length / 2 - 1);
    this.runs = this.runs.slice(0, 2 * this.runCount);
    this.spans = this.spans.slice(0, 3 * this.spanCount);
    this.taken = this.taken.slice(0, this.cellCount);
  }

  step(j: number, i: number, change: number): void {
    this.onto.step(j, i, change);
    this.toLine(this.pass * this.rows + j);
    if (2 * this.runCount === this.runs.length) this.runs = grown(this.runs, Float64Array);
    this.shade += change;
    this.runs[2 * this.runCount] = i;
    this.runs[2 * this.runCount + 1] = 1 - this.shade;
    this.runCount++;
  }

  addCells(j: number, from: number, to: number, share: number, kept: Float64Array): void {
    this.onto.addCells(j, from, to, share, kept);
    this.toLine(this.pass * this.rows + j);
    if (3 * this.spanCount + 3 > this.spans.length) this.spans = grown(this.spans, Int32Array);
    while (this.cellCount + to - from > this.taken.length) this.taken = grown(this.taken, Float64Array);
    this.spans[3 * this.spanCount] = from;
    this.spans[3 * this.spanCount + 1] = to;
    this.spans[3 * this.spanCount + 2] = this.cellCount;
    this.spanCount++;
    for (let n = 0; n < to - from; n++) this.taken[this.cellCount++] = share * (1 - kept[n]);
  }

  private toLine(line: number): void {
    if (line === this.line) return;
    this.shade = 0;
    while (this.line < line) {
      this.line++;
      this.lines[2 * this.line] = this.runCount;
      this.lines[2 * this.line + 1] = this.spanCount;
    }
  }
}

function grown<T extends Int32Array | Float64Array>(full: T, Kind: new (length: number) => T): T {
  const larger = new Kind(2 * full.length);
  larger.set(full);
  return larger;
}
