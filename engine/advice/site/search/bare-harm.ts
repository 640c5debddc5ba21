import { type HarmPairs, harmOfPair, TERMS, TERMS_A_PAIR } from './harm-pairs.ts';
import { isFruit } from './fruit-hours.ts';

/**
 * What pairs count for whose ray no cloth meets, by view, while cloth hides some of their sky: of those that stay
 * harmful whatever it hides the sum of their parabolas, the rest one by one.
 */
export interface BareHarm {
  /** [view][term] of the harm. [K·h/day] */
  readonly sums: Float64Array;
  /** Pairs that may stop being harmful, or begin to be; `firstOf[v]` up to `firstOf[v + 1]` belong to a view. */
  readonly apart: Int32Array;
  readonly firstOf: Int32Array;
  /** By view: 1 where it is a fruit's, whose pairs hang together and have no sums. */
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
    firstOf[view] = apart.length;
    for (let p = pairs.firstOf[view]; p < pairs.firstOf[view + 1]; p++) {
      if (isFruit(pairs, p)) {
        fruit[view] = 1;
        continue;
      }
      const at = p * TERMS_A_PAIR;
      const least = leastOf(terms[at], terms[at + 1], terms[at + 2], most);
      if (least < 0) apart.push(p);
      else for (let term = 0; term < TERMS; term++) sums[view * TERMS + term] += pairs.weight[p] * terms[at + term];
    }
  }
  firstOf[views] = apart.length;
  return { sums, apart: Int32Array.from(apart), firstOf, isFruit: fruit };
}

/** The least of a parabola from 0 to `most`. */
function leastOf(a: number, b: number, c: number, most: number): number {
  const ends = Math.min(a, a + most * (b + most * c));
  const turn = c > 0 ? -b / (2 * c) : -1;
  return turn > 0 && turn < most ? Math.min(ends, a + turn * (b + turn * c)) : ends;
}

/** Of a view that is no fruit's, with so much of its sky hidden. [K·h/day] */
export function bareHarm(
  { sums, apart, firstOf }: BareHarm,
  pairs: HarmPairs,
  terms: Float64Array,
  view: number,
  hidden: number,
): number {
  const at = view * TERMS;
  let harm = sums[at] + hidden * (sums[at + 1] + hidden * sums[at + 2]);
  for (let n = firstOf[view]; n < firstOf[view + 1]; n++) harm += harmOfPair(pairs, terms, apart[n], 0, hidden);
  return harm;
}
