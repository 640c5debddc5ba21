/**
 * Makes engine/survey/place/places.json: a lean list of towns where summers burn, of the largest towns of the hot and
 * temperate world and of every capital, to start a plan from. Source: the npm package city-timezones (MIT), a
 * development dependency. Run: node --import tsx tests/make/places.ts
 */

import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { plain } from '../../engine/survey/place/places.ts';
import { CAPITALS } from './capitals.ts';

interface City {
  readonly city: string;
  readonly city_ascii: string;
  readonly lat: number;
  readonly lng: number;
  readonly pop: number;
  readonly country: string;
  readonly iso2: string;
  readonly province: string;
  readonly state_ansi?: string;
  readonly timezone: string;
}

/**
 * How many towns a country gets, and where in it summers are hot: latitudes [south, north], longitudes [west, east].
 */
const SHARES: readonly {
  country: string;
  towns: number;
  latitudes?: readonly [number, number];
  longitudes?: readonly [number, number];
}[] = [
  { country: 'ES', towns: 18, latitudes: [27, 41.8] },
  { country: 'PT', towns: 5 },
  { country: 'FR', towns: 6, latitudes: [41, 44.6] },
  { country: 'IT', towns: 10, latitudes: [36, 44.6] },
  { country: 'GR', towns: 6 },
  { country: 'TR', towns: 9, latitudes: [36, 39.5] },
  { country: 'CY', towns: 2 },
  { country: 'MT', towns: 1 },
  { country: 'AL', towns: 1 },
  { country: 'BG', towns: 2 },
  { country: 'HR', towns: 1, latitudes: [42, 44] },
  { country: 'MA', towns: 6 },
  { country: 'DZ', towns: 6 },
  { country: 'TN', towns: 3 },
  { country: 'LY', towns: 3 },
  { country: 'EG', towns: 6 },
  { country: 'SD', towns: 3 },
  { country: 'ML', towns: 2 },
  { country: 'NE', towns: 2 },
  { country: 'TD', towns: 1 },
  { country: 'SN', towns: 2 },
  { country: 'BF', towns: 1 },
  { country: 'NG', towns: 5 },
  { country: 'GH', towns: 2 },
  { country: 'MR', towns: 1 },
  { country: 'DJ', towns: 1 },
  { country: 'ET', towns: 2 },
  { country: 'KE', towns: 2 },
  { country: 'NA', towns: 2 },
  { country: 'BW', towns: 2 },
  { country: 'ZW', towns: 2 },
  { country: 'ZA', towns: 10 },
  { country: 'MZ', towns: 2 },
  { country: 'MG', towns: 1 },
  { country: 'AO', towns: 1 },
  { country: 'IL', towns: 3 },
  { country: 'PS', towns: 0 },
  { country: 'JO', towns: 2 },
  { country: 'LB', towns: 1 },
  { country: 'SY', towns: 3 },
  { country: 'IQ', towns: 4 },
  { country: 'SA', towns: 7 },
  { country: 'YE', towns: 2 },
  { country: 'OM', towns: 2 },
  { country: 'AE', towns: 3 },
  { country: 'QA', towns: 1 },
  { country: 'BH', towns: 0 },
  { country: 'KW', towns: 1 },
  { country: 'IR', towns: 8 },
  { country: 'AZ', towns: 1 },
  { country: 'TM', towns: 2 },
  { country: 'UZ', towns: 3 },
  { country: 'AF', towns: 2 },
  { country: 'PK', towns: 8 },
  { country: 'IN', towns: 26 },
  { country: 'BD', towns: 2 },
  { country: 'LK', towns: 1 },
  { country: 'MM', towns: 2 },
  { country: 'TH', towns: 4 },
  { country: 'KH', towns: 1 },
  { country: 'VN', towns: 3 },
  { country: 'CN', towns: 8, latitudes: [20, 43], longitudes: [75, 122] },
  { country: 'JP', towns: 4, latitudes: [31, 36] },
  { country: 'TW', towns: 1 },
  { country: 'PH', towns: 2 },
  { country: 'ID', towns: 3 },
  { country: 'MY', towns: 2 },
  { country: 'SG', towns: 1 },
  { country: 'AU', towns: 10, latitudes: [-36, -18], longitudes: [119, 147.5] },
  { country: 'AU', towns: 18, latitudes: [-38.5, -10] },
  { country: 'US', towns: 60, latitudes: [19, 37.5] },
  { country: 'US', towns: 10, latitudes: [37.5, 41], longitudes: [-123, -108] },
  { country: 'MX', towns: 18 },
  { country: 'CU', towns: 1 },
  { country: 'DO', towns: 1 },
  { country: 'PR', towns: 1 },
  { country: 'GT', towns: 1 },
  { country: 'NI', towns: 1 },
  { country: 'VE', towns: 2 },
  { country: 'CO', towns: 2, latitudes: [8, 12] },
  { country: 'EC', towns: 1, latitudes: [-3, -1] },
  { country: 'PE', towns: 3, latitudes: [-15, -4] },
  { country: 'BR', towns: 14 },
  { country: 'PY', towns: 1 },
  { country: 'BO', towns: 1, latitudes: [-19, -16], longitudes: [-64, -58] },
  { country: 'AR', towns: 9, latitudes: [-39, -22] },
  { country: 'CL', towns: 3, latitudes: [-36, -20] },
  { country: 'UY', towns: 1 },
];

