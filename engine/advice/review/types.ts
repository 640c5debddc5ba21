/** What readings and damage say about the estimate. */

import type { CivilDate, Plan } from '../../plan/types.ts';
import type { YearFinding } from './year-finding.ts';

/** One leaf reading held against the estimate of the same minute, with the air that was typed. */
export interface ReadingCheck {
  readonly id: string;
  readonly plant: string | null;
  readonly when: string;
  /** [°C] */
  readonly leaf: number;
  readonly air: number;
  /** Share of the beam that reaches it. */
  readonly share: number;
  /** The estimate for a watered leaf and for a thirsty one. [°C] */
  readonly watered: number;
  readonly thirsty: number;
  /** How far the reading lies above (+) or below (−) what water could explain; 0 between the two. [K] */
  readonly difference: number;
  /** How far the estimate nearer to the reading may be off. [K] */
  readonly spread: number;
  /** More than that away. */
  readonly outside: boolean;
}

export interface PairCheck {
  readonly open: string;
  readonly covered: string;
  readonly minutesApart: number;
  /** Open less covered, measured. [K] `null` where a leaf was not read. */
  readonly cooler: number | null;
  /** The same by the estimate: its smallest and largest. [K] */
  readonly estimated: readonly [number, number] | null;
  /** How far those may be off, and the difference where the shade lets a thirsty leaf keep its pores open. [K] */
  readonly spread: number | null;
  readonly opened: number | null;
  /** From a light pair: 1 − covered/open. */
  readonly density: number | null;
  /** How far their two airs differ, where that is more than the air of one yard does. [K] */
  readonly airsApart: number | null;
}

/** An input whose change brings the estimate nearer to the readings: offered, never made. */
export interface Correction {
  /** What a person would call it. */
  readonly what: string;
  readonly pointer: string;
  readonly from: number;
  readonly to: number;
  /** Root mean square of the readings' differences, before and after. [K] */
  readonly errorBefore: number;
  readonly errorAfter: number;
  readonly sentence: string;
  /** The plan with it made. */
  readonly plan: Plan;
}

/** One plant's damage in two summers, and what is to be thought of it. */
export interface YearComparison {
  readonly plant: string;
  readonly years: readonly [number, number];
  /** Worst score of each summer, 0 to 5. */
  readonly damage: readonly [number, number];
  /** Scorch dose of the earlier year's yard in each year's heat. [K·h/day] `null` where that is not known. */
  readonly dose: readonly [number, number] | null;
  /** By how much the later summer's hottest month was warmer. [K] `null` where it is not known. */
  readonly warmer: number | null;
  /** Damage to expect in the later summer by its partners, else by the heat alone, 0 to 5. */
  readonly expected: number | null;
  /** Plants scored in both summers that nothing was changed about, with their scores. */
  readonly partners: readonly { readonly plant: string; readonly damage: readonly [number, number] }[];
  /** What was changed to its good. */
  readonly eased: 'cover' | 'place' | 'yard' | null;
  /** Whether nothing was changed about it: then it tells what the summer did. */
  readonly leftAlone: boolean;
  readonly finding: YearFinding;
  /** The answer in one sentence, and with what it rests on. */
  readonly headline: string;
  readonly sentence: string;
}

export interface DamageNote {
  readonly plant: string;
  readonly date: CivilDate;
  readonly score: number;
  readonly words: string;
}

/** `review --json`; a correction's plan is left out there. */
export interface ReviewResult {
  readonly readings: readonly ReadingCheck[];
  readonly pairs: readonly PairCheck[];
  readonly corrections: readonly Correction[];
  readonly damage: readonly DamageNote[];
  readonly years: readonly YearComparison[];
  readonly sentences: readonly string[];
  readonly notes: readonly string[];
}
