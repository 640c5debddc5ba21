import { contours } from 'd3-contour';
import type { GridSpec, PlanPoint } from '../../engine/index.ts';

/** Shorter lines say nothing at the scale of a yard. [m] */
const SHORTEST = 1;

/** One value's lines across a grid of cells. */
export interface Contour {
  readonly value: number;
  readonly lines: readonly (readonly PlanPoint[])[];
}

/**
 * Lines of equal value through the cells' centres, on the plan; they end where the cells do (NaN), and none runs along
 * that edge.
 * @param values index = j·columns + i, NaN where there is nothing
 */
export function contoursOf(
  grid: Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>,
  values: Float64Array,
  thresholds: readonly number[],
): readonly Contour[] {
  const { columns, rows, cell, x0, y0 } = grid;
  const trace = contours().size([columns, rows]);
  // Beyond the edge the nearest value goes on, so that a line runs straight into the edge instead of turning along it.
  const filled = spreadOut(values, columns, rows);
  const known = (u: number, v: number): boolean => {
    const i = Math.floor(u);
    const j = Math.floor(v);
    return i >= 0 && j >= 0 && i < columns && j < rows && !Number.isNaN(values[j * columns + i]);
  };
  const inside = (u: number, v: number): boolean =>
    known(u, v) && u > 0.25 && v > 0.25 && u < columns - 0.25 && v < rows - 0.25;
  return thresholds.map((value) => {
    const lines: PlanPoint[][] = [];
    for (const ring of trace.contour(filled, value).coordinates.flat()) {
      let line: PlanPoint[] = [];
      for (const [u, v] of ring) {
        if (inside(u, v)) line.push([x0 + u * cell, y0 + v * cell]);
        else if (line.length > 0) {
          lines.push(line);
          line = [];
        }
      }
      if (line.length > 0) lines.push(line);
    }
    return { value, lines: lines.filter((line) => lengthOf(line) >= SHORTEST) };
  });
}

function spreadOut(values: Float64Array, columns: number, rows: number): number[] {
  const filled = Array.from(values);
  const waiting: number[] = [];
  filled.forEach((value, index) => !Number.isNaN(value) && waiting.push(index));
  for (let at = 0; at < waiting.length; at++) {
    const index = waiting[at];
    const i = index % columns;
    for (const next of [i > 0 ? index - 1 : -1, i < columns - 1 ? index + 1 : -1, index - columns, index + columns]) {
      if (next < 0 || next >= columns * rows || !Number.isNaN(filled[next])) continue;
      filled[next] = filled[index];
      waiting.push(next);
    }
  }
  return filled;
}

function lengthOf(line: readonly PlanPoint[]): number {
  let length = 0;
  for (let k = 1; k < line.length; k++) length += Math.hypot(line[k][0] - line[k - 1][0], line[k][1] - line[k - 1][1]);
  return length;
}
