import file from './places.json' with { type: 'json' };

/** A town of the built-in list. */
export interface Town {
  readonly name: string;
  /** State, province or county; may be empty. */
  readonly region: string;
  readonly country: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
}

type Row = [name: string, region: string, country: number, latitude: number, longitude: number, zone: number];

/**
 * Some 400 towns where summers burn, most people first. A typed coordinate or the browser's own location serves
 * everywhere else.
 */
export const TOWNS: readonly Town[] = (file.places as Row[]).map(
  ([name, region, country, latitude, longitude, zone]) => ({
    name,
    region,
    country: file.countries[country],
    latitude,
    longitude,
    timeZone: file.zones[zone],
  }),
);

/**
 * Towns by what a person begins to type, marks and capitals not minded: names that begin with it first, then names that
 * hold it,
 * then regions and countries.
 */
export function findTowns(text: string, limit = 8): Town[] {
  const wanted = plain(text);
  if (wanted === '') return [];
  const ranked = TOWNS.map((town) => ({ town, rank: rankOf(town, wanted) })).filter(({ rank }) => rank < Infinity);
  ranked.sort((a, b) => a.rank - b.rank);
  return ranked.slice(0, limit).map(({ town }) => town);
}

/** The town nearest to a place, and how far. [km] */
export function nearestTown(latitude: number, longitude: number): { town: Town; kilometres: number } {
  let nearest = { town: TOWNS[0], kilometres: Infinity };
  for (const town of TOWNS) {
    const kilometres = greatCircleKm(latitude, longitude, town.latitude, town.longitude);
    if (kilometres < nearest.kilometres) nearest = { town, kilometres };
  }
  return nearest;
}

function rankOf(town: Town, wanted: string): number {
  const name = plain(town.name);
  if (name === wanted) return 0;
  if (name.startsWith(wanted)) return 1;
  if (`${name} ${plain(town.region)} ${plain(town.country)}`.startsWith(wanted)) return 2;
  if (name.includes(wanted)) return 3;
  return plain(`${town.region} ${town.country}`)
    .split(' ')
    .some((word) => word.startsWith(wanted))
    ? 4
    : Infinity;
}

/** Lower case, no accents, commas as spaces. */
function plain(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[,\s]+/g, ' ')
    .trim();
}

/** Haversine on a sphere of 6371 km. */
export function greatCircleKm(latitudeA: number, longitudeA: number, latitudeB: number, longitudeB: number): number {
  const rad = Math.PI / 180;
  const half = (degrees: number): number => Math.sin((degrees * rad) / 2) ** 2;
  const h =
    half(latitudeB - latitudeA) + Math.cos(latitudeA * rad) * Math.cos(latitudeB * rad) * half(longitudeB - longitudeA);
  return 2 * 6371 * Math.asin(Math.sqrt(h));
}
