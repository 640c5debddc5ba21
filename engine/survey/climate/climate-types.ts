/**
 * Rough types of hot climate, from memory: no station's table was copied and no number here is a measurement.
 * Months are written for the northern hemisphere, January first; a southern yard takes them half a year later.
 */
export interface ClimateType {
  readonly id: string;
  readonly name: string;
  /** Mean daily high of each month. [°C] */
  readonly high: readonly number[];
  /** Mean daily low. [°C] */
  readonly low: readonly number[];
  /** Mean. [%] */
  readonly humidity: readonly number[];
  /** Share of daylight with the sun's disc out. */
  readonly sunshine: readonly number[];
  /** Linke turbidity. */
  readonly turbidity: readonly number[];
  /** All year, in the open. [m/s] */
  readonly wind: number;
  /** High of the hottest day of most years. [°C] */
  readonly hottest: number;
}

const CLEAR = [3, 3, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5, 3, 3];
const DUSTY = [4, 4.5, 5, 5, 5, 5, 4.5, 4.5, 4.5, 4.5, 4, 4];

export const CLIMATE_TYPES: readonly ClimateType[] = [
  {
    id: 'low-desert',
    name: 'low desert, dry and very hot',
    high: [20, 22, 26, 30, 35, 40, 41, 40, 38, 32, 25, 19],
    low: [7, 9, 12, 16, 21, 26, 29, 28, 25, 18, 11, 7],
    humidity: [45, 40, 35, 25, 20, 18, 30, 35, 30, 32, 38, 45],
    sunshine: [0.78, 0.8, 0.84, 0.89, 0.92, 0.94, 0.86, 0.86, 0.89, 0.88, 0.83, 0.77],
    turbidity: [3, 3, 3.5, 3.5, 3.5, 3.5, 4.5, 4.5, 3.5, 3.5, 3, 3],
    wind: 2.5,
    hottest: 47,
  },
  {
    id: 'coastal-desert',
    name: 'desert by a warm sea',
    high: [24, 25, 28, 33, 38, 39, 41, 41, 39, 36, 31, 26],
    low: [14, 15, 18, 21, 25, 28, 30, 31, 28, 24, 19, 16],
    humidity: [65, 65, 60, 50, 45, 50, 50, 52, 58, 60, 60, 65],
    sunshine: [0.72, 0.72, 0.7, 0.76, 0.84, 0.86, 0.8, 0.8, 0.83, 0.85, 0.8, 0.74],
    turbidity: DUSTY,
    wind: 3,
    hottest: 46,
  },
  {
    id: 'high-desert',
    name: 'high desert, hot days and cool nights',
    high: [9, 12, 17, 22, 27, 32, 33, 32, 28, 22, 14, 9],
    low: [-4, -2, 2, 6, 11, 16, 19, 18, 14, 7, 0, -4],
    humidity: [52, 45, 38, 30, 28, 27, 38, 42, 40, 42, 46, 53],
    sunshine: [0.72, 0.74, 0.77, 0.8, 0.82, 0.84, 0.76, 0.76, 0.8, 0.8, 0.76, 0.71],
    turbidity: [2.5, 2.5, 3, 3, 3, 3, 3.5, 3.5, 3, 3, 2.5, 2.5],
    wind: 3,
    hottest: 38,
  },
  {
    id: 'mediterranean-inland',
    name: 'dry summer, inland',
    high: [15, 17, 21, 23, 27, 33, 36, 36, 32, 25, 19, 15],
    low: [4, 5, 8, 10, 13, 17, 19, 19, 16, 12, 8, 5],
    humidity: [75, 68, 60, 55, 48, 40, 34, 36, 44, 58, 70, 77],
    sunshine: [0.5, 0.57, 0.6, 0.65, 0.72, 0.82, 0.9, 0.87, 0.75, 0.63, 0.53, 0.47],
    turbidity: CLEAR,
    wind: 2,
    hottest: 43,
  },
  {
    id: 'mediterranean-coast',
    name: 'dry summer, by the sea',
    high: [15, 16, 18, 20, 24, 28, 31, 31, 28, 23, 19, 16],
    low: [7, 8, 9, 11, 15, 19, 22, 22, 19, 15, 11, 8],
    humidity: [68, 66, 64, 62, 60, 57, 55, 57, 61, 66, 68, 69],
    sunshine: [0.52, 0.55, 0.58, 0.63, 0.68, 0.76, 0.82, 0.8, 0.7, 0.6, 0.53, 0.48],
    turbidity: CLEAR,
    wind: 3,
    hottest: 39,
  },
  {
    id: 'dry-continental',
    name: 'dry, hot summers and cold winters',
    high: [4, 7, 13, 20, 26, 32, 35, 34, 29, 21, 12, 6],
    low: [-4, -3, 3, 8, 13, 17, 20, 18, 13, 6, 1, -2],
    humidity: [70, 65, 58, 50, 42, 34, 30, 30, 35, 48, 62, 70],
    sunshine: [0.48, 0.52, 0.55, 0.62, 0.7, 0.8, 0.85, 0.85, 0.8, 0.7, 0.55, 0.46],
    turbidity: CLEAR,
    wind: 2.5,
    hottest: 41,
  },
  {
    id: 'humid-subtropical',
    name: 'hot and humid summers, mild winters',
    high: [17, 19, 23, 27, 30, 33, 35, 35, 32, 28, 22, 18],
    low: [6, 8, 12, 16, 20, 23, 24, 24, 21, 16, 11, 7],
    humidity: [70, 68, 67, 68, 70, 68, 66, 66, 68, 67, 69, 71],
    sunshine: [0.48, 0.52, 0.56, 0.58, 0.62, 0.7, 0.72, 0.7, 0.66, 0.66, 0.55, 0.5],
    turbidity: [3, 3, 3.5, 4, 4, 4, 4, 4, 4, 3.5, 3, 3],
    wind: 2.5,
    hottest: 40,
  },
  {
    id: 'monsoon',
    name: 'hottest before the rains of summer',
    high: [20, 24, 30, 37, 40, 39, 35, 34, 34, 33, 28, 23],
    low: [8, 11, 16, 22, 26, 28, 27, 26, 25, 20, 13, 9],
    humidity: [68, 60, 48, 32, 32, 48, 70, 75, 68, 55, 58, 68],
    sunshine: [0.62, 0.72, 0.74, 0.77, 0.76, 0.62, 0.48, 0.5, 0.65, 0.8, 0.75, 0.62],
    turbidity: [4.5, 4.5, 4.5, 5, 5.5, 5.5, 5, 5, 4.5, 4.5, 5, 5],
    wind: 2,
    hottest: 45,
  },
  {
    id: 'savanna',
    name: 'dry tropics, hot all year, rains in summer',
    high: [32, 35, 39, 41, 41, 38, 34, 33, 34, 38, 36, 33],
    low: [16, 19, 23, 27, 29, 27, 25, 24, 24, 25, 20, 17],
    humidity: [25, 20, 20, 30, 42, 55, 68, 76, 72, 52, 32, 28],
    sunshine: [0.75, 0.75, 0.7, 0.66, 0.67, 0.66, 0.6, 0.56, 0.64, 0.72, 0.78, 0.76],
    turbidity: DUSTY,
    wind: 2.5,
    hottest: 44,
  },
  {
    id: 'tropical-wet-dry',
    name: 'wet and dry tropics',
    high: [32, 33, 34, 36, 35, 34, 33, 33, 33, 32, 32, 31],
    low: [21, 22, 24, 26, 26, 25, 25, 25, 25, 24, 23, 21],
    humidity: [65, 65, 66, 66, 72, 74, 76, 78, 79, 77, 70, 66],
    sunshine: [0.75, 0.74, 0.7, 0.68, 0.58, 0.48, 0.45, 0.44, 0.46, 0.55, 0.66, 0.73],
    turbidity: [4, 4, 4.5, 4.5, 4, 4, 4, 4, 4, 4, 4, 4],
    wind: 2,
    hottest: 39,
  },
  {
    id: 'wet-tropical',
    name: 'wet tropics, much alike all year',
    high: [31, 32, 32, 32, 32, 31, 31, 31, 31, 32, 31, 31],
    low: [23, 23, 24, 24, 24, 24, 23, 23, 23, 24, 24, 23],
    humidity: [82, 80, 80, 82, 82, 81, 80, 80, 81, 82, 84, 84],
    sunshine: [0.45, 0.52, 0.5, 0.48, 0.48, 0.46, 0.46, 0.47, 0.44, 0.43, 0.38, 0.38],
    turbidity: [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4],
    wind: 1.5,
    hottest: 35,
  },
  {
    id: 'warm-temperate',
    name: 'warm summers with hot spells',
    high: [9, 11, 15, 18, 23, 27, 30, 29, 25, 19, 13, 9],
    low: [2, 2, 5, 8, 12, 16, 18, 18, 14, 10, 6, 3],
    humidity: [80, 75, 68, 66, 65, 62, 58, 60, 66, 74, 80, 82],
    sunshine: [0.35, 0.42, 0.48, 0.5, 0.53, 0.58, 0.64, 0.62, 0.57, 0.48, 0.38, 0.33],
    turbidity: CLEAR,
    wind: 2.5,
    hottest: 38,
  },
];
