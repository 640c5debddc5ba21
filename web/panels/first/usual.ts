import { toCentimetre } from '../../../engine/index.ts';
import type { Knowledge } from '../../../engine/index.ts';

/** What holds where nothing is said. Our choice. [m] */
export const USUAL = {
  across: 10,
  deep: 8,
  wallHeight: 1.8,
  wallThickness: 0.2,
  houseHeight: 3.2,
  /** Each floor above the first. */
  floorHeight: 2.8,
  houseDepth: 5,
  plantHeight: 1.5,
  step: 0.75,
} as const;

export function guess(pm: number): Knowledge {
  return { by: 'guess', pm: toCentimetre(pm) };
}
