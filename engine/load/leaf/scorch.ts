import type { PlantRow } from '../../plan/types.ts';
import type { HeatDay } from './heat-day.ts';
import { surfaceTemperature, type LeafMoment, type Watering } from './leaf.ts';

/** Below this share a leaf is as good as shaded. */
export const SHADED_SHARE = 0.1;

/** Samples of a heat day in a row at or over the limit. */
export interface HotRun {
  /** Sample indices, both included. */
  readonly first: number;
  readonly last: number;
  readonly hours: number;
  /** Σ (leaf − limit)·dt. [K·h] */
  readonly excess: number;
}

/** What the sun of a heat day does to a leaf at one point. */
export interface Scorch {
  /** Σ (thirsty leaf − limit)·dt while above it. [K·h/day] */
  readonly dose: number;
  /** Warmest of the day. [°C] */
  readonly thirsty: number;
  readonly watered: number;
  /** Sample at which the thirsty leaf is warmest; −1 on a day without sun. */
  readonly warmest: number;
  /** Longest time on end at or over the limit. [h] */
  readonly thirstyHours: number;
  readonly wateredHours: number;
  /**
   * The thirsty leaf's run in the sun with the most excess; where the air alone is too hot for it, its run in the
   * shade.
   */
  readonly run: HotRun | null;
}

/**
 * @param limit of the leaf, or the fruit [°C]
 * @param shares of the beam, one a sample
 * @param skyView at the point on that day
 */
export function scorchAt(heat: HeatDay, row: PlantRow, limit: number, shares: Float64Array, skyView: number): Scorch {
  const thirsty = leafDay(heat, row, 'thirsty', limit, shares, skyView);
  const watered = leafDay(heat, row, 'watered', limit, shares, skyView);
  return {
    dose: thirsty.dose,
    thirsty: thirsty.peak,
    watered: watered.peak,
    warmest: thirsty.warmest,
    thirstyHours: thirsty.longest,
    wateredHours: watered.longest,
    run: thirsty.run,
  };
}

/** Steps of share and of sky view in `ThirstyTable`: a leaf changes by less than 0.1 K from one to the next. */
const SHARE_STEPS = 256;
const SKY_STEPS = 64;

/** The table's nearest step of a share, and of a sky view. */
export function shareStep(share: number): number {
  return Math.round(share * SHARE_STEPS);
}

export function skyStep(skyView: number): number {
  return Math.round(skyView * SKY_STEPS);
}

/**
 * A thirsty leaf's excess over its limit by share and sky view, each worked out once a moment: a bed has hundreds of
 * like cells.
 */
export interface ThirstyTable {
  /** Turns to another moment. */
  begin(moment: LeafMoment): void;
  /** Leaf − limit at steps of `shareStep` and `skyStep`; below 0 where the leaf is cool enough. [K] */
  excess(shareStep: number, skyStep: number): number;
}

export function thirstyTable(row: PlantRow, limit: number): ThirstyTable {
  const known = new Float64Array((SHARE_STEPS + 1) * (SKY_STEPS + 1));
  // The turn in which an entry was worked out; 0: never.
  const turnOf = new Uint32Array(known.length);
  let turn = 0;
  let now: LeafMoment | null = null;
  return {
    begin(moment) {
      now = moment;
      turn++;
    },
    excess(share, skyView) {
      const index = share * (SKY_STEPS + 1) + skyView;
      if (now !== null && turnOf[index] !== turn) {
        turnOf[index] = turn;
        known[index] = surfaceTemperature(now, row, 'thirsty', share / SHARE_STEPS, skyView / SKY_STEPS) - limit;
      }
      return known[index];
    },
  };
}

function leafDay(
  heat: HeatDay,
  row: PlantRow,
  watering: Watering,
  limit: number,
  shares: Float64Array,
  skyView: number,
) {
  const { hours, count } = heat.samples;
  const excess = new Float64Array(count);
  let peak = count === 0 ? heat.day.high : -Infinity;
  let warmest = -1;
  let dose = 0;
  for (let k = 0; k < count; k++) {
    const leaf = surfaceTemperature(heat.moments[k], row, watering, shares[k], skyView);
    if (leaf > peak) [peak, warmest] = [leaf, k];
    excess[k] = leaf - limit;
    if (leaf > limit) dose += (leaf - limit) * hours[k];
  }
  const runs = runsWhere(hours, excess, (k) => excess[k] >= 0);
  const sunlit = runsWhere(hours, excess, (k) => excess[k] >= 0 && shares[k] >= SHADED_SHARE);
  return {
    peak,
    warmest,
    dose,
    longest: Math.max(0, ...runs.map((run) => run.hours)),
    run: hottest(sunlit) ?? hottest(runs),
  };
}

/** Samples in a row for which something holds. */
function runsWhere(hours: Float64Array, excess: Float64Array, holds: (k: number) => boolean): HotRun[] {
  const runs: HotRun[] = [];
  for (let k = 0; k < excess.length; k++) {
    if (!holds(k)) continue;
    const before = runs.at(-1);
    const run = { first: k, last: k, hours: hours[k], excess: excess[k] * hours[k] };
    if (before?.last !== k - 1) runs.push(run);
    else
      runs[runs.length - 1] = {
        first: before.first,
        last: k,
        hours: before.hours + run.hours,
        excess: before.excess + run.excess,
      };
  }
  return runs;
}

function hottest(runs: readonly HotRun[]): HotRun | null {
  return runs.reduce<HotRun | null>((best, run) => (best === null || run.excess > best.excess ? run : best), null);
}
