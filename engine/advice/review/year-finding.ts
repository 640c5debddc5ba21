/** What two summers' damage of one plant says, all else being weighed: a rule without a yard. */

export type YearFinding =
  | 'the change made the difference'
  | 'better than the heat explains'
  | 'better, but the cooler summer may explain it'
  | 'better, but so was what stayed as it was'
  | 'the same'
  | 'worse, but the hotter summer may explain it'
  | 'worse, but so was what stayed as it was'
  | 'worse than the heat explains'
  | 'too little to tell';

/** Damage is scored in whole steps: less than one says nothing. */
const ONE_STEP = 1;
/** With nothing but the heat to go by, damage is told from what heat explains by two steps: heat is no scale of it. */
const CLEAR_OF_HEAT = 2;
/** Heat doses within this share of each other are alike. Our choice. */
const AS_HOT = 0.05;

export interface TwoYears {
  /** Worst score of each summer, 0 to 5. */
  readonly damage: readonly [number, number];
  /** What the later summer's heat alone would make of the earlier damage, and heat dose over heat dose. */
  readonly byHeat: { readonly expected: number; readonly ratio: number } | null;
  /** What happened to plants left as they were makes of it; `null`: none is scored. */
  readonly byPartner: number | null;
  /** Whether the yard round it was changed to its good. */
  readonly isEased: boolean;
}

export function yearFinding({ damage: [before, after], byHeat, byPartner, isEased }: TwoYears): YearFinding {
  const change = after - before;
  if (before === 0 && after === 0) return 'the same';
  if (byPartner !== null) {
    const net = after - byPartner;
    if (net <= -ONE_STEP) return isEased ? 'the change made the difference' : 'better than the heat explains';
    if (net >= ONE_STEP) return 'worse than the heat explains';
    if (Math.abs(change) < ONE_STEP) return 'the same';
    return change < 0 ? 'better, but so was what stayed as it was' : 'worse, but so was what stayed as it was';
  }
  if (byHeat === null) return 'too little to tell';
  const { expected, ratio } = byHeat;
  if (Math.abs(change) < ONE_STEP) {
    if (expected <= before - CLEAR_OF_HEAT) return 'worse than the heat explains';
    return expected >= before + CLEAR_OF_HEAT ? 'better than the heat explains' : 'the same';
  }
  if (change < 0)
    return ratio < 1 - AS_HOT && after > expected - CLEAR_OF_HEAT
      ? 'better, but the cooler summer may explain it'
      : 'better than the heat explains';
  return ratio > 1 + AS_HOT && after < expected + CLEAR_OF_HEAT
    ? 'worse, but the hotter summer may explain it'
    : 'worse than the heat explains';
}
