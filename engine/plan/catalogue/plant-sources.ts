/** Where the numbers of the catalogue are from; apart from its rows, for nothing is reckoned with them. */

import file from './plant-sources.json' with { type: 'json' };

/** Where a number is from, and whether its text was seen, or is from memory, or common practice. */
export interface PlantSource {
  readonly citation: string;
  readonly status: string;
}

/** By the keys that a row's `sources` holds. */
export const PLANT_SOURCES: ReadonlyMap<string, PlantSource> = new Map(Object.entries(file.sources));
