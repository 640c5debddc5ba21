import type { GridSpec, PlanPoint } from '../../engine/index.ts';

/**
 * Value of a map at a point, between the centres of the four cells round it; the cell's own where one of those is not
 * known.
 * @param values index = j·columns + i, NaN where there is nothing
 * @returns NaN where the point's cell has none, `null` off the grid
 */
export function valueAt(
  { x0, y0, cell, columns, rows }: Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>,
  values: Float64Array,
  [x, y]: PlanPoint,
): number | null {
  const u = (x - x0) / cell;
  const v = (y - y0) / cell;
  if (!(u >= 0 && v >= 0 && u < columns && v < rows)) return null;
  const own = values[Math.floor(v) * columns + Math.floor(u)];
  if (Number.isNaN(own)) return NaN;
  const i = Math.floor(u - 0.5);
  const j = Math.floor(v - 0.5);
  const at = (di: number, dj: number): number =>
    i + di >= 0 && i + di < columns && j + dj >= 0 && j + dj < rows ? values[(j + dj) * columns + i + di] : NaN;
  const right = u - 0.5 - i;
  const up = v - 0.5 - j;
  const between =
    (at(0, 0) * (1 - right) + at(1, 0) * right) * (1 - up) + (at(0, 1) * (1 - right) + at(1, 1) * right) * up;
  return Number.isNaN(between) ? own : between;
}
