import { GRADE_FROM } from '../../engine/index.ts';
import type { Quantity } from '../../engine/index.ts';

/**
 * Colours of the maps, 16 stops each, from least to most. Lightness rises steadily, so that the order holds for
 * colour-blind eyes and in black and white; every stop is at least 3:1 against the ink of the plan.
 *
 * The heat goes from the blue of shade through dusk and clay to the yellow of straw, straight in OKLab (Ottosson 2020,
 * from memory) between six colours. To eyes without red or green cones it is a path from blue to yellow. Its dark end
 * is lifted for ink to show on it.
 */
export const HEAT_RAMP = [
  '#5f7090',
  '#6c7594',
  '#787a98',
  '#857f9c',
  '#948399',
  '#a28796',
  '#b18a92',
  '#be908a',
  '#cc9582',
  '#d99a78',
  '#e1a271',
  '#e8aa69',
  '#f0b25f',
  '#f5bf6f',
  '#facc7f',
  '#ffd98f',
] as const;

/** Light for growing is never shown in the colours of harm. */
export const LIGHT_RAMP = [
  '#6a6f86',
  '#6b7587',
  '#6c7c88',
  '#6d828a',
  '#6e898b',
  '#6f8f8c',
  '#78988e',
  '#81a18f',
  '#8ba991',
  '#94b292',
  '#9dbb94',
  '#acc69e',
  '#bbd1a7',
  '#cbdcb1',
  '#dae7ba',
  '#e9f2c4',
] as const;

/**
 * Share of the ramp in what the heat is painted with on each theme's paper, the rest is the paper's. Whole where ink is
 * dark; where ink is light, as much as leaves it 3:1. The legend mixes the same, so that map and legend agree.
 */
export const RAMP_SHARE = { light: 1, bright: 1, dark: 0.5 } as const;

/** How a quantity is painted: the same scale on every map, so that two maps can be held side by side. */
export interface Scale {
  readonly ramp: readonly string[];
  /** Value of the first and the last stop; what is beyond takes the end's colour. */
  readonly from: number;
  readonly to: number;
  /** Values of the labelled contour lines; the grades' are those of the hot load that bounds them. */
  readonly contours: readonly number[];
}

export const SCALES: Readonly<Record<Quantity, Scale>> = {
  sunHours: { ramp: HEAT_RAMP, from: 0, to: 14, contours: [2, 4, 6, 8, 10, 12] },
  morningHours: { ramp: HEAT_RAMP, from: 0, to: 7, contours: [1, 2, 3, 4, 5, 6] },
  afternoonHours: { ramp: HEAT_RAMP, from: 0, to: 7, contours: [1, 2, 3, 4, 5, 6] },
  hotHours: { ramp: HEAT_RAMP, from: 0, to: 10, contours: [1, 2, 4, 6, 8] },
  beamDose: { ramp: HEAT_RAMP, from: 0, to: 40, contours: [5, 10, 20, 30] },
  hotLoad: { ramp: HEAT_RAMP, from: 0, to: 24, contours: GRADE_FROM },
  dailyLight: { ramp: LIGHT_RAMP, from: 0, to: 60, contours: [10, 20, 30, 40, 50] },
  skyView: { ramp: LIGHT_RAMP, from: 0, to: 1, contours: [0.2, 0.4, 0.6, 0.8] },
  grade: { ramp: HEAT_RAMP, from: 1, to: 5, contours: GRADE_FROM },
};

/** Colour of a value on its scale. */
export function colourOf(value: number, { ramp, from, to }: Scale): string {
  return ramp[stopOf(value, from, to, ramp.length)];
}

/** Colour of a grade on its own map, or in the middle of its stretch of the hot load's. @param grade 1 to 5 */
export function gradeColour(grade: number, on: 'grade' | 'hotLoad'): string {
  if (on === 'grade') return colourOf(grade, SCALES.grade);
  const edges = [SCALES.hotLoad.from, ...GRADE_FROM, SCALES.hotLoad.to];
  return colourOf((edges[grade - 1] + edges[grade]) / 2, SCALES.hotLoad);
}

