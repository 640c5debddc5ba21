import type { GridSpec, PlanPoint } from '../../engine/index.ts';

/** Index of the cell that a point lies in, j·columns + i; −1 off the grid. */
export function cellAt({ x0, y0, cell, columns, rows }: Pick<GridSpec, 'x0' | 'y0' | 'cell' | 'columns' | 'rows'>, [x, y]: PlanPoint): number {
  const i = Math.floor((x - x0) / cell);
  const j = Math.floor((y - y0) / cell);
  return i >= 0 && j >= 0 && i < columns && j < rows ? j * columns + i : -1;
}
