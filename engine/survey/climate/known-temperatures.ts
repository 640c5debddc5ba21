/** Three numbers that everybody knows of their own place. [°C] */
export interface KnownTemperatures {
  /** Usual high of the month of `askedMonth`. */
  readonly high: number;
  /** Usual low of that month. */
  readonly low: number;
  /** High of the hottest day last year. */
  readonly hottest: number;
}

/** Which month the three numbers are asked for: July, south of the equator January. */
export function askedMonth(latitude: number): 1 | 7 {
  return latitude < 0 ? 1 : 7;
}
