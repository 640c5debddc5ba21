/** When cloth should hang, and why. */

import type { LightStanding } from '../../../load/light/light-class.ts';
import type { CivilDate, YearlySpan } from '../../../plan/types.ts';
import type { Advice } from '../advice.ts';

/** Scorch dose of a month's heat day, with the cloth and without. */
export interface ClothMonth {
  readonly date: CivilDate;
  /** Summed over the plants it shelters. [K·h/day] */
  readonly harmOpen: number;
  readonly harmCovered: number;
}

/** A plant's daily light without a cloth and under it. [mol/m² a day] */
export interface ClothLight {
  readonly plant: string;
  readonly open: number;
  readonly covered: number;
  /** Whether that is enough under it, and without it. */
  readonly standing: LightStanding;
  readonly standingOpen: LightStanding;
}

/** When one canopy's or screen's cloth should hang. */
export interface ClothSeason {
  readonly canopy: string;
  /** Plants it spares harm on some month's heat day. */
  readonly plants: readonly string[];
  /** `null` where it spares nothing. */
  readonly up: CivilDate | null;
  readonly down: CivilDate | null;
  /** The harm begins before, or goes on after, the months that the climate has figures for. */
  readonly earlierUnknown: boolean;
  readonly laterUnknown: boolean;
  /** Plants that would be short of light for it in other months: for their sake it hangs only while it spares much. */
  readonly shortOfLight: readonly string[];
  /** As the plan has it today; `null`: hangs all year. */
  readonly drawn: YearlySpan | null;
  readonly months: readonly ClothMonth[];
  /** The summer's mean for those of its plants that notice: what every other page tells of them. */
  readonly light: readonly ClothLight[];
  readonly advice: readonly Advice[];
}
