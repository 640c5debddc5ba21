import { placeCheckLine, placeNotes } from './place.ts';
import { nearestTown, type Town } from './places.ts';

export interface WhereaboutsRequest {
  readonly latitude: number;
  readonly longitude: number;
  /** Where the person corrected it; else that of the place. */
  readonly timeZone?: string;
  readonly year: number;
}

export interface Whereabouts {
  readonly timeZone: string;
  /** A line by which a lost sign is noticed. */
  readonly check: string;
  readonly near: { readonly town: Town; readonly kilometres: number };
  readonly notes: readonly string[];
}

/** The zone of a place, from the table that is fetched when first asked for, and how to tell that it is right. */
export async function whereabouts({
  latitude,
  longitude,
  timeZone: corrected,
  year,
}: WhereaboutsRequest): Promise<Whereabouts> {
  const timeZone = corrected ?? (await import('./zone-at.ts')).zoneAt(latitude, longitude);
  return {
    timeZone,
    check: placeCheckLine({ latitude, longitude, timeZone }, year),
    near: nearestTown(latitude, longitude),
    notes: placeNotes(latitude),
  };
}
