import { GRADE_FROM, GRADE_WORDS } from '../../engine/index.ts';
import type { Quantity } from '../../engine/index.ts';

/**
 * Colours of the maps, 16 stops each, from least to most. Lightness rises steadily, so that the order holds for
 * colour-blind eyes and in black and white; every stop is at least 3:1 against the ink of the plan.
 *
 * The heat goes from the blue of shade through dusk, clay and straw to the yellow of a white noon, straight in OKLab
 * (Ottosson 2020, from memory) between six colours. To eyes without red or green cones it is a path from blue to
 * yellow. Its dark end is lifted for ink to show on it.
 */
export const HEAT_RAMP = [
  '#5f7090',
  '#6c7594',
  '#787a98',
  '#857f9c',
  '#988597',
  '#ab8b91',
  '#be908a',
  '#ca9683',
  '#d59c7a',
  '#e1a271',
  '#e8ad71',
  '#f0b770',
  '#f6c374',
  '#f9d286',
  '#fce197',
  '#fff0a8',
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
  /** A share s of the scale lies at s^bend of the ramp; 1 where nothing is said. */
  readonly bend?: number;
  /** Values of the labelled contour lines; the grades' are those of the hot load that bounds them. */
  readonly contours: readonly number[];
}

/**
 * The heat is told up to what a clear day can bring (a yard at Perth has 34 MJ/m² on its hottest), and by steps that
 * widen with it as the grades do, so that each grade has about as much of the ramp, and the worst two of them.
 */
const HOTTEST = { to: 36, bend: 0.65 } as const;

/** Where grades meet, and two more lines for the yard whose open ground is scorching all over. */
const HEAT_LINES = [...GRADE_FROM, 24, 30] as const;

export const SCALES: Readonly<Record<Quantity, Scale>> = {
  sunHours: { ramp: HEAT_RAMP, from: 0, to: 14, contours: [2, 4, 6, 8, 10, 12] },
  morningHours: { ramp: HEAT_RAMP, from: 0, to: 7, contours: [1, 2, 3, 4, 5, 6] },
  afternoonHours: { ramp: HEAT_RAMP, from: 0, to: 7, contours: [1, 2, 3, 4, 5, 6] },
  hotHours: { ramp: HEAT_RAMP, from: 0, to: 10, contours: [1, 2, 4, 6, 8] },
  beamDose: { ramp: HEAT_RAMP, from: 0, to: 40, contours: [5, 10, 20, 30] },
  hotLoad: { ramp: HEAT_RAMP, from: 0, ...HOTTEST, contours: HEAT_LINES },
  dailyLight: { ramp: LIGHT_RAMP, from: 0, to: 60, contours: [10, 20, 30, 40, 50] },
  skyView: { ramp: LIGHT_RAMP, from: 0, to: 1, contours: [0.2, 0.4, 0.6, 0.8] },
  grade: { ramp: HEAT_RAMP, from: 1, to: 5, contours: GRADE_FROM },
};

/** Colour of a value on its scale. */
export function colourOf(value: number, scale: Scale): string {
  return scale.ramp[stopOf(value, scale)];
}

/** What lies between two lines of a graded map, and how it is painted. */
export interface Stretch {
  /** [MJ/m²] */
  readonly from: number;
  readonly colour: string;
  /** The grade's; of one in several colours it stands at the last. */
  readonly word: string | undefined;
}

/** The stretches of a graded map, from least to most. */
export function stretchesOf(on: 'grade' | 'hotLoad'): readonly Stretch[] {
  const { from, to, contours } = SCALES[on];
  const edges = [0, ...contours, to];
  return edges.slice(0, -1).map((edge, k) => ({
    from: edge,
    colour: on === 'grade' ? colourOf(from + k, SCALES.grade) : colourOf((edge + edges[k + 1]) / 2, SCALES.hotLoad),
    word: k === edges.length - 2 ? GRADE_WORDS.at(-1) : GRADE_WORDS.slice(0, -1)[k],
  }));
}

/** Index of a value's stop. */
function stopOf(value: number, { ramp, from, to, bend = 1 }: Scale): number {
  const share = Math.max(0, (value - from) / (to - from));
  return Math.min(ramp.length - 1, Math.floor(share ** bend * ramp.length));
}

/**
 * Paints cells, one pixel each, in the cells' own order; NaN stays clear.
 * @param alpha of a painted pixel, 0 to 255
 * @returns red, green, blue, alpha a cell
 */
export function paintCells(values: Float64Array, scale: Scale, alpha: number): Uint8ClampedArray<ArrayBuffer> {
  const pixels = new Uint8ClampedArray(values.length * 4);
  const colours = scale.ramp.map(channelsOf);
  for (let index = 0; index < values.length; index++) {
    const value = values[index];
    if (Number.isNaN(value)) continue;
    const colour = colours[stopOf(value, scale)];
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
export function shadesOf({ ramp, from, to, bend = 1 }: Scale): Shades {
  const stops = ramp.map(channelsOf);
  const count = Math.round(ramp.length * SHADES * REACH);
  const rgb = new Float64Array(count * 3);
  for (let k = 0; k < count; k++)
    rgb.set(splineAt(stops, eased(((k + 0.5) / count) * REACH) ** bend * (ramp.length - 1)), k * 3);
  return { rgb, from, each: count / ((to - from) * REACH) };
}

/** @param share of the scale, 0 to any @returns 0 to 1 */
function eased(share: number): number {
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
export function channelsOf(hex: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
}

/** Id of a grade's hatch in the drawing's patterns. @param grade 1 to 5 */
export function gradeHatchId(grade: number): string {
  return `grade-${grade}`;
}
