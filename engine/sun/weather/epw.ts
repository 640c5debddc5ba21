import { canBeAt, sunOffset } from '../../plan/sun-clock.ts';
import type { Problem } from '../../plan/types.ts';
import { midnightAt } from '../days/calendar.ts';
import { bridgeGaps } from './gaps.ts';
import { sunPosition } from '../position.ts';
import { DAYS_PER_MONTH, HOURS_PER_YEAR, weatherMonths, type Weather, type WeatherPlace } from './weather.ts';

// In every browser and in Node, though no part of the language's own library.
declare const TextDecoder: new (encoding: string, options: { fatal: boolean }) => { decode(bytes: Uint8Array): string };

/** A year by the hour takes 1.7 MB; a file several times that is something else. [bytes] */
export const EPW_MOST_BYTES = 20_000_000;

const HEADER_LINES = 8;
const MS_PER_HOUR = 3_600_000;
/** Hours in a row that may be missing and are bridged in a straight line. */
const MAX_BRIDGED_HOURS = 6;
/** The last column that is read. A row with fewer columns than that, or than most rows, is cut off. */
const LEAST_COLUMNS = 22;
/** With the sun this low in the middle of an hour it is down for all of it; more beam than that is no rounding. */
const NIGHT_BELOW = -10; // [°]
const NO_BEAM = 50; // [W/m²]
/** The hour after which a leap year's 29 February would come. */
const HOURS_TO_MARCH = (31 + 28) * 24;

/** A quantity of the file: its column, counted from 1, the code from which on it means "missing", and what can be. */
interface Column {
  readonly name: 'air' | 'beam' | 'diffuse' | 'humidity' | 'wind';
  readonly words: string;
  readonly unit: string;
  readonly column: number;
  readonly missingFrom: number;
  readonly least: number;
  readonly most: number;
  /** A file without it is refused; else the plan's months stand in. */
  readonly needed: boolean;
}

// Missing codes and least and most temperature, humidity and wind: EPW Data Dictionary (humidity to 110 %). Radiation:
// no more than reaches the air in January.
const COLUMNS: readonly Column[] = [
  {
    name: 'air',
    words: 'air temperature',
    unit: '°C',
    column: 7,
    missingFrom: 99.9,
    least: -70,
    most: 70,
    needed: true,
  },
  {
    name: 'humidity',
    words: 'relative humidity',
    unit: '%',
    column: 9,
    missingFrom: 999,
    least: 0,
    most: 110,
    needed: false,
  },
  {
    name: 'beam',
    words: 'direct normal radiation',
    unit: 'W/m²',
    column: 15,
    missingFrom: 9999,
    least: 0,
    most: 1500,
    needed: true,
  },
  {
    name: 'diffuse',
    words: 'diffuse radiation',
    unit: 'W/m²',
    column: 16,
    missingFrom: 9999,
    least: 0,
    most: 1500,
    needed: true,
  },
  { name: 'wind', words: 'wind speed', unit: 'm/s', column: 22, missingFrom: 999, least: 0, most: 120, needed: false },
];

/** What makes a file unreadable, in one sentence; thrown and caught in this module only. */
class EpwError extends Error {}

/**
 * Reads an EPW weather file: hourly, a whole year from 1 January on, either line ending, UTF-8 or Latin-1. The year in
 * each row is ignored, 29 February, where there is one, left out. Missing values are bridged from their neighbours, up
 * to six hours in a row; longer gaps in humidity or wind stay NaN, longer gaps in temperature or radiation are refused.
 * @returns the weather, or the first thing that is wrong with the file, with its line
 * Source: EnergyPlus Auxiliary Programs, Weather Converter, "EPW Data Dictionary".
 */
