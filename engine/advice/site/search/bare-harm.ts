import { isFruit } from './fruit-hours.ts';
import { type HarmPairs, parabolaAt, TERMS, TERMS_A_PAIR } from './harm-pairs.ts';

/**
 * What pairs count for whose ray no cloth meets, by view, while cloth hides some of their sky: each excess is a
 * parabola in the share hidden. Of those that stay harmful whatever it is the sum of their parabolas, of the rest one
 * by one; of a fruit while cloth meets no ray of its view, as it feels the whole hour before.
 */
export interface BareHarm {
  /** [view][term] of the harm. [K·h/day] */
  readonly sums: Float64Array;
  /** Of pairs that may stop being harmful, or begin to be: [pair][term] of the harm. [K·h/day] */
  readonly apart: Float64Array;
  /** `firstOf[v]` up to `firstOf[v + 1]` of these belong to a view. */
  readonly firstOf: Int32Array;
  /** By view: 1 where it is a fruit's, whose pairs hang together. */
  readonly isFruit: Uint8Array;
}

/** @param most Largest share of the sky that cloth hides. */
export function bareHarmOf(pairs: HarmPairs, terms: Float64Array, most: number): BareHarm {
  const views = pairs.views.length;
  const sums = new Float64Array(views * TERMS);
  const fruit = new Uint8Array(views);
  const apart: number[] = [];
  const firstOf = new Int32Array(views + 1);
  for (let view = 0; view < views; view++) {
    firstOf[view] = apart.length / TERMS;
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      if (isFruit(pairs, p)) fruit[view] = 1;
      const [a, b, c] = parabolaOf(pairs, terms, p);
      if (leastOf(-a, -b, -c, most) >= 0) continue;
      const weight = pairs.weight[p];
      if (leastOf(a, b, c, most) < 0) apart.push(weight * a, weight * b, weight * c);
      else [a, b, c].forEach((term, k) => (sums[view * TERMS + k] += weight * term));
    }
  }
  firstOf[views] = apart.length / TERMS;
  return { sums, apart: Float64Array.from(apart), firstOf, isFruit: fruit };
}

/** A pair's excess in the hidden share of its sky, no cloth met. [K] */
function parabolaOf(pairs: HarmPairs, terms: Float64Array, p: number): readonly [number, number, number] {
  const at = p * TERMS_A_PAIR;
  if (!isFruit(pairs, p)) return [terms[at], terms[at + 1], terms[at + 2]];
  const { first, shaded, perBeam, perSky } = pairs.fruit;
  let felt = 0;
  for (let q = first[p]; q <= p; q++) felt += terms[q * TERMS_A_PAIR];
  return [shaded[p] + perBeam[p] * felt, -perSky[p], 0];
}

/** The least of a parabola from 0 to `most`. */
function leastOf(a: number, b: number, c: number, most: number): number {
  const ends = Math.min(a, a + most * (b + most * c));
  const turn = c > 0 ? -b / (2 * c) : -1;
  return turn > 0 && turn < most ? Math.min(ends, a + turn * (b + turn * c)) : ends;
}

/** Of a view with so much of its sky hidden. [K·h/day] */
export function bareHarm({ sums, apart, firstOf }: BareHarm, view: number, hidden: number): number {
  const at = view * TERMS;
  let harm = parabolaAt(sums, at, hidden);
  for (let n = firstOf[view] * TERMS; n < firstOf[view + 1] * TERMS; n += TERMS) {
    const excess = parabolaAt(apart, n, hidden);
    if (excess > 0) harm += excess;
  }
  return harm;
}
