import { refusal } from '../../plan/problems.ts';
import type { Problem } from '../../plan/types.ts';
import { MS_PER_HOUR } from '../../plan/units/per-unit.ts';
import { midnightAt } from '../days/calendar.ts';
import { sunPosition } from '../position.ts';
import { readHeader } from './epw-header.ts';
import { EpwError, fail, HEADER_LINES, linesOf } from './epw-lines.ts';
import { COLUMNS, readRows } from './epw-rows.ts';
import { bridgeGaps } from './gaps.ts';
import { HOURS_PER_YEAR, weatherMonths, type Weather, type WeatherPlace } from './weather.ts';

/** A year by the hour takes 1.7 MB; a file several times that is something else. [bytes] */
export const EPW_MOST_BYTES = 20_000_000;

/** Hours in a row that may be missing and are bridged in a straight line. */
const MAX_BRIDGED_HOURS = 6;
/** With the sun this low in the middle of an hour it is down for all of it; more beam than that is no rounding. */
const NIGHT_BELOW = -10; // [°]
const NO_BEAM = 50; // [W/m²]
/** The hour after which a leap year's 29 February would come. */
const HOURS_TO_MARCH = (31 + 28) * 24;

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
    return refusal('', error.message);
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