export function parseEpw(bytes: Uint8Array): { ok: true; weather: Weather } | { ok: false; problems: Problem[] } {
  try {
    if (bytes.length > EPW_MOST_BYTES)
      throw new EpwError(
        `The weather file is larger than ${EPW_MOST_BYTES / 1e6} MB; a year by the hour takes about 2.`,
      );
    return { ok: true, weather: readWeather(linesOf(bytes)) };
  } catch (error) {
    if (!(error instanceof EpwError)) throw error;
    return { ok: false, problems: [{ pointer: '', message: error.message, severity: 'error' }] };
  }
}

function readWeather(lines: readonly string[]): Weather {
  const place = readHeader(lines);
  const values = {
    air: new Float64Array(HOURS_PER_YEAR),
    beam: new Float64Array(HOURS_PER_YEAR),
    diffuse: new Float64Array(HOURS_PER_YEAR),
    humidity: new Float64Array(HOURS_PER_YEAR),
    wind: new Float64Array(HOURS_PER_YEAR),
  };
  const leapHours = readRows(lines, values);
  const lineOf = (index: number) => HEADER_LINES + 1 + index + (index >= HOURS_TO_MARCH ? leapHours : 0);
  refuseSunAtNight(values.beam, place, lineOf);
  let bridged = 0;
  for (const { name, words, needed } of COLUMNS) {
    const { filled, firstGap } = bridgeGaps(values[name], MAX_BRIDGED_HOURS);
    bridged += filled;
    if (firstGap !== null && needed) {
      fail(lineOf(firstGap), `the ${words} is missing here and for more than ${MAX_BRIDGED_HOURS} hours in a row.`);
    }
  }
  return { place, ...values, months: weatherMonths(values), bridged };
}

function readHeader(lines: readonly string[]): WeatherPlace {
  const fields = lines[0].split(',').map((field) => field.trim());
  if (fields[0].toUpperCase() !== 'LOCATION')
    fail(1, 'an EPW file begins with the word LOCATION, and this one does not.');
  const [latitude, longitude, utcOffset, elevation] = [
    headerNumber(fields[6], 'latitude', -90, 90),
    headerNumber(fields[7], 'longitude', -180, 180),
    headerNumber(fields[8], 'time zone', -12, 14),
    headerNumber(fields[9], 'elevation', -500, 9000),
  ];
  if (!canBeAt(longitude, utcOffset))
    fail(
      1,
      `a time zone of ${utcOffset} h cannot be at longitude ${longitude}, where the sun is ` +
        `${sunOffset(longitude).toFixed(1)} h ahead of UTC.`,
    );
  const periods = (lines[HEADER_LINES - 1] ?? '').split(',').map((field) => field.trim());
  if (periods[0].toUpperCase() !== 'DATA PERIODS')
    fail(HEADER_LINES, 'the eighth line of an EPW file is DATA PERIODS, and this one is not.');
  if (Number(periods[2]) !== 1)
    fail(
      HEADER_LINES,
      `the file has ${periods[2] || 'no number of'} records an hour; only hourly files, with 1, can be read.`,
    );
  return {
    name: [fields[1], fields[2], fields[3]].filter((word) => word && word !== '-').join(', '),
    latitude,
    longitude,
    utcOffset,
    elevation,
  };
}

function headerNumber(field: string | undefined, words: string, least: number, most: number): number {
  const value = field ? Number(field) : NaN;
  if (!(value >= least && value <= most))
    fail(1, `the ${words} should be a number from ${least} to ${most}, and is "${field ?? ''}".`);
  return value;
}

