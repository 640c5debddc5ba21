/** Fruit in the search: it feels the beam of the hour before, so that the pairs of an hour are harmed together. */

import type { HeatDay } from '../../../load/leaf/heat-day.ts';
import type { LeafDay } from '../../../load/leaf/leaf-day.ts';
import { type Surroundings, underSky } from '../../../load/leaf/surroundings.ts';

/** A pair as it is found, before all are laid out by columns. */
export interface Row {
  readonly view: number;
  readonly heat: number;
  readonly sample: number;
  readonly weight: number;
  /** [K] */
  readonly excess: number;
  /** `null`: a leaf, which answers at once. */
  readonly fruit: FruitRow | null;
}

interface FruitRow {
  /** How many pairs its hour goes back. */
  readonly back: number;
  readonly beam: number;
  readonly perBeam: number;
  readonly shaded: number;
  readonly perSky: number;
}

/** Of each pair of a fruit; a fruit's excess is shaded + perBeam × Σ beam of its hour − perSky × the hidden sky. */
export interface FruitHours {
  /** First pair of the hour that it feels; −1: the pair is a leaf's. */
  readonly first: Int32Array;
  /** Beam that reaches it in the sample as the yard is. [W·h/m²] */
  readonly beam: Float64Array;
  /** [K per W·h/m²] */
  readonly perBeam: Float64Array;
  /** Excess without any beam [K], and how much less it is without any sky. [K] */
  readonly shaded: Float64Array;
  readonly perSky: Float64Array;
  /** Last pair that feels it, and one more. */
  readonly feltUntil: Int32Array;
  /** Room for the beam that is left under a cloth. */
  readonly left: Float64Array;
}

/** What of the harmful pairs is asked here. */
interface FruitPairs {
  readonly fruit: FruitHours;
  /** What a kelvin of excess counts for; 0 where only later moments feel the pair's beam. */
  readonly weight: Float64Array;
  /** As the yard is. [K] */
  readonly excess: Float64Array;
}

/** The pairs of a fruit at one point on one heat day: all whose sun it feels when it may be too hot. */
export function fruitRows(
  view: number,
  heat: number,
  { moments, samples }: HeatDay,
  leaf: LeafDay,
  limit: number,
  shares: Float64Array,
  around: Surroundings,
  weight: number,
): Row[] {
  const hot = new Set(leaf.hotSamples(limit));
  return Array.from(leaf.feltSamples(limit), (k): Row => {
    const { beam, hour } = moments[k];
    const shaded = leaf.at(k, 0, around) - limit;
    return {
      view,
      heat,
      sample: k,
      weight: hot.has(k) ? weight * samples.hours[k] : 0,
      excess: leaf.on(k, shares, around) - limit,
      fruit: {
        back: k - hour.first,
        beam: beam * samples.hours[k] * shares[k],
        perBeam: hour.beam > 0 ? (leaf.at(k, 1, around) - limit - shaded) / hour.beam : 0,
        shaded,
        perSky: shaded - (leaf.at(k, 0, underSky(around, 0)) - limit),
      },
    };
  });
}

export function fruitHours(rows: readonly Row[]): FruitHours {
  const column = (of: (row: FruitRow) => number) => Float64Array.from(rows, ({ fruit }) => (fruit ? of(fruit) : 0));
  // What is felt only at moments that are never hot is no pair, so that an hour may reach back before the first one.
  const isOfHour = (p: number, q: number) => q >= 0 && rows[q].view === rows[p].view && rows[q].heat === rows[p].heat;
  const first = Int32Array.from(rows, ({ fruit, weight, sample }, p) => {
    if (fruit === null) return -1;
    let from = p;
    while (weight > 0 && isOfHour(p, from - 1) && rows[from - 1].sample >= sample - fruit.back) from--;
    return from;
  });
  const feltUntil = Int32Array.from(rows.keys(), (p) => p + 1);
  for (let p = 0; p < rows.length; p++) for (let q = first[p]; q >= 0 && q <= p; q++) feltUntil[q] = p + 1;
  return {
    first,
    feltUntil,
    beam: column(({ beam }) => beam),
    perBeam: column(({ perBeam }) => perBeam),
    shaded: column(({ shaded }) => shaded),
    perSky: column(({ perSky }) => perSky),
    left: new Float64Array(rows.length),
  };
}

export function isFruit({ fruit }: FruitPairs, p: number): boolean {
  return fruit.first[p] >= 0;
}

/** What a fruit's pair counts for when so much of its own beam is left; the pairs of its hour were asked before it. */
export function harmOfFruit({ fruit, weight }: FruitPairs, p: number, beam: number, hidden: number): number {
  const { left, first, perBeam, shaded, perSky } = fruit;
  left[p] = beam;
  if (weight[p] === 0) return 0;
  let felt = 0;
  for (let q = first[p]; q <= p; q++) felt += left[q];
  const excess = shaded[p] + perBeam[p] * felt - perSky[p] * hidden;
  return excess > 0 ? weight[p] * excess : 0;
}

/**
 * The most that taking so much of one pair's beam spares, whatever else is taken: what an hour spares is never more
 * than the sum over its pairs. [K·h/day]
 */
export function fruitGain({ fruit, weight, excess }: FruitPairs, p: number, taken: number): number {
  let gain = 0;
  for (let k = p; k < fruit.feltUntil[p]; k++)
    if (fruit.first[k] <= p && excess[k] > 0) gain += weight[k] * Math.min(excess[k], fruit.perBeam[k] * taken);
  return gain;
}

/**
 * A pair's part of what its hours are spared where beam is taken of all pairs: together no more than is spared.
 * @param takenOf beam that is taken of a pair [W·h/m²] [K·h/day]
 */
export function fruitPart({ fruit, weight, excess }: FruitPairs, p: number, takenOf: (q: number) => number): number {
  const own = takenOf(p);
  let gain = 0;
  for (let k = p; k < fruit.feltUntil[p] && own > 0; k++) {
    if (fruit.first[k] > p || excess[k] <= 0) continue;
    let taken = 0;
    for (let q = fruit.first[k]; q <= k; q++) taken += takenOf(q);
    gain += (weight[k] * Math.min(excess[k], fruit.perBeam[k] * taken) * own) / taken;
  }
  return gain;
}
