import type { GridSpec } from '../../engine/index.ts';
import { fineRamp, paintCells } from './ramp.ts';
import type { Scale } from './ramp.ts';

/** Grain of a painted field: finer than an eye tells apart on a screen that shows a whole yard. [m] */
const GRAIN = 0.05;

/** Shades for each of a ramp's own. */
const SHADES = 16;

/** A painted grid: a pixel a cell of its own, finer grid. */
export interface Painted {
  readonly grid: GridSpec;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/**
 * Paints cells as the smooth field they are samples of: between their centres values run straight across and up. Where
 * there is nothing (NaN) nothing is painted, and a field goes on to the edge of its outer cells.
 * @param values index = j·columns + i
 * @param alpha of a painted pixel, 0 to 255
 */
export function paintField(grid: GridSpec, values: Float64Array, scale: Scale, alpha: number): Painted {
  const parts = Math.max(1, Math.round(grid.cell / GRAIN));
  const fine = { ...grid, cell: grid.cell / parts, columns: grid.columns * parts, rows: grid.rows * parts };
  return {
    grid: fine,
    rgba: paintCells(smoothed(grid, values, parts), { ...scale, ramp: fineRamp(scale.ramp, SHADES) }, alpha),
  };
}

/** Each cell as parts × parts, run between the centres round it; a centre without a value counts for nothing. */
export function smoothed(
  { columns, rows }: Pick<GridSpec, 'columns' | 'rows'>,
  values: Float64Array,
  parts: number,
): Float64Array {
  const fine = new Float64Array(columns * parts * rows * parts).fill(NaN);
  for (let y = 0; y < rows * parts; y++) {
    const v = (y + 0.5) / parts - 0.5;
    const below = Math.max(0, Math.floor(v));
    const above = Math.min(rows - 1, Math.floor(v) + 1);
    const up = Math.min(1, Math.max(0, v - Math.floor(v)));
    const ownRow = Math.floor(y / parts) * columns;
    for (let x = 0; x < columns * parts; x++) {
      if (Number.isNaN(values[ownRow + Math.floor(x / parts)])) continue;
      const u = (x + 0.5) / parts - 0.5;
      const left = Math.max(0, Math.floor(u));
      const right = Math.min(columns - 1, Math.floor(u) + 1);
      const across = u - Math.floor(u);
      let sum = 0;
      let weight = 0;
      for (let corner = 0; corner < 4; corner++) {
        const value = values[(corner < 2 ? below : above) * columns + (corner % 2 === 0 ? left : right)];
        if (Number.isNaN(value)) continue;
        const share = (corner < 2 ? 1 - up : up) * (corner % 2 === 0 ? 1 - across : across);
        sum += share * value;
        weight += share;
      }
      if (weight > 0) fine[y * columns * parts + x] = sum / weight;
    }
  }
  return fine;
}
