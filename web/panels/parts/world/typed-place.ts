import { nearestTown, parseCoordinates, townMeant } from '../../../../engine/index.ts';
import type { Finding, Site, Town } from '../../../../engine/index.ts';

export interface PlaceAnswer extends Pick<Site, 'latitude' | 'longitude' | 'timeZone'> {
  /** The town that was meant, and its namesakes where what was typed does not tell them apart. */
  readonly town?: Town;
  readonly others?: readonly Town[];
}

/**
 * Reads a town of the list or coordinates. The zone of typed coordinates is that of the nearest town, and shown for
 * correction.
 */
export function placeTyped(text: string): Finding<PlaceAnswer> {
  const named = /\p{L}{3}/u.test(text);
  const meant = named ? townMeant(text) : null;
  if (meant) {
    const { latitude, longitude, timeZone } = meant.town;
    return { ok: true, value: { latitude, longitude, timeZone, ...meant }, notes: [] };
  }
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
