import type { Nine } from '../types.ts';
import { CHANNELS, type Channel, type Weights } from './weights.ts';

/** Lowest mean hot load of grades 2 to 5. [MJ/m² a day] This project's own index. */
export const GRADE_FROM = [2, 6, 12, 18] as const;
/** Grades 1 to 5 in words. */
export const GRADE_WORDS = ['mild', 'warm', 'strong', 'harsh', 'scorching'] as const;

/** Grade of a mean hot load, 1 to 5. Never a mean of grades. */
export function gradeOf(hotLoad: number): number {
  let grade = 1;
  for (const from of GRADE_FROM) if (hotLoad >= from) grade += 1;
  return grade;
}

/**
 * The nine quantities from sums over the channels and the sky view in each part of the year.
 * @param skyViews sky view in the yearly state of each of `weights.sky`
 */
export function nineOf(sums: Readonly<Record<Channel, number>>, weights: Weights, skyViews: readonly number[]): Nine {
  let skyView = 0;
  let skyLight = 0;
  for (const [k, part] of weights.sky.entries()) {
    skyView += part.days * skyViews[k];
    skyLight += part.light * skyViews[k];
  }
  return {
    sunHours: sums.sunHours,
    morningHours: sums.morningHours,
    afternoonHours: Math.max(0, sums.sunHours - sums.morningHours),
    hotHours: sums.hotHours,
    beamDose: sums.beamDose,
    hotLoad: sums.hotLoad,
    dailyLight: sums.beamLight + skyLight,
    skyView,
    grade: gradeOf(sums.hotLoad),
  };
}

/** Samples that are summed, and what the sums are multiplied by. */
export interface Range {
  readonly first: number;
  /** Not included. */
  readonly end: number;
  readonly times: number;
}

/**
 * The nine quantities at one point from the share of each sample's beam that reaches it.
 * @param range all samples, once, where nothing is said
 */
export function nineFromShares(
  shares: Float64Array,
  weights: Weights,
  skyViews: readonly number[],
  range?: Range,
): Nine {
  const { first, end, times } = range ?? { first: 0, end: shares.length, times: 1 };
  const { channels } = weights;
  const sums = { sunHours: 0, morningHours: 0, hotHours: 0, beamDose: 0, hotLoad: 0, beamLight: 0 };
  for (const channel of CHANNELS) {
    const weight = channels[channel];
    let sum = 0;
    for (let k = first; k < end; k++) sum += shares[k] * weight[k];
    sums[channel] = sum * times;
  }
  return nineOf(sums, weights, skyViews);
}

/** Means of several points; the grade is that of the mean hot load. */
export function meanNine(points: readonly Nine[]): Nine {
  const mean = (key: keyof Nine) => points.reduce((sum, point) => sum + point[key], 0) / points.length;
  const hotLoad = mean('hotLoad');
  return {
    sunHours: mean('sunHours'),
    morningHours: mean('morningHours'),
    afternoonHours: mean('afternoonHours'),
    hotHours: mean('hotHours'),
    beamDose: mean('beamDose'),
    hotLoad,
    dailyLight: mean('dailyLight'),
    skyView: mean('skyView'),
    grade: gradeOf(hotLoad),
  };
}
