import type { CivilDate } from '../../../plan/types.ts';
import type { Advice } from '../advice.ts';
import type { FrostHelp } from './help.ts';

export interface FrostPlant {
  readonly plant: string;
  /** Air temperature at which damage begins. [°C] */
  readonly damage: number;
  readonly help: FrostHelp;
  /** Cover when the forecast is at or below this. [°C] */
  readonly coverBelow: number;
  /** The coldest night on record reaches it; `null` where no record is in the plan. */
  readonly reached: boolean | null;
  readonly exposure: 'exposed' | 'half sheltered' | 'sheltered';
  /** Nights of a mean month with air at or below `damage`; months without figures are left out. */
  readonly nights: readonly { readonly month: number; readonly nights: number }[];
  /** Annual that frost ends: nothing to bring through the winter. */
  readonly annual: boolean;
  /** Daily light under a cover on a clear day in the middle of the frost time. [mol/m² a day] */
  readonly light: { readonly low: number; readonly high: number; readonly enough: boolean } | null;
}

export interface FrostAdvice {
  /** First and last frost to expect after the season; `null` where the climate does not say. */
  readonly window: { readonly first: CivilDate; readonly last: CivilDate; readonly sunset: string | null } | null;
  readonly lowest: number | null;
  readonly plants: readonly FrostPlant[];
  readonly advice: readonly Advice[];
}
