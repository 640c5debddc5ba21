/**
 * Square cells at one height above the ground.
 * ```
 *  y up   row 1  | 3 | 4 | 5 |        centre of (i, j) = (x0 + (i + ½)·cell, y0 + (j + ½)·cell)
 *         row 0  | 0 | 1 | 2 |        index = j·columns + i
 *        (x0, y0)
 * ```
 * The one way to compute a centre is `centreOf`; cell coordinates u, v put the centres on the whole numbers i, j.
 */
export interface GridSpec {
  readonly x0: number;
  readonly y0: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly height: number;
}

/** The point at the centre of a cell. */
export function centreOf(grid: GridSpec, i: number, j: number): readonly [x: number, y: number, z: number] {
  return [grid.x0 + (i + 0.5) * grid.cell, grid.y0 + (j + 0.5) * grid.cell, grid.height];
}
