/** What the heat of one day does to a leaf at one point. */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { LeafDay } from './leaf-day.ts';
import type { Surroundings } from './surroundings.ts';

/** A leaf must be at its limit this long on end to count. [h] */
const LASTS = 0.5;

/** Below this share a leaf is as good as shaded. */
export const SHADED_SHARE = 0.1;

export interface Judgement {
  /** Σ (leaf − limit)·dt while above it. [K·h/day] */
  dose: number;
  /** Warmest of the samples looked at [°C], −∞ of none; and which it is, −1 of none. */
  peak: number;
  warmest: number;
  /** Longest time on end at the limit or over it. [h] */
  longest: number;
}

export function newJudgement(): Judgement {
  return { dose: 0, peak: -Infinity, warmest: -1, longest: 0 };
}

/**
 * @param shares of the beam, one a sample of the day
 * @param limit of the leaf, or the fruit [°C]
 * @param among the samples to look at, in order: all for a true peak, `hotSamples` where dose and time are enough
 * @param into receives the judgement, so that nothing is made anew in a search
 */
export function judgeLeaf(
  leaf: LeafDay,
  shares: Float64Array,
  around: Surroundings,
  limit: number,
  among: Int32Array = leaf.samples,
  into: Judgement = newJudgement(),
): Judgement {
  if (warmth.length < among.length) warmth = new Float64Array(2 * among.length);
  return judgeWarmth(leaf.through(shares, around, among, warmth), leaf.hours, limit, among, into);
}

/** Of the leaf at hand. [°C] */
let warmth = new Float64Array(0);

/**
 * The same of a leaf that is known to be so warm: the only loop over samples that judges.
 * @param temperatures one a sample of `among` [°C]
 */
export function judgeWarmth(
  temperatures: Float64Array,
  hours: Float64Array,
  limit: number,
  among: Int32Array,
  into: Judgement = newJudgement(),
): Judgement {
  let dose = 0;
  let peak = -Infinity;
  let warmest = -1;
  let longest = 0;
  let run = 0;
  for (let n = 0; n < among.length; n++) {
    const k = among[n];
    const temperature = temperatures[n];
    if (temperature > peak) {
      peak = temperature;
      warmest = k;
    }
    if (n > 0 && among[n - 1] !== k - 1) run = 0;
    run = temperature >= limit ? run + hours[k] : 0;
    if (run > longest) longest = run;
    if (temperature > limit) dose += (temperature - limit) * hours[k];
  }
  into.dose = dose;
  into.peak = peak;
  into.warmest = warmest;
  into.longest = longest;
  return into;
}

/** What a heat day does to a leaf at one point, or to the worst of a plant's points. */
export type HeatVerdict = 'fine' | 'at risk' | 'will burn';

const GRAVITY: readonly HeatVerdict[] = ['fine', 'at risk', 'will burn'];

/** Above 0 where `a` is the graver. */
export function byGravity(a: HeatVerdict, b: HeatVerdict): number {
  return GRAVITY.indexOf(a) - GRAVITY.indexOf(b);
}

/** The gravest of some; `fine` of none. */
export function gravest(verdicts: readonly HeatVerdict[]): HeatVerdict {
  return verdicts.reduce((worst, each) => (byGravity(each, worst) > 0 ? each : worst), 'fine');
}

/** Whether a time on end at the limit counts: half an hour does. [h] */
export function lasts(hours: number): boolean {
  return hours >= LASTS - ROUNDING;
}

/** So far over its limit even a watered leaf must be before it is said to burn: half of what it may be off. [K] */
export const BURNS_FROM = 2;

/**
 * @param thirsty longest time on end at the limit with little water [h]
 * @param watered longest time on end `BURNS_FROM` over the limit, or more, with enough water [h]
 */
export function heatVerdict(thirsty: number, watered: number): HeatVerdict {
  if (lasts(watered)) return 'will burn';
  return lasts(thirsty) ? 'at risk' : 'fine';
}

/** Samples of a heat day in a row at or over a limit. */
export interface HotRun {
  /** Sample indices, both included. */
  readonly first: number;
  readonly last: number;
  readonly hours: number;
  /** Σ (leaf − limit)·dt. [K·h] */
  readonly excess: number;
}

/** Every run at a limit or over it. @param leastShare of the beam without which a sample is not of it */
export function hotRuns(
  leaf: LeafDay,
  shares: Float64Array,
  around: Surroundings,
  limit: number,
  leastShare = 0,
): HotRun[] {
  const { samples } = leaf;
  return runsOf(
    leaf,
    leaf.through(shares, around, samples, new Float64Array(samples.length)),
    shares,
    limit,
    leastShare,
  );
}

/** The same of a leaf that is known to be so warm. @param temperatures one a sample [°C] */
export function runsOf(
  leaf: LeafDay,
  temperatures: Float64Array,
  shares: Float64Array,
  limit: number,
  leastShare = 0,
): HotRun[] {
  const runs: HotRun[] = [];
  for (const k of leaf.samples) {
    const excess = temperatures[k] - limit;
    if (excess < 0 || shares[k] < leastShare) continue;
    const before = runs.at(-1);
    const hours = leaf.hours[k];
    if (before?.last !== k - 1) runs.push({ first: k, last: k, hours, excess: excess * hours });
    else
      runs[runs.length - 1] = {
        first: before.first,
        last: k,
        hours: before.hours + hours,
        excess: before.excess + excess * hours,
      };
  }
  return runs;
}
