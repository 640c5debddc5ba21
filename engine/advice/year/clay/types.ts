/** What the year says of clay. */

import type { CivilDate } from '../../../plan/types.ts';
import type { Advice } from '../advice.ts';

export interface ClayPlant {
  readonly plant: string;
  /** Outside of its crown. [m²] */
  readonly surface: number;
  /** One coat. [L] */
  readonly litres: number;
  /** Powder of the first coat and of each later one. [g] */
  readonly firstGrams: number;
  readonly nextGrams: number;
  /** How much cooler its hottest leaf gets, watered and thirsty. [K] */
  readonly cooler: { readonly watered: number; readonly thirsty: number };
  readonly fuzzyFruit: boolean;
  /** First and second coat, out of its months of flowers. */
  readonly coats: readonly [CivilDate, CivilDate];
  /** Whether they come late, after its flowers. */
  readonly waitsForFlowers: boolean;
  /** Last day on which the film is wanted. */
  readonly until: CivilDate;
}

export interface ClayAdvice {
  /** Whether the person has chosen it; nothing is dated otherwise. */
  readonly isChosen: boolean;
  readonly plants: readonly ClayPlant[];
  /** At risk, yet not to be sprayed. */
  readonly skipped: readonly { readonly plant: string; readonly why: string }[];
  /** Days of the first two coats of all plants, in order. */
  readonly coats: readonly CivilDate[];
  /** Rain after the latest coat in the journal that washed it off. */
  readonly washedOff: { readonly sprayed: CivilDate; readonly rain: CivilDate; readonly amount: number } | null;
  readonly advice: readonly Advice[];
}
