/** The wind by what one sees. Limits of the 10-minute mean 10 m up after WMO-No. 306 (from memory). */

export interface BeaufortRow {
  readonly force: number;
  /** Lowest mean wind of the force. [m/s] */
  readonly from: number;
  readonly sign: string;
}

const SCALE: readonly BeaufortRow[] = [
  { force: 0, from: 0, sign: 'smoke rises straight up' },
  { force: 1, from: 0.3, sign: 'smoke drifts' },
  { force: 2, from: 1.6, sign: 'leaves rustle and you feel the wind on your face' },
  { force: 3, from: 3.4, sign: 'leaves and thin twigs keep moving' },
  { force: 4, from: 5.5, sign: 'dust and loose paper blow about and small branches move' },
  { force: 5, from: 8, sign: 'small trees in leaf sway' },
  { force: 6, from: 10.8, sign: 'large branches move and an umbrella is hard to hold' },
  { force: 7, from: 13.9, sign: 'whole trees move and walking into the wind is hard' },
  { force: 8, from: 17.2, sign: 'twigs break off the trees' },
  { force: 9, from: 20.8, sign: 'roof tiles and chimney pots begin to come off' },
];

/** A gust is about this many times the ten-minute mean of the forecast (1.3 open sea to 1.7 town; from memory). */
export const GUST_OVER_MEAN = 1.5;

/** The force of a ten-minute mean wind. @param mean [m/s] */
export function beaufortOf(mean: number): BeaufortRow {
  return SCALE.findLast((row) => mean >= row.from) ?? SCALE[0];
}

/** What one sees in a wind whose gusts reach this. @param gust [m/s] */
export function signsOfGust(gust: number): BeaufortRow {
  return beaufortOf(gust / GUST_OVER_MEAN);
}
