import type { Finding } from '../estimate.ts';
import type { ClimateAsked, PlaceClimate } from './place-climate.ts';

/** `placeClimate`, with the table of towns fetched when a climate is first asked for. */
export async function climateOfPlace(asked: ClimateAsked): Promise<Finding<PlaceClimate>> {
  const { placeClimate } = await import('./place-climate.ts');
  return placeClimate(asked);
}
