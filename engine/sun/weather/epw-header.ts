import { canBeAt, sunOffset } from '../../plan/dates/sun-clock.ts';
import { fail, HEADER_LINES } from './epw-lines.ts';
import type { WeatherPlace } from './weather.ts';

/** Where the weather is of. @throws EpwError where the first lines are not those of an hourly file */
export function readHeader(lines: readonly string[]): WeatherPlace {
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
