/**
 * Makes engine/survey/climate/normals.json from normals.csv beside this script: published monthly normals of towns
 * where summers burn. It refuses a table that no thermometer could have written, and leaves out towns that their
 * neighbours foretell. Run: node --import tsx tests/make/normals.ts
 */

import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { blendNormals, FARTHEST, type TownNormals } from '../../engine/survey/climate/blend-normals.ts';
import { letterOf } from '../../engine/survey/climate/letters.ts';
import { faultsOf } from './normals-faults.ts';

export const SOURCES = {
  wwis: {
    about: {
      title: 'WMO World Weather Information Service, each weather service’s own normals',
      url: 'https://worldweather.wmo.int',
      licence: 'free, the WMO World Weather Information Service to be named as the source',
      seen: 'yhk1m/geosource data/wmo_climate_normal.json',
    },
  },
  clino: {
    about: {
      title: 'WMO Climatological Normals 1991–2020, NCEI accession 0253808',
      url: 'https://doi.org/10.25921/800j-vn07',
      licence: 'CC0 1.0',
      seen: 'malignantz/monsoon data/station-normals.json',
    },
  },
} as const;

/**
 * A town that the others foretell this well need not be carried: of its 24 numbers the root mean square. [K] Where no
 * month is hot, a rougher word will do.
 */
const FORETOLD = 1;
const FORETOLD_MILD = 2;
/** Mean high of the hottest month from which summers burn; and from which a town stays in any case. [°C] */
const HOT = 32;
const VERY_HOT = 35;
/** The same by the sea: its mild towns tell a coast from the inland. [°C] */
const HOT_BY_SEA = 27;
/** One row: [name, country, latitude, longitude, elevation, by sea 0/1, source, period, 24 or 36 letters]. */
type NormalsRow = readonly [string, number, number, number, number, number, number, number, string];

export interface NormalsFile {
  readonly about: string;
  readonly sources: Readonly<Record<string, (typeof SOURCES)[keyof typeof SOURCES]>>;
  readonly countries: readonly string[];
  readonly periods: readonly string[];
  readonly towns: readonly NormalsRow[];
}

export function townsOfCsv(text: string): TownNormals[] {
  const [head, ...lines] = text.trim().split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    const cell = (name: string): string => cells[names.indexOf(name)];
    const series = (name: string): number[] => cell(name).split(' ').map(Number);
    return {
      name: cell('town'),
      country: cell('country'),
      latitude: Number(cell('latitude')),
      longitude: Number(cell('longitude')),
      elevation: Number(cell('elevation')),
      bySea: cell('by_sea') === 'yes',
      source: cell('source'),
      period: cell('period'),
      high: series('highs'),
      low: series('lows'),
      ...(cell('humidity') === '' ? {} : { humidity: series('humidity') }),
    };
  });
}

/** Without the towns that their neighbours foretell, best foretold first; a town that foretells one that went stays. */
function withoutForetold(towns: readonly TownNormals[]): TownNormals[] {
  const kept = [...towns];
  const needed = new Set(kept.filter(({ high }) => Math.max(...high) >= VERY_HOT));
  for (;;) {
    const best = kept
      .filter((town) => !needed.has(town))
      .map((town) => ({ town, ...foretold(town, kept) }))
      .reduce((a, b) => (b.error < a.error ? b : a), { town: kept[0], error: FORETOLD, by: [] as TownNormals[] });
    if (best.error >= FORETOLD) return kept;
    kept.splice(kept.indexOf(best.town), 1);
    best.by.forEach((town) => needed.add(town));
  }
}

/**
 * How well a town is told from the others, where no more than its place is known: root of the mean square over its
 * highs and lows, a mild town's less. [K]
 */
function foretold(town: TownNormals, towns: readonly TownNormals[]): { error: number; by: TownNormals[] } {
  const { latitude, longitude } = town;
  const { high, low, near } = blendNormals(
    { latitude, longitude },
    towns.filter((other) => other !== town),
  );
  const off = [...high.map((value, k) => value - town.high[k]), ...low.map((value, k) => value - town.low[k])];
  const error = Math.sqrt(off.reduce((sum, d) => sum + d * d, 0) / off.length);
  const isHot = Math.max(...town.high) >= (town.bySea ? HOT_BY_SEA : HOT);
  return {
    error: near[0].away > FARTHEST ? Infinity : isHot ? error : (error * FORETOLD) / FORETOLD_MILD,
    by: near.map((one) => one.town),
  };
}

export function makeNormals(towns: readonly TownNormals[]): NormalsFile {
  const faults = faultsOf(towns, Object.keys(SOURCES));
  if (faults.length > 0) throw new Error(faults.join('\n'));
  const kept = withoutForetold(towns);
  const names = (of: (town: TownNormals) => string): string[] => [...new Set(kept.map(of))].sort();
  const [countries, periods, keys] = [names((t) => t.country), names((t) => t.period), Object.keys(SOURCES)];
  return {
    about:
      'Monthly mean highs and lows of towns where summers burn, made by tests/make/normals.ts. ' +
      'Source of information: the WMO World Weather Information Service, and WMO CLINO 1991–2020.',
    sources: SOURCES,
    countries,
    periods,
    towns: kept.map((town, index) => [
      town.name,
      countries.indexOf(town.country),
      Math.round(town.latitude * 100),
      Math.round(town.longitude * 100),
      town.elevation,
      town.bySea ? 1 : 0,
      keys.indexOf(town.source),
      periods.indexOf(town.period),
      lettersOf(numbersOf(town), index === 0 ? [] : numbersOf(kept[index - 1])),
    ]),
  };
}

/** January's number, then what each month adds: of the highs, of highs less lows, of humidity. [0.1 K, %] */
function numbersOf({ high, low, humidity = [] }: TownNormals): number[] {
  const added = (values: readonly number[]): number[] =>
    values.map((value, k) => value - (k === 0 ? 0 : values[k - 1]));
  const highs = high.map((value) => Math.round(value * 10));
  const spans = low.map((value, k) => highs[k] - Math.round(value * 10));
  return [highs, spans, humidity.map(Math.round)].flatMap(added);
}

/** A letter for each number less the town's before: small ones, the most, fall on few letters and pack well. */
function lettersOf(numbers: readonly number[], before: readonly number[]): string {
  return numbers.map((number, k) => letterOf(number - (before[k] ?? 0))).join('');
}

/** One town a line, so that a change shows in a difference. */
export function normalsText({ towns, ...rest }: NormalsFile): string {
  const rows = towns.map((town) => `  ${JSON.stringify(town)}`).join(',\n');
  return `${JSON.stringify(rest, null, 1).slice(0, -2)},\n "towns": [\n${rows}\n ]\n}\n`;
}

export const RAW = new URL('./normals.csv', import.meta.url);

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(
    new URL('../../engine/survey/climate/normals.json', import.meta.url),
    normalsText(makeNormals(townsOfCsv(readFileSync(RAW, 'utf8')))),
  );
}