/** Index of one of so many stops. */
function stopOf(value: number, from: number, to: number, stops: number): number {
  return Math.min(stops - 1, Math.max(0, Math.floor(((value - from) / (to - from)) * stops)));
}

/**
 * Paints cells, one pixel each, in the cells' own order; NaN stays clear.
 * @param alpha of a painted pixel, 0 to 255
 * @returns red, green, blue, alpha a cell
 */
export function paintCells(values: Float64Array, scale: Scale, alpha: number): Uint8ClampedArray<ArrayBuffer> {
  const pixels = new Uint8ClampedArray(values.length * 4);
  const colours = scale.ramp.map(partsOf);
  for (let index = 0; index < values.length; index++) {
    const value = values[index];
    if (Number.isNaN(value)) continue;
    const colour = colours[stopOf(value, scale.from, scale.to, colours.length)];
    pixels[index * 4] = colour[0];
    pixels[index * 4 + 1] = colour[1];
    pixels[index * 4 + 2] = colour[2];
    pixels[index * 4 + 3] = alpha;
  }
  return pixels;
}

/** So much of a scale is told straight; what is above nears the last colour without ever being level with it. */
const STRAIGHT = 0.85;

/** How far beyond its end shades still tell values apart, in lengths of the scale. */
const REACH = 1.75;

/** Shades for each stop of a ramp: closer than a screen can show. */
const SHADES = 64;

/** What a smooth field is painted with: red, green, blue of each shade in turn, with their parts of a level. */
export interface Shades {
  readonly rgb: Float64Array;
  /** Value of the first, and how many there are to 1 of the value. */
  readonly from: number;
  readonly each: number;
}

/**
 * The shades of a scale, run round its stops without a kink, and with no end at which the ground turns all of one
 * colour: kinks and ends of a ramp are seen as edges that no yard has.
 */
export function shadesOf({ ramp, from, to }: Scale): Shades {
  const stops = ramp.map(partsOf);
  const count = Math.round(ramp.length * SHADES * REACH);
  const rgb = new Float64Array(count * 3);
  for (let k = 0; k < count; k++)
    rgb.set(splineAt(stops, bent(((k + 0.5) / count) * REACH) * (ramp.length - 1)), k * 3);
  return { rgb, from, each: count / ((to - from) * REACH) };
}

/** @param share of the scale, 0 to any @returns 0 to 1 */
function bent(share: number): number {
  return share <= STRAIGHT ? share : 1 - (1 - STRAIGHT) * Math.exp((STRAIGHT - share) / (1 - STRAIGHT));
}

/** The even cubic B-spline of colours, which goes on straight at its ends. @param place 0 to their last index */
function splineAt(stops: readonly (readonly number[])[], place: number): number[] {
  const last = stops.length - 1;
  const at = Math.min(last - 1, Math.floor(place));
  const f = place - at;
  const weights = [(1 - f) ** 3, 4 - 6 * f ** 2 + 3 * f ** 3, 1 + 3 * f + 3 * f ** 2 - 3 * f ** 3, f ** 3];
  const stop = (k: number, part: number): number =>
    k < 0
      ? 2 * stops[0][part] - stops[1][part]
      : k > last
        ? 2 * stops[last][part] - stops[last - 1][part]
        : stops[k][part];
  return stops[0].map((_, part) => weights.reduce((sum, weight, k) => sum + weight * stop(at - 1 + k, part), 0) / 6);
}

/** Red, green and blue of "#rrggbb". */
function partsOf(hex: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
}

/** Id of a grade's hatch in the drawing's patterns. @param grade 1 to 5 */
export function gradeHatchId(grade: number): string {
  return `grade-${grade}`;
}
