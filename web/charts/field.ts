import type { GridSpec } from '../../engine/index.ts';
import { shadesOf } from './ramp.ts';
import type { Scale } from './ramp.ts';

/** Grain of a painted field: finer than an eye tells apart on a screen that shows a whole yard. [m] */
const GRAIN = 0.05;

/** A painted grid: a pixel a cell of its own, finer grid. */
export interface Painted {
  readonly grid: GridSpec;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/**
 * How far values are evened out, as a standard deviation: at least so far, and so many cells of a coarse grid. The sun
 * is cast at steps of time, between which a wall's shadow runs on by half a metre and more; cast so, a slope of the
 * heat is a flight of stairs that no yard has. [m], [cells]
 */
const EVENED = { metres: 0.22, cells: 0.7 } as const;

/**
 * Paints cells as the smooth field they are samples of: evened out, and between their centres straight across and up.
 * Where there is nothing (NaN) nothing is painted, and a field goes on to the edge of its outer cells.
 * @param values index = j·columns + i
 * @param alpha of a painted pixel, 0 to 255
 */
export function paintField(grid: GridSpec, values: Float64Array, scale: Scale, alpha: number): Painted {
  const parts = Math.max(1, Math.round(grid.cell / GRAIN));
  const fine = { ...grid, cell: grid.cell / parts, columns: grid.columns * parts, rows: grid.rows * parts };
  return {
    grid: fine,
    rgba: shaded(smoothed(grid, evened(grid, values), parts), fine.columns, scale, alpha),
  };
}

/**
 * Pixels of a field. A slow slope has fewer levels of a screen than pixels and would lie there in bands: so each pixel
 * is rounded up or down by a noise of its own, the same at every painting.
 */
function shaded(values: Float64Array, columns: number, scale: Scale, alpha: number): Uint8ClampedArray<ArrayBuffer> {
  const { rgb, from, each } = shadesOf(scale);
  const last = rgb.length / 3 - 1;
  const pixels = new Uint8ClampedArray(values.length * 4);
  for (let at = 0; at < values.length; at++) {
    const value = values[at];
    if (Number.isNaN(value)) continue;
    const shade = 3 * Math.min(last, Math.max(0, Math.floor((value - from) * each)));
    const noise = noiseAt(at % columns, Math.floor(at / columns)) - 0.5;
    for (let part = 0; part < 3; part++) pixels[at * 4 + part] = rgb[shade + part] + noise;
    pixels[at * 4 + 3] = alpha;
  }
  return pixels;
}

/** A noise even to the eye (Jimenez 2014, "interleaved gradient noise", from memory). @returns 0 to 1 */
function noiseAt(x: number, y: number): number {
  return (52.9829189 * ((0.06711056 * x + 0.00583715 * y) % 1)) % 1;
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

/**
 * Cells evened out over their neighbours by a bell that counts only cells with a value, so that no wall draws down what
 * stands beside it; a level field stays level, and what has no value gets none.
 */
export function evened(
  { columns, rows, cell }: Pick<GridSpec, 'columns' | 'rows' | 'cell'>,
  values: Float64Array,
): Float64Array {
  const bell = bellOf(Math.max(EVENED.metres / cell, EVENED.cells));
  const known = Float64Array.from(values, (value) => (Number.isNaN(value) ? 0 : 1));
  const sums = spread(
    spread(
      values.map((value) => value || 0),
      columns,
      rows,
      bell,
      1,
    ),
    rows,
    columns,
    bell,
    columns,
  );
  const weights = spread(spread(known, columns, rows, bell, 1), rows, columns, bell, columns);
  return values.map((value, at) => (Number.isNaN(value) ? NaN : sums[at] / weights[at]));
}

/** Half of a bell from its middle outwards. @param deviation [cells] */
function bellOf(deviation: number): Float64Array {
  return Float64Array.from({ length: Math.ceil(2.5 * deviation) + 1 }, (_, k) => Math.exp(-0.5 * (k / deviation) ** 2));
}

/** Each value as the sum of those along its line under the bell. @param step from one value of a line to the next */
function spread(values: Float64Array, along: number, lines: number, bell: Float64Array, step: number): Float64Array {
  const result = new Float64Array(values.length);
  const across = step === 1 ? along : 1;
  for (let line = 0; line < lines; line++) {
    for (let k = 0; k < along; k++) {
      let sum = bell[0] * values[line * across + k * step];
      for (let off = 1; off < bell.length; off++) {
        if (k >= off) sum += bell[off] * values[line * across + (k - off) * step];
        if (k + off < along) sum += bell[off] * values[line * across + (k + off) * step];
      }
      result[line * across + k * step] = sum;
    }
  }
  return result;
}