/** Fills the arrays; returns how many hours of a 29 February were left out. */
function readRows(lines: readonly string[], values: Record<Column['name'], Float64Array>): number {
  let index = 0;
  let leapHours = 0;
  let month = 1;
  let day = 1;
  let hour = 1;
  const width = Math.max(LEAST_COLUMNS, usualWidth(lines));
  for (let line = HEADER_LINES; line < lines.length; line++) {
    const fields = lines[line].split(',');
    if (fields.length < width) fail(line + 1, `the row is cut off: it has ${fields.length} of ${width} columns.`);
    if (fields.length > width) fail(line + 1, `the row has ${fields.length} columns, and most have ${width}.`);
    if (index === HOURS_PER_YEAR) fail(line + 1, 'there are more rows than a year has hours.');
    // Only a leap year's file goes on from 28 February to the 29th.
    if (
      month === 3 &&
      day === 1 &&
      hour === 1 &&
      leapHours === 0 &&
      Number(fields[1]) === 2 &&
      Number(fields[2]) === 29
    )
      [month, day] = [2, 29];
    if (Number(fields[1]) !== month || Number(fields[2]) !== day || Number(fields[3]) !== hour) {
      fail(
        line + 1,
        `here should be month ${month}, day ${day}, hour ${hour}, and there is month ${fields[1]}, day ` +
          `${fields[2]}, hour ${fields[3]}. The rows must be a whole year in order.`,
      );
    }
    const minute = Number(fields[4]);
    if (minute !== 0 && minute !== 60)
      fail(line + 1, `the row is for minute ${fields[4]}; only hourly files, with minute 0 or 60, can be read.`);
    if (day === 29 && month === 2) leapHours += 1;
    else {
      for (const column of COLUMNS) values[column.name][index] = readValue(fields[column.column - 1], column, line + 1);
      index += 1;
    }
    if (hour < 24) hour += 1;
    else if (day < DAYS_PER_MONTH[month - 1]) [day, hour] = [day + 1, 1];
    else [month, day, hour] = [month + 1, 1, 1];
  }
  if (index < HOURS_PER_YEAR) {
    fail(
      lines.length,
      `the file ends after ${index} of ${HOURS_PER_YEAR} hours, before month ${month}, day ${day}, hour ${hour}. ` +
        `A whole year is needed.`,
    );
  }
  return leapHours;
}

/** Columns of most rows. */
function usualWidth(lines: readonly string[]): number {
  const times = new Map<number, number>();
  for (const line of lines.slice(HEADER_LINES)) {
    const width = line.split(',').length;
    times.set(width, (times.get(width) ?? 0) + 1);
  }
  const [most] = [...times].toSorted(([, a], [, b]) => b - a);
  return most?.[0] ?? 0;
}

/** A file whose hours are not those of its place would have plants burn by night. */
function refuseSunAtNight(beam: Float64Array, place: WeatherPlace, lineOf: (index: number) => number): void {
  // The sun of one year does for all.
  const newYear = midnightAt('2001-01-01', place.utcOffset);
  for (let index = 0; index < beam.length; index++) {
    if (!(beam[index] > NO_BEAM)) continue;
    const whenMs = newYear + (index + 0.5) * MS_PER_HOUR;
    const { altitude } = sunPosition(whenMs, place.latitude, place.longitude);
    if (altitude < NIGHT_BELOW)
      fail(
        lineOf(index),
        `the direct normal radiation is ${beam[index]} W/m² while the sun is ${Math.round(-altitude)}° below the ` +
          `horizon there.`,
      );
  }
}

/** NaN for "missing". */
function readValue(field: string, { words, unit, missingFrom, least, most }: Column, line: number): number {
  const value = field.trim() === '' ? NaN : Number(field);
  if (value >= missingFrom) return NaN;
  if (!(value >= least && value <= most))
    fail(line, `the ${words} should be a number from ${least} to ${most} ${unit}, and is "${field.trim()}".`);
  return value;
}

function fail(line: number, message: string): never {
  throw new EpwError(`Weather file, line ${line}: ${message}`);
}

function linesOf(bytes: Uint8Array): string[] {
  const lines = textOf(bytes).split(/\r\n|\n|\r/);
  while (lines.length > 1 && lines[lines.length - 1].trim() === '') lines.pop();
  return lines;
}

/**
 * The bytes as UTF-8 (a byte order mark taken off), or as Latin-1 where they are not that: names of places come in
 * both.
 */
function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1', { fatal: false }).decode(bytes);
  }
}
