/** What the year's advice looks like: sentences with their grounds, dated work, and a page a month. */

import type { Caution } from '../../../frame/work/types.ts';
import type { CivilDate } from '../../../plan/types.ts';
import type { Advice } from '../advice.ts';
import type { ClayAdvice } from '../clay/types.ts';
import type { ClothSeason } from '../cloth/types.ts';
import type { FrostAdvice } from '../frost/types.ts';
import type { PlantWater } from '../water/water.ts';

/** Work or a time of the year with a name that stays the same from one run to the next. */
export interface SeasonEvent {
  /** Unique in the plan and the same whenever the same work is meant: the calendar's UID is made of it. */
  readonly id: string;
  readonly kind: 'heat' | 'pots' | 'cloth-up' | 'cloth-down' | 'harden' | 'clay' | 'frost' | 'winter-cover';
  /** First and last day, both included. */
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly title: string;
  readonly advice: readonly Advice[];
  /** Ids of what it is about. */
  readonly features: readonly string[];
}

/** What to do in one month. */
export interface MonthPage {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  readonly advice: readonly Advice[];
}

/** `season --json`. */
export interface SeasonResult {
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly cloth: readonly ClothSeason[];
  readonly clay: ClayAdvice;
  readonly water: readonly PlantWater[];
  readonly frost: FrostAdvice;
  readonly months: readonly MonthPage[];
  readonly events: readonly SeasonEvent[];
  readonly cautions: readonly Caution[];
  /** Whether the dates hang on a climate that is a guess. */
  readonly rough: boolean;
  readonly notes: readonly string[];
}

/** A plant that has just come into more sun. */
export interface Newcomer {
  readonly plant: string;
  readonly since: CivilDate;
  /** Direct sun of a clear hot day where it was, and where it stands. [h] */
  readonly from: number;
  readonly to: number;
  /** Whether last year's plan says where it was. */
  readonly fromKnown: boolean;
}
