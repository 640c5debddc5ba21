import type { Roots, Stretch } from '../../load/types.ts';
import type { CivilDate, Side } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { SideHeat } from './points.ts';
import type { Rival, RivalId } from './rivals.ts';

/** What was burnt; `pot`: it wilted whole, in its pot. */
export const DAMAGE_PARTS = ['leaf', 'fruit', 'flower', 'bark', 'pot'] as const;
export type DamagePart = (typeof DAMAGE_PARTS)[number];

export interface WhyRequest {
  /** Id of a plant, bed or planted tree. */
  readonly plant: string;
  /** What is left out is read from the plant's latest damage in the journal. */
  readonly side?: Side;
  readonly part?: DamagePart;
  readonly date?: CivilDate;
  /** Rival causes that the person says yes to. */
  readonly rivals?: readonly RivalId[];
  readonly weather?: Weather;
}

export type WhyAnswer = 'explains' | 'could be' | 'does not';

export interface RankedSide extends SideHeat {
  /** 1: the most scorch dose of the eight; `null` of a top and of a bed. */
  readonly rank: number | null;
}

export interface WhyResult {
  readonly plant: string;
  readonly side: Side;
  readonly part: DamagePart;
  /** Of the damage; `null` where nobody knows. */
  readonly date: CivilDate | null;
  /** The hot day it was judged on. */
  readonly heatDay: CivilDate;
  readonly answer: WhyAnswer;
  /** When the sun did it, on that hot day; `null` where it did not. */
  readonly when: Stretch | null;
  /** [°C] `null` where the plant's kind is not known. */
  readonly limit: number | null;
  /** Top first, then the eight sides; a bed has one entry. */
  readonly sides: readonly RankedSide[];
  readonly rivals: readonly Rival[];
  /** In its pot, on that hot day; `null` of what stands in none. */
  readonly roots: Roots | null;
  /** In a few words whether it was the sun, and what speaks for it; the sentence is both, with the plant's name. */
  readonly verdict: string;
  readonly evidence: string;
  readonly sentence: string;
  readonly notes: readonly string[];
}
