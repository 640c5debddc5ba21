/** The season and the climate, and whether the one covers the other. */
import { checkHow, SHARE } from './rules.ts';
import { monthName, monthsOfSeason } from '../dates.ts';
import { readMonthDay, readNumber, readObject, readOwners, readText, readWord, report } from './reader.ts';
import type { NumberRule, Owner } from './reader.ts';

/** Warmer than any air measured, so that °F typed by mistake are found. */
const AIR: NumberRule = { min: -60, max: 62, unit: '°C' };
const TURBIDITY: NumberRule = { min: 1, max: 10 };

export function checkSeasonAndClimate(plan: Owner): void {
  const span = checkSeason(plan);
  const climate = readObject(plan, 'climate', 'Climate', 'required');
  if (climate === undefined) return;
  readWord(climate, 'from', ['rough', 'months', 'file'], 'optional');
  readText(climate, 'source', 'optional');
  readNumber(climate, 'offset', { min: -20, max: 20, unit: 'K' }, 'optional');
  readNumber(climate, 'gust', { min: 0, max: 120, unit: 'm/s' }, 'optional');
  readNumber(climate, 'turbidity', TURBIDITY, 'optional');
  readNumber(climate, 'hotAir', AIR, 'required');
  readNumber(climate, 'heatwaveHigh', AIR, 'required');
  const frost = readObject(climate, 'frost', 'Frost', 'optional');
  if (frost !== undefined) {
    readMonthDay(frost, 'first', 'optional');
    readMonthDay(frost, 'last', 'optional');
    readNumber(frost, 'lowest', { min: -60, max: 30, unit: '°C' }, 'optional');
  }
  const months = checkMonths(climate);
  if (span !== undefined && Array.isArray(climate.object.months)) {
    for (const month of monthsOfSeason(span)) {
      if (!months.has(month))
        report(climate, 'months', `${monthName(month)} is part of the season, but its month is missing.`);
    }
  }
  checkHow(climate);
}

/** The season's ends when both are right. */
function checkSeason(plan: Owner): { from: string; to: string } | undefined {
  const season = readObject(plan, 'season', 'Season', 'required');
  if (season === undefined) return undefined;
  const year = readNumber(season, 'year', { min: 1900, max: 2199, whole: true }, 'required');
  const from = readMonthDay(season, 'from', 'required', year);
  const rawTo = season.object.to;
  const crosses = from !== undefined && typeof rawTo === 'string' && rawTo < from;
  const to = readMonthDay(season, 'to', 'required', year === undefined ? undefined : crosses ? year + 1 : year);
  const step = readNumber(season, 'stepMinutes', { min: 1, max: 60, whole: true }, 'optional');
  if (step !== undefined && 60 % step !== 0)
    report(
      season,
      'stepMinutes',
      `step is ${step} minutes, but an hour must be a whole number of steps: 1, 2, 3, 4, 5, 6, 10, 12, 15, ` +
        `20, 30 or 60.`,
    );
  return from === undefined || to === undefined ? undefined : { from, to };
}

/** The months that have a row, right or wrong. */
function checkMonths(climate: Owner): Set<number> {
  const seen = new Set<number>();
  for (const row of readOwners(climate, 'months', 'required', monthSubject)) {
    const month = readNumber(row, 'month', { min: 1, max: 12, whole: true }, 'required');
    const high = readNumber(row, 'high', AIR, 'required');
    const low = readNumber(row, 'low', AIR, 'required');
    if (high !== undefined && low !== undefined && low > high)
      report(row, 'low', `low is ${low} °C, above the high of ${high} °C.`);
    readNumber(row, 'humidity', { min: 0, max: 100, unit: '%' }, 'optional');
    readNumber(row, 'wind', { min: 0, max: 60, unit: 'm/s' }, 'optional');
    readNumber(row, 'sunshine', SHARE, 'optional');
    readNumber(row, 'sunshineAfternoon', SHARE, 'optional');
    readNumber(row, 'spread', { min: 0, max: 20, unit: 'K' }, 'optional');
    readNumber(row, 'turbidity', TURBIDITY, 'optional');
    if (month === undefined) continue;
    if (seen.has(month)) report(row, 'month', `${monthName(month)} is there twice.`);
    seen.add(month);
  }
  return seen;
}

function monthSubject(row: Readonly<Record<string, unknown>>, index: number): string {
  const month = row.month;
  return typeof month === 'number' && Number.isInteger(month) && month >= 1 && month <= 12
    ? `Climate, ${monthName(month)}`
    : `Climate, month row ${index + 1}`;
}
