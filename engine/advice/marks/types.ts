import type { ClockTime, PlanPoint } from '../../plan/types.ts';

/** An edge of a feature's shadow, marked on the ground. */
export interface ShadowMark {
  readonly feature: string;
  readonly at: PlanPoint;
  readonly when: ClockTime;
}

/** A change of the plan that would bring a mark onto its edge. */
export interface ShadowCure {
  readonly what: 'north' | 'height';
  /** `null` for north. */
  readonly feature: string | null;
  /** What to add: ° or m. */
  readonly by: number;
  /** What `site.upBearing` or the feature's `height` is then: ° or m. */
  readonly to: number;
  /** `by` in units of the number's own ±. */
  readonly inPm: number;
  /** "the house 0.35 m higher", "the plan’s up turned by 4.2° clockwise". */
  readonly words: string;
}

export interface MarkCheck {
  readonly mark: ShadowMark;
  /** How far the mark lies outside the predicted shadow, negative inside it; `null`: no edge within 6 m. [cm] */
  readonly residual: number | null;
  /** Where the predicted edge is nearest to the mark. */
  readonly nearest: PlanPoint | null;
  /** North and the height, the one that is fewer of its own ± off first; those that cannot cure it left out. */
  readonly cures: readonly ShadowCure[];
  readonly sentence: string;
}

export interface MarksTogether {
  /** North and the height of each feature that was marked. */
  readonly changes: readonly ShadowCure[];
  /** Of them, those that are worth making; empty where the marks agree with the plan or contradict each other. */
  readonly worth: readonly ShadowCure[];
  /** What is left at each mark that has an edge, in their order. [cm] */
  readonly left: readonly number[];
  readonly contradict: boolean;
  /**
   * Minutes that the clock would have to be put on for the marks to agree; `null`: no whole hour does it, or none need.
   */
  readonly clock: number | null;
  readonly sentence: string;
}

export interface ShadowMarksResult {
  readonly marks: readonly MarkCheck[];
  /** Least squares over north and the heights concerned; `null` with fewer than three marks that have an edge. */
  readonly together: MarksTogether | null;
}
