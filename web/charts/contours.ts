import { type GridSpec, type PlanPoint, pathLength } from '../../engine/index.ts';

/** Shorter lines say nothing at the scale of a yard. [m] */
const SHORTEST = 1;

/** Fewer lines than these do not tell where on a ground there is more. */
const FEWEST = 3;

const ALL_ABOVE = 0b1111;

/** One value's lines across a grid of cells. */
export interface Contour {
  readonly value: number;
  readonly lines: readonly (readonly PlanPoint[])[];
}

type Cells = Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>;

/**
 * Lines of equal value through the cells' centres, on the plan, but the shortest; they end where the cells do (NaN),
 * and none runs along that edge.
 * @param values index = j·columns + i, NaN where there is nothing
 */
export function contoursOf(grid: Cells, values: Float64Array, thresholds: readonly number[]): readonly Contour[] {
  return thresholds.map((value) => ({
    value,
    lines: linesOf(grid, values, value).filter((line) => pathLength(line) >= SHORTEST),
  }));
}

/** The values whose lines are drawn on one ground: a scale's, and where few of them cross it those half-way too. */
export function linesOn(values: Float64Array, scale: readonly number[]): readonly number[] {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (scale.filter((value) => value > low && value < high).length >= FEWEST) return scale;
  return scale.flatMap((value, k) => [Number(((value + (scale[k - 1] ?? 0)) / 2).toFixed(2)), value]);
}

/**
 * Outlines of the ground at or above a value, closed, that ground to their left; it goes on to the edge of its outer
 * cells, and holes turn the other way.
 * @param values index = j·columns + i, no NaN
 */
export function outlinesOf({ x0, y0, cell, columns, rows }: Cells, values: Float64Array, value: number): PlanPoint[][] {
  const framed = new Float64Array((columns + 2) * (rows + 2)).fill(-Infinity);
  for (let j = 0; j < rows; j++)
    framed.set(values.subarray(j * columns, (j + 1) * columns), (j + 1) * (columns + 2) + 1);
  return linesOf({ x0: x0 - cell, y0: y0 - cell, cell, columns: columns + 2, rows: rows + 2 }, framed, value);
}

/** Every line, higher ground to its left; one that comes back to itself ends with the point it began with. */
function linesOf(grid: Cells, values: Float64Array, value: number): PlanPoint[][] {
  return chains(crossings(grid, values, value)).map((edges) =>
    edges.map((edge) => crossingOf(grid, values, value, edge)),
  );
}

/**
 * Where a line crosses from one centre to the next, and at which edge it goes on from there. An edge's number is twice
 * that of its lower left cell, and one more where it runs up.
 */
function crossings({ columns, rows }: Cells, values: Float64Array, value: number): Map<number, number> {
  const next = new Map<number, number>();
  for (let j = 0; j + 1 < rows; j++) {
    for (let i = 0; i + 1 < columns; i++) {
      const cell = j * columns + i;
      // The square of four centres, counter-clockwise from its lower left, a bit for each that is above.
      const [a, b, c, d] = [values[cell], values[cell + 1], values[cell + columns + 1], values[cell + columns]];
      const above = (a >= value ? 1 : 0) | (b >= value ? 2 : 0) | (c >= value ? 4 : 0) | (d >= value ? 8 : 0);
      if (above === 0 || above === ALL_ABOVE || Number.isNaN(a + b + c + d)) continue;
      crossSquare(next, above, [2 * cell, 2 * (cell + 1) + 1, 2 * (cell + columns), 2 * cell + 1]);
    }
  }
  return next;
}

/** @param above which of the corners are, bit by bit @param edges the one that follows each corner */
function crossSquare(next: Map<number, number>, above: number, edges: readonly number[]): void {
  const isAbove = (k: number): boolean => (above & (1 << (k % 4))) !== 0;
  for (let k = 0; k < 4; k++) {
    if (!isAbove(k) || isAbove(k + 1)) continue;
    // Round the corners above that end here, back to where they begin: at a saddle each has its own line.
    let from = k + 4;
    while (isAbove(from - 1)) from -= 1;
    next.set(edges[k], edges[(from + 3) % 4]);
  }
}

/** Strings the crossings together: first the lines that end, then those that come back to themselves. */
function chains(next: ReadonlyMap<number, number>): number[][] {
  const seen = new Set<number>();
  const lineFrom = (start: number): number[] => {
    const line: number[] = [];
    let at: number | undefined = start;
    for (; at !== undefined && !seen.has(at); at = next.get(at)) {
      seen.add(at);
      line.push(at);
    }
    return at === undefined ? line : [...line, at];
  };
  const entered = new Set(next.values());
  const edges = [...next.keys()];
  return [...edges.filter((edge) => !entered.has(edge)), ...edges].flatMap((edge) =>
    seen.has(edge) ? [] : [lineFrom(edge)],
  );
}

/** The point of an edge at which the value between its two centres is the line's; halfway to the frame's. */
function crossingOf({ x0, y0, cell, columns }: Cells, values: Float64Array, value: number, edge: number): PlanPoint {
  const index = edge >> 1;
  const up = edge & 1;
  const [first, second] = [values[index], values[index + (up ? columns : 1)]];
  const along = Number.isFinite(first - second) ? (value - first) / (second - first) : 0.5;
  const u = (index % columns) + 0.5 + (up ? 0 : along);
  const v = Math.floor(index / columns) + 0.5 + (up ? along : 0);
  return [x0 + u * cell, y0 + v * cell];
}
