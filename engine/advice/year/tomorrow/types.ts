/** What one day's list is asked with, and what it says. */

import type { Caution } from '../../../frame/work/types.ts';
import type { ClothNow, PlantSide, Roots, Stretch, Verdict } from '../../../load/types.ts';
import type { CivilDate } from '../../../plan/types.ts';
import type { ClockStretch } from '../../../plan/units/clock.ts';
import type { Advice } from '../advice.ts';

export interface Forecast {
  readonly date: CivilDate;
  /** As the weather service gives them; the plan's own offset is added. [°C] */
  readonly high: number;
  /** Absent: as far below the high as in a mean day of the month. */
  readonly low?: number;
}

/** How a plant stands that day, under a clear sky. */
export interface TomorrowPlant {
  readonly plant: string;
  readonly verdict: Exclude<Verdict, 'too dark'>;
  /** When its worst side is at or over the limit; `null` where it never is. */
  readonly when: Stretch | null;
  /** `null` for a bed, and where it never is. */
  readonly from: PlantSide | null;
  /** Cloth that hangs there that day and lets that sun through, or in under it; `null`: none has to do with it. */
  readonly cloth: ClothNow | null;
  /** Warmest leaf at its worst side, and the limit. [°C] */
  readonly watered: number;
  readonly thirsty: number;
  readonly limit: number;
  /** Of a pot, that day; `null`: it stands in the ground. */
  readonly roots: Roots | null;
  /** [L] that day */
  readonly water: number | null;
}

export interface TomorrowTask {
  /** "HH:MM", or the evening before. */
  readonly at: string | 'the evening before';
  readonly plants: readonly string[];
  readonly advice: Advice;
}

export interface Tomorrow {
  readonly date: CivilDate;
  readonly high: number;
  readonly low: number;
  /** From sunrise to sunset; `null` where the sun does not rise or not set. */
  readonly sunUp: ClockStretch | null;
  /** Asked back where a typed figure is far from the month's; `null`: it is not. */
  readonly asked: string | null;
  /** Worst first. */
  readonly plants: readonly TomorrowPlant[];
  /** In the order of the day. */
  readonly tasks: readonly TomorrowTask[];
  readonly cautions: readonly Caution[];
  readonly notes: readonly string[];
}
