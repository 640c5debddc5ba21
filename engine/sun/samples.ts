import type { CivilDate, MonthDay, Plan, Problem } from '../plan/types.ts';
import type { Weather } from './weather.ts';

/** Which days are meant: the whole season, one day, the heatwave day, or the heat day of one of the season's months. */
export type Period =
  | { readonly kind: 'season' }
  | { readonly kind: 'day'; readonly date: MonthDay }
  | { readonly kind: 'heatwave' }
  | { readonly kind: 'heatDay'; readonly month: number };

/** A civil day and what holds all through it. */
export interface SampleDay {
  readonly date: CivilDate;
  readonly monthDay: MonthDay;
  readonly month: number;
  /** Its samples are those from `first` up to, not including, `end`. */
  readonly first: number;
  readonly end: number;
  /** The day's first instant and the next day's. [ms UTC] */
  readonly startMs: number;
  readonly endMs: number;
  /** Highest and lowest air of the day, `climate.offset` included, raised on heat days; with a weather file that day's own extremes. [°C] */
  readonly high: number;
  readonly low: number;
  /** The month's mean air, (high + low)/2 with `climate.offset`, never raised: a month's `humidity` belongs to it. [°C] */
  readonly monthMean: number;
  /** The month's; with a weather file the mean of the file's month. [%], [m/s] */
  readonly humidity: number;
  readonly wind: number;
  /** Standard deviation of the daily high; 0 on heat days and with a weather file. [K] */
  readonly spread: number;
}

/**
 * Every step of a period whose middle has the sun above the horizon, in order of time.
 * One value a sample in every array; `count` of them.
 */
export interface SampleTable {
  readonly days: readonly SampleDay[];
  readonly count: number;
  /** Middle of the step. [ms since 1970-01-01 UTC] */
  readonly when: Float64Array;
  /** Length of the step. [h] */
  readonly hours: Float64Array;
  /** True bearing of the sun, morning below 180, afternoon from 180 on. [°] */
  readonly azimuth: Float64Array;
  /** Apparent altitude, above 0. [°] */
  readonly altitude: Float64Array;
  /** True solar time. [h] */
  readonly solarHour: Float64Array;
  /** Index into `days`. */
  readonly dayOf: Int32Array;
  /** Under a clear sky; with a weather file the file's (then `sunshine` is 1 and `global` is beam·sin(altitude) + diffuse). [W/m²] */
  readonly beam: Float64Array;
  readonly diffuse: Float64Array;
  readonly global: Float64Array;
  /** Share of the time with the sun's disc out. */
  readonly sunshine: Float64Array;
  /** Mean air temperature of such days at this time. [°C] */
  readonly air: Float64Array;
  /** Standard deviation of the air about `air`. [K] */
  readonly spread: Float64Array;
  /** Humidity, the air temperature that it belongs to, and wind above the yard: the month's, its mean air, the month's; with a weather file the hour's three. [%], [°C], [m/s] */
  readonly humidity: Float64Array;
  readonly humidityAir: Float64Array;
  readonly wind: Float64Array;
}

export type SampleResult = { readonly ok: true; readonly samples: SampleTable } | { readonly ok: false; readonly problems: Problem[] };

/**
 * The sun, sky and air of a period at a plan's site.
 * @returns the samples, or the problems: a month missing from the climate, a date that does not exist, an unknown time zone
 */
export declare function samplesOf(plan: Plan, period: Period, weather?: Weather): SampleResult;
