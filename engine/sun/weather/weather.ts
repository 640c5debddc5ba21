import type { CivilDate, Plan } from '../../plan/types.ts';
import { dayOfCommonYear, daysAfter, midnightAt } from '../days/calendar.ts';

export const HOURS_PER_YEAR = 8760;
export const DAYS_PER_MONTH: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether the climate that a plan is reckoned after is a guess from the kind of climate. */
export function isRough({ climate }: Plan, weather?: Weather): boolean {
  return climate.from === 'rough' && weather === undefined;
}

/** Where a weather file was measured. */
export interface WeatherPlace {
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  /** The file's own standard time, all year. [h ahead of UTC] */
  readonly utcOffset: number;
  /** [m] */
  readonly elevation: number;
}

/**
 * One year of weather by the hour. Every array has 8,760 values, of 365 days of 24 hours from 1 January on, in the
 * file's standard time: index 0 is the hour from 00:00 to 01:00 of 1 January, which the file stamps 1.
 */
export interface Weather {
  readonly place: WeatherPlace;
  /** [°C] */
  readonly air: Float64Array;
  /** Direct normal irradiance. [W/m²] */
  readonly beam: Float64Array;
  /** Diffuse irradiance on the horizontal. [W/m²] */
  readonly diffuse: Float64Array;
  /** [%] NaN where the file has none: the plan's month stands in. */
  readonly humidity: Float64Array;
  /** [m/s] NaN where the file has none: the plan's month stands in. */
  readonly wind: Float64Array;
  /** By month, January first. */
  readonly months: readonly WeatherMonth[];
  /** Values of the file that were missing and were bridged from their neighbours. */
  readonly bridged: number;
}

export interface WeatherMonth {
  readonly month: number;
  /** Mean of the daily highest and of the daily lowest hour. [°C] */
  readonly high: number;
  readonly low: number;
  /** Means of all hours; NaN when the file has none. [%], [m/s] */
  readonly humidity: number;
  readonly wind: number;
}

/** Means by month of a year of hours. */
export function weatherMonths(columns: Pick<Weather, 'air' | 'humidity' | 'wind'>): WeatherMonth[] {
  let hour = 0;
  return DAYS_PER_MONTH.map((days, index) => {
    const first = hour;
    let high = 0;
    let low = 0;
    for (let day = 0; day < days; day++, hour += 24) {
      const hours = columns.air.subarray(hour, hour + 24);
      high += Math.max(...hours) / days;
      low += Math.min(...hours) / days;
    }
    return {
      month: index + 1,
      high,
      low,
      humidity: meanOf(columns.humidity, first, hour),
      wind: meanOf(columns.wind, first, hour),
    };
  });
}

/** Highest and lowest hour of the file's day of a date, whatever its year; 29 February takes the 28th. [°C] */
export function weatherExtremes(weather: Weather, date: CivilDate): { high: number; low: number } {
  const hour = dayOfCommonYear(date) * 24;
  const hours = weather.air.subarray(hour, hour + 24);
  return { high: Math.max(...hours), low: Math.min(...hours) };
}

/**
 * Which hour of a weather year holds at an instant of a civil day: the year does not count, 29 February takes the 28th,
 * and the file's standard time may put a few hours of the civil day on the day before or after.
 * @returns a function of the instant [ms UTC], which must lie within a day of the date
 */
export function hourFinder(weather: Weather, date: CivilDate): (whenMs: number) => number {
  const midnight = midnightAt(date, weather.place.utcOffset);
  const firstHours = [-1, 0, 1, 2].map((days) => dayOfCommonYear(daysAfter(date, days)) * 24);
  return (whenMs) => {
    const hours = Math.floor((whenMs - midnight) / 3_600_000);
    const days = Math.floor(hours / 24);
    return firstHours[days + 1] + hours - days * 24;
  };
}

/** Mean of the values that are there; NaN when none is. */
function meanOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  let count = 0;
  for (let index = from; index < to; index++) {
    if (Number.isNaN(values[index])) continue;
    sum += values[index];
    count += 1;
  }
  return sum / count;
}
