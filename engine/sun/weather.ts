import type { Problem } from '../plan/types.ts';
import { readEpw } from './epw.ts';
import { bridgeGaps } from './gaps.ts';

export const HOURS_PER_YEAR = 8760;
/** Hours in a row that may be missing and are bridged in a straight line. */
const MAX_BRIDGED_HOURS = 6;

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
 * One year of weather by the hour. Every array has 8,760 values, of 365 days of 24 hours from 1 January on, in the file's standard time:
 * index 0 is the hour from 00:00 to 01:00 of 1 January, which the file stamps 1.
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

/**
 * Reads an EPW weather file: hourly, a whole year. 29 February, where there is one, is left out.
 * @returns the weather, or the one thing that is wrong with the file, with its line
 * Source: EnergyPlus Auxiliary Programs, Weather Converter, "EPW Data Dictionary".
 */
export function parseEpw(bytes: Uint8Array): { ok: true; weather: Weather } | { ok: false; problems: Problem[] } {
  const read = readEpw(bytes);
  if (!read.ok) return { ok: false, problems: [fileProblem(read.message)] };
  const { place, columns, lines } = read;
  let bridged = 0;
  for (const [name, needed] of [['air', true], ['beam', true], ['diffuse', true], ['humidity', false], ['wind', false]] as const) {
    const { filled, firstGap } = bridgeGaps(columns[name], MAX_BRIDGED_HOURS);
    bridged += filled;
    if (needed && firstGap !== null) {
      const message = `Weather file, line ${lines[firstGap]}: the ${COLUMN_WORDS[name]} is missing here and for more than ${MAX_BRIDGED_HOURS} hours in a row.`;
      return { ok: false, problems: [fileProblem(message)] };
    }
  }
  return { ok: true, weather: { place, ...columns, months: monthsOf(columns), bridged } };
}

const COLUMN_WORDS = { air: 'air temperature', beam: 'direct normal radiation', diffuse: 'diffuse radiation' } as const;
const DAYS_PER_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const fileProblem = (message: string): Problem => ({ pointer: '', message, severity: 'error' });

function monthsOf(columns: Pick<Weather, 'air' | 'humidity' | 'wind'>): WeatherMonth[] {
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
    return { month: index + 1, high, low, humidity: meanOf(columns.humidity, first, hour), wind: meanOf(columns.wind, first, hour) };
  });
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
