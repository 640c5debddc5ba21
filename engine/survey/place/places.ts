import { kilometresBetween } from '../../plan/geometry/lon-lat.ts';
import { OWN_NAMES } from './own-names.ts';
import file from './places.json' with { type: 'json' };

/** A town of the built-in list. */
export interface Town {
  readonly name: string;
  /** State or province, where people say it or a namesake makes it needed; else empty. */
  readonly region: string;
  readonly country: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
}

/** Coordinates in 0.01°; a zone that is not its country's usual one. */
type Row = [name: string, region: string, country: number, latitude: number, longitude: number, zone?: number];

/**
 * Some 650 towns, most people first: where summers burn, the largest of the hot and temperate world, and every capital.
 * A typed coordinate or the browser's own location serves everywhere else.
 */
export function towns(): readonly Town[] {
  return (read ??= (file.places as Row[]).map(([name, region, at, latitude, longitude, zone]) => {
    const [country, usualZone] = file.countries[at];
    return {
      name,
      region,
      country,
      latitude: latitude / 100,
      longitude: longitude / 100,
      timeZone: zone === undefined ? usualZone : file.zones[zone],
    };
  }));
}

let read: readonly Town[] | undefined;

/** The town that a typed name means, and its namesakes where what is typed does not tell them apart. */
export function townMeant(text: string): { readonly town: Town; readonly others: readonly Town[] } | null {
  const [first, ...rest] = ranked(text);
  if (first === undefined) return null;
  const isNamesake = ({ town, rank }: Ranked): boolean =>
    rank === first.rank && plain(town.name) === plain(first.town.name);
  return { town: first.town, others: rest.filter(isNamesake).map(({ town }) => town) };
}

/** "Córdoba, Spain"; "Bakersfield, California"; "Suzhou, Anhui, China" where its country has another. */
export function townWords({ name, region, country }: Town): string {
  if (country === UNITED_STATES) return `${name}, ${region}`;
  const alike = towns().filter((other) => other.country === country && plain(other.name) === plain(name));
  return [name, ...(alike.length > 1 && region !== '' ? [region] : []), country].join(', ');
}

/** The town nearest to a place, and how far. [km] */
export function nearestTown(latitude: number, longitude: number): { town: Town; kilometres: number } {
  let nearest = { town: towns()[0], kilometres: Infinity };
  for (const town of towns()) {
    const kilometres = kilometresBetween({ latitude, longitude }, town);
    if (kilometres < nearest.kilometres) nearest = { town, kilometres };
  }
  return nearest;
}

interface Ranked {
  readonly town: Town;
  readonly rank: number;
}

const UNITED_STATES = 'United States of America';

/** What people write for a country. */
const SHORT_NAMES: Readonly<Record<string, string>> = {
  [UNITED_STATES]: 'usa us america',
  'United Kingdom': 'uk england great britain',
  'United Arab Emirates': 'uae emirates',
};

function ranked(text: string): Ranked[] {
  const [head, ...behind] = text.split(',').map(plain);
  const wanted = plain(text);
  if (wanted === '') return [];
  return towns()
    .map((town) => ({ town, rank: rankOf(town, wanted, head, behind.join(' ')) }))
    .filter(({ rank }) => rank < Infinity)
    .sort((a, b) => a.rank - b.rank);
}

/** @param head What stands before the first comma, `behind` what stands after it */
function rankOf(town: Town, wanted: string, head: string, behind: string): number {
  const names = [plain(town.name), ...(OWN_NAMES[town.name] ?? [])];
  return Math.min(...names.map((name) => rankBy(name, town, wanted, head, behind)));
}

function rankBy(name: string, town: Town, wanted: string, head: string, behind: string): number {
  if (name === wanted || (name === head && liesIn(town, behind))) return 0;
  if (wanted.startsWith(`${name} `) && liesIn(town, wanted.slice(name.length + 1))) return 0;
  if (name.startsWith(wanted) || (behind !== '' && name.startsWith(head) && liesIn(town, behind))) return 1;
  if (name.includes(wanted)) return 2;
  if (liesIn(town, wanted)) return 3;
  // A region that the list does not have.
  return behind !== '' && name === head ? 4 : Infinity;
}

/** Whether every word begins a word of its region, its state's letters or its country. */
function liesIn({ region, country }: Town, words: string): boolean {
  const states: Readonly<Record<string, string>> = file.states;
  const state = country === UNITED_STATES ? (states[region] ?? '') : '';
  const place = plain(`${region} ${state} ${country} ${SHORT_NAMES[country] ?? ''}`).split(' ');
  return words.split(' ').every((word) => place.some((part) => part.startsWith(word)));
}

/** Lower case, no accents, commas and full stops as spaces. */
export function plain(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[,.\s]+/g, ' ')
    .trim();
}
