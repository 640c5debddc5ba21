import type { ClimateMonth } from '../../plan/types.ts';
import { formatTemperatureDifference } from '../../plan/units/shown.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { type Finding, found, refused } from '../estimate.ts';
import {
  type BlendedNormals,
  blendNormals,
  errorBeyondTown,
  FARTHEST,
  likelyError,
  type NearTown,
  type Spot,
  type TownNormals,
} from './blend-normals.ts';
import type { ClimateType } from './climate-types.ts';
import { numberOf } from './letters.ts';
import file from './normals.json' with { type: 'json' };
import { monthsOf } from './rough-climate.ts';

/** Months from published normals, the towns they come from, and how far a usual summer day may be off. [K] */
export interface NormalsFound {
  readonly months: readonly ClimateMonth[];
  /** High of the hottest day of most years, on the hot end of the error. [°C] */
  readonly heatwaveHigh: number;
  readonly near: BlendedNormals['near'];
  readonly pm: number;
  /** The towns, how far they are, and the error, in words; then whose figures they are. */
  readonly words: string;
  readonly source: string;
}

/** A town with a smaller share than this is not named. */
const TOLD = 0.05;
/** Nearer than this a town is the yard's own. [km] */
const HERE = 10;

/** The towns of normals.json. */
export const NORMALS: readonly TownNormals[] = townsOfFile();

/**
 * The months of a place from the published normals of the towns around it: their highs and lows, brought to its height.
 * Sun, wind, turbidity and, where the nearest town has none, humidity are the climate type's; so is what the hottest
 * day of most years adds to the hottest month's mean high. Refused where no town is near enough: take the type alone.
 * @param towns For the tests: the table without a town.
 */
export function nearestNormals(spot: Spot, type: ClimateType, towns = NORMALS): Finding<NormalsFound> {
  const blend = blendNormals(spot, towns);
  const nearest = blend.near[0];
  if (nearest === undefined || nearest.away > FARTHEST) return refused(tooFar(nearest));
  const months = monthsOf(type, spot.latitude).map((month, k) => ({
    ...month,
    high: blend.high[k],
    low: blend.low[k],
    humidity: blend.humidity?.[k] ?? month.humidity,
  }));
  const hottestMonth = Math.max(...blend.high);
  const hottest = hottestMonth + hottestDayAbove(type, hottestMonth) + errorBeyondTown(nearest.away, spot);
  const pm = likelyError(nearest.away, spot);
  return found({
    months,
    heatwaveHigh: Math.round(10 * hottest) / 10,
    near: blend.near,
    pm,
    words: wordsOf(blend, spot, pm),
    source: sourceOf(blend, type),
  });
}

/** Where the mean high is above this, its hottest days stand the less above it, by this share. From memory. [°C, 1] */
const VERY_HOT = 41;
const NEARER = 0.4;

/**
 * How far the hottest day of most years stands above the hottest month's mean high. [K]
 * @param hottestMonth That mean high. [°C]
 */
export function hottestDayAbove(type: ClimateType, hottestMonth: number): number {
  return type.hottest - Math.max(...type.high) - NEARER * Math.max(0, hottestMonth - VERY_HOT);
}

/** "published normals of Riyadh and Dammam, 20 km and 380 km away: a usual summer day may be off by 2 K" */
function wordsOf(blend: BlendedNormals, spot: Spot, pm: number): string {
  const told = toldOf(blend);
  const names = listWords(told.map(({ town }) => town.name));
  const here = told.filter(({ kilometres }) => kilometres < HERE).length;
  const far = told.slice(here).map(({ kilometres }) => `${kilometres.toFixed(0)} km`);
  const away = listWords([...(here > 0 ? ['here'] : []), ...(far.length > 0 ? [`${listWords(far)} away`] : [])]);
  const height = spot.elevation === undefined ? '' : `, brought to ${spot.elevation.toFixed(0)} m`;
  const off = formatTemperatureDifference(Math.max(1, pm), 'metric');
  return `published normals of ${names}, ${away}${height}: a usual summer day may be off by ${off}`;
}

/** "weather service of Saudi Arabia, through the WMO World Weather Information Service, 1982–2011; sun, wind …" */
function sourceOf(blend: BlendedNormals, type: ClimateType): string {
  const told = toldOf(blend).map(({ town }) => town);
  const each = (of: (town: TownNormals) => string): string => listWords([...new Set(told.map(of))]);
  const countries = each(({ country }) => (country.startsWith('US-') ? 'the United States' : country));
  const through = each(({ source }) => SOURCE_WORDS[source]);
  const rest = `sun, wind${blend.humidity === undefined ? ', humidity' : ''} and hottest day by the climate type`;
  return (
    `weather service of ${countries}, through the ${through}, ${each(yearsOf)}; ` +
    `${rest} "${type.name}", from memory`
  );
}

function toldOf({ near }: BlendedNormals): BlendedNormals['near'] {
  return near.filter(({ share }) => share >= TOLD).toSorted((a, b) => a.kilometres - b.kilometres);
}

const SOURCE_WORDS: Readonly<Record<string, string>> = {
  wwis: 'WMO World Weather Information Service',
  clino: 'WMO Climatological Normals',
};

function yearsOf({ period }: TownNormals): string {
  return period === 'not stated' ? 'years not stated' : period.replace('-', '–');
}

function tooFar(nearest: NearTown | undefined): string {
  if (nearest === undefined) return 'There is no town with published normals.';
  const otherwise = nearest.away > nearest.kilometres + 1 ? ' and its height or shore is another' : '';
  return (
    `The nearest town with published normals, ${nearest.town.name}, is ${nearest.kilometres.toFixed(0)} km ` +
    `away${otherwise}: too far to be told by it.`
  );
}

/** Undoes what tests/make/normals.ts packs: letters, added to the town's before, added up from month to month. */
function townsOfFile(): TownNormals[] {
  const keys = Object.keys(file.sources);
  let before: readonly number[] = [];
  return file.towns.map((row) => {
    const [name, country, latitude, longitude, elevation, bySea, source, period, letters] = row as Row;
    const numbers = Array.from(letters, (letter, k) => numberOf(letter) + (before[k] ?? 0));
    before = numbers;
    const [highs, spans] = [summed(numbers.slice(0, 12)), summed(numbers.slice(12, 24))];
    return {
      name,
      country: file.countries[country],
      latitude: latitude / 100,
      longitude: longitude / 100,
      elevation,
      bySea: bySea === 1,
      source: keys[source],
      period: file.periods[period],
      high: highs.map((tenths) => tenths / 10),
      low: spans.map((tenths, month) => (highs[month] - tenths) / 10),
      ...(numbers.length > 24 ? { humidity: summed(numbers.slice(24)) } : {}),
    };
  });
}

type Row = [string, number, number, number, number, number, number, number, string];

function summed(steps: readonly number[]): number[] {
  let sum = 0;
  return steps.map((step) => (sum += step));
}
