import { fail, HEADER_LINES } from './epw-lines.ts';
import { DAYS_PER_MONTH, HOURS_PER_YEAR } from './weather.ts';

/** The last column that is read. A row with fewer columns than that, or than most rows, is cut off. */
const LEAST_COLUMNS = 22;
/** A quantity of the file: its column, counted from 1, the code from which on it means "missing", and what can be. */
export interface Column {
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
export const COLUMNS: readonly Column[] = [
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

/** Fills the arrays; returns how many hours of a 29 February were left out. */
export function readRows(lines: readonly string[], values: Record<Column['name'], Float64Array>): number {
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

/** NaN for "missing". */
function readValue(field: string, { words, unit, missingFrom, least, most }: Column, line: number): number {
  const value = field.trim() === '' ? NaN : Number(field);
  if (value >= missingFrom) return NaN;
  if (!(value >= least && value <= most))
    fail(line, `the ${words} should be a number from ${least} to ${most} ${unit}, and is "${field.trim()}".`);
  return value;
}
