import { findTowns, nearestTown, parseCoordinates } from '../../../../engine/index.ts';
import type { Finding, Site } from '../../../../engine/index.ts';

export type PlaceAnswer = Pick<Site, 'latitude' | 'longitude' | 'timeZone'>;

/**
 * Reads a town of the list or coordinates. The zone of typed coordinates is that of the nearest town, and shown for
 * correction.
 */
export function placeOf(text: string): Finding<PlaceAnswer> {
  const named = /\p{L}{3}/u.test(text);
  const town = named ? findTowns(text, 1)[0] : undefined;
  if (town)
    return {
      ok: true,
      value: { latitude: town.latitude, longitude: town.longitude, timeZone: town.timeZone },
      notes: [],
    };
  if (named)
    return {
      ok: false,
      reason:
        `"${text.slice(0, 60)}" is not in the list. Choose a bigger town near by, or type latitude ` + `and longitude.`,
    };
  const read = parseCoordinates(text);
  if (!read.ok) return read;
  const { latitude, longitude } = read.value;
  return {
    ok: true,
    value: { latitude, longitude, timeZone: nearestTown(latitude, longitude).town.timeZone },
    notes: read.notes,
  };
}

export function townWords({
  name,
  region,
  country,
}: {
  readonly name: string;
  readonly region: string;
  readonly country: string;
}): string {
  return [name, region, country].filter((part) => part !== '').join(', ');
}
