import type { GridSpec } from '../../engine/index.ts';
import { channelsOf } from './ramp.ts';
import type { Scale } from './ramp.ts';

/** Edge of a dot, and most dots a cell each way: fine enough for lines to be lines. [m] */
const DOT = { edge: 0.0625, most: 4 } as const;

/**
 * Shares of the scale from which a difference is drawn, is middling, is great; below the first it is none. Our choice.
 */
const STEPS = [0.03, 0.12, 0.3] as const;

/** Lines, or rows of dots, this far apart for each step. [dots] */
const GAPS = [8, 4, 2] as const;

export interface DifferenceColours {
  readonly less: string;
  readonly more: string;
}

type Patch = Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>;

/** A map of what changes, to be laid over the plan as the heat is. */
export interface DifferencePicture {
  readonly grid: Patch;
  /** Red, green, blue, alpha a dot, from the lower left along x, then up y. */
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/**
 * Slanting lines where there is less, dots where there is more, closer where it is greater; blank where nothing changes
 * or one of the two is not known.
 */
export function paintDifference(
  before: Float64Array,
  after: Float64Array,
  grid: Patch,
  { from, to }: Scale,
  colours: DifferenceColours,
  alpha: number,
): DifferencePicture {
  const parts = Math.min(DOT.most, Math.max(1, Math.round(grid.cell / DOT.edge)));
  const fine = {
    x0: grid.x0,
    y0: grid.y0,
    cell: grid.cell / parts,
    columns: grid.columns * parts,
    rows: grid.rows * parts,
  };
  const rgba = new Uint8ClampedArray(fine.columns * fine.rows * 4);
  const less = channelsOf(colours.less);
  const more = channelsOf(colours.more);
  for (let j = 0; j < fine.rows; j++) {
    for (let i = 0; i < fine.columns; i++) {
      const cell = Math.floor(j / parts) * grid.columns + Math.floor(i / parts);
      const change = (after[cell] - before[cell]) / (to - from);
      const step = stepOf(Math.abs(change));
      if (step < 0 || !(change < 0 ? onLine(i, j, GAPS[step]) : onDot(i, j, GAPS[step]))) continue;
      rgba.set(change < 0 ? less : more, (j * fine.columns + i) * 4);
      rgba[(j * fine.columns + i) * 4 + 3] = alpha;
    }
  }
  return { grid: fine, rgba };
}

/** Index into `STEPS`; −1 for no difference, and for NaN. */
function stepOf(size: number): number {
  return size >= STEPS[2] ? 2 : size >= STEPS[1] ? 1 : size >= STEPS[0] ? 0 : -1;
}

function onLine(i: number, j: number, gap: number): boolean {
  return (i + j) % gap === 0;
}

function onDot(i: number, j: number, gap: number): boolean {
  return i % gap === 0 && j % gap === 0;
}

/** Ground with less and with more of it. [m²] */
export function changedGround(
  before: Float64Array,
  after: Float64Array,
  { cell }: Patch,
  { from, to }: Scale,
): { readonly less: number; readonly more: number } {
  const areas = { less: 0, more: 0 };
  for (let index = 0; index < before.length; index++) {
    const change = (after[index] - before[index]) / (to - from);
    if (Math.abs(change) >= STEPS[0]) areas[change < 0 ? 'less' : 'more'] += cell * cell;
  }
  return areas;
}