/** Names that the package writes without their marks. */
const MARKED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  ES: { Cordoba: 'Córdoba', Malaga: 'Málaga', Cadiz: 'Cádiz', Almeria: 'Almería', Castello: 'Castelló' },
  PT: { Evora: 'Évora' },
  MX: {
    Leon: 'León',
    Merida: 'Mérida',
    'San Luis Potosi': 'San Luis Potosí',
    Torreon: 'Torreón',
    Queretaro: 'Querétaro',
    Culiacan: 'Culiacán',
  },
};

/** The largest towns of the world between these latitudes belong to it wherever they lie. [°] */
const TEMPERATE = 50;
const LARGEST = 300;

/** Towns nearer than this to a larger one already taken add nothing: the sun is the same. [km] */
const APART = 60;

export interface PlacesFile {
  readonly about: string;
  /** With the zone that most of its towns have. */
  readonly countries: readonly (readonly [name: string, usualZone: string])[];
  /** The other ones. */
  readonly zones: readonly string[];
  /** Letters that people write for a state: "CA". */
  readonly states: Readonly<Record<string, string>>;
  /** [name, region, index of country, latitude and longitude in 0.01°, index of a zone not its country's usual one]. */
  readonly places: readonly (readonly [string, string, number, number, number, number?])[];
}

export function makePlaces(cities: readonly City[]): PlacesFile {
  const taken: City[] = [];
  for (const { country, towns, latitudes = [-90, 90], longitudes = [-180, 180] } of SHARES) {
    const inside = cities
      .filter(
        ({ iso2, lat, lng }) =>
          iso2 === country &&
          lat >= latitudes[0] &&
          lat <= latitudes[1] &&
          lng >= longitudes[0] &&
          lng <= longitudes[1],
      )
      .sort(byPeople);
    let left = towns;
    for (const city of inside) {
      if (left === 0) break;
      if (taken.some((other) => kilometresApart(city, other) < APART)) continue;
      taken.push(city);
      left -= 1;
    }
    if (left > 0) throw new Error(`${country}: ${left} towns fewer than asked.`);
  }
  for (const city of [...largest(cities), ...capitals(cities)]) if (!taken.includes(city)) taken.push(city);
  taken.sort(byPeople);
  const countries = [...new Set(taken.map((city) => city.country))]
    .sort()
    .map((name) => [name, usualZone(taken.filter(({ country }) => country === name))] as const);
  const usual = new Map(countries);
  const unusual = taken.filter(({ country, timezone }) => timezone !== usual.get(country));
  const zones = [...new Set(unusual.map((city) => city.timezone))].sort();
  return {
    about:
      'Towns where summers burn, large towns and capitals, from the npm package city-timezones (MIT licence), made ' +
      'by tests/make/places.ts. ' +
      'Coordinates in 0.01 degree.',
    countries,
    zones,
    states: Object.fromEntries(
      taken.flatMap(({ state_ansi, province }) => (state_ansi ? [[province, state_ansi]] : [])),
    ),
    places: taken.map((city) => {
      const row = [
        MARKED[city.iso2]?.[city.city] ?? city.city,
        regionOf(city, taken),
        countries.findIndex(([name]) => name === city.country),
        Math.round(city.lat * 100),
        Math.round(city.lng * 100),
      ] as const;
      return unusual.includes(city) ? [...row, zones.indexOf(city.timezone)] : row;
    }),
  };
}

function largest(cities: readonly City[]): City[] {
  return cities
    .filter(({ lat }) => Math.abs(lat) <= TEMPERATE)
    .sort(byPeople)
    .slice(0, LARGEST);
}

/** @throws Error where the package has no such town */
function capitals(cities: readonly City[]): City[] {
  return CAPITALS.map((capital) => {
    const [country, name] = [capital.slice(0, 2), plain(capital.slice(3))];
    const found = cities.find(
      ({ iso2, city, city_ascii }) => iso2 === country && [plain(city), plain(city_ascii)].includes(name),
    );
    if (found === undefined) throw new Error(`No town for the capital "${capital}".`);
    return found;
  });
}

/** Said where people say it, in the United States, and where it tells two towns of one name apart. */
function regionOf({ city, province, iso2 }: City, taken: readonly City[]): string {
  const alone = taken.filter((other) => plain(other.city) === plain(city)).length === 1;
  return alone && iso2 !== 'US' ? '' : (province ?? '');
}

function byPeople(a: City, b: City): number {
  return b.pop - a.pop || a.city.localeCompare(b.city, 'en');
}

/** One place a line, so that a change shows in a difference. */
export function placesText(file: PlacesFile): string {
  const rows = file.places.map((place) => `  ${JSON.stringify(place)}`).join(',\n');
  return (
    `{\n "about": ${JSON.stringify(file.about)},\n "countries": ${JSON.stringify(file.countries)},\n ` +
    `"zones": ${JSON.stringify(file.zones)},\n "states": ${JSON.stringify(file.states)},\n "places": ` +
    `[\n${rows}\n ]\n}\n`
  );
}

export function citiesOfPackage(): readonly City[] {
  return createRequire(import.meta.url)('city-timezones').cityMapping;
}

function kilometresApart(a: City, b: City): number {
  const east = (a.lng - b.lng) * Math.cos(((a.lat + b.lat) / 2) * (Math.PI / 180));
  return 111.2 * Math.hypot(a.lat - b.lat, east);
}

/** The zone that most towns have, of equal ones the first in the alphabet. */
function usualZone(towns: readonly City[]): string {
  const many = (zone: string): number => towns.filter(({ timezone }) => timezone === zone).length;
  const zones = [...new Set(towns.map(({ timezone }) => timezone))].sort();
  return zones.reduce((best, zone) => (many(zone) > many(best) ? zone : best));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  writeFileSync(
    new URL('../../engine/survey/place/places.json', import.meta.url),
    placesText(makePlaces(citiesOfPackage())),
  );
}
