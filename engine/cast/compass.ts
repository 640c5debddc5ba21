import { ROUNDING } from '../plan/numbers/tolerances.ts';
import type { Directions } from './passes.ts';

/** So many directions a bin, in the mean. */
const IN_BIN = 16;
const MOST_BINS = 360;

/**
 * Directions by bins of the compass, in each by how steep they are: what spans a part of the compass between two slopes
 * is asked of few others.
 */
export class Compass {
  /** Numbers of the directions, bin after bin. */
  readonly order: Int32Array;
  /** Of each in `order`, height over level way. */
  readonly slope: Float64Array;
  /** Where each bin begins, and one more. */
  readonly begins: Int32Array;
  readonly bins: number;

  constructor({ count, x, y, z, level }: Directions) {
    const bins = Math.max(1, Math.min(MOST_BINS, Math.round(count / IN_BIN)));
    const slopes = Float64Array.from(z, (each, k) => (level[k] > 0 ? each / level[k] : Infinity));
    const binOf = Int32Array.from(x, (each, k) => binAt(turnTo(each, y[k]), bins));
    this.bins = bins;
    this.order = Int32Array.from(x, (_, k) => k).sort((a, b) => binOf[a] - binOf[b] || slopes[a] - slopes[b]);
    this.slope = Float64Array.from(this.order, (k) => slopes[k]);
    this.begins = new Int32Array(bins + 1);
    for (const bin of binOf) this.begins[bin + 1]++;
    for (let bin = 0; bin < bins; bin++) this.begins[bin + 1] += this.begins[bin];
  }

  /** The bin of a level way. @param beside so much further on, in turns */
  binOf(x: number, y: number, beside: number): number {
    return binAt(turnTo(x, y) + beside, this.bins);
  }

  /** The first in a bin's part of `order` that is so steep. @param slope above 0, or −∞ for all */
  firstIn(bin: number, slope: number): number {
    let low = this.begins[bin];
    let high = this.begins[bin + 1];
    if (slope === -Infinity) return low;
    const from = slope * (1 - ROUNDING);
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.slope[middle] < from) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

function binAt(turn: number, bins: number): number {
  return Math.min(bins - 1, Math.floor((turn - Math.floor(turn)) * bins));
}

/** How far round a level way lies, 0 to 1, as it would on a square compass: no angle has to be found. */
function turnTo(x: number, y: number): number {
  const along = Math.abs(x) + Math.abs(y);
  if (along === 0) return 0;
  return (y < 0 ? 3 + x / along : 1 - x / along) / 4;
}

const known = new WeakMap<Directions, Compass>();

/** Directions by their place on the compass, ordered when they are first asked for. */
export function compassOf(directions: Directions): Compass {
  let compass = known.get(directions);
  if (!compass) known.set(directions, (compass = new Compass(directions)));
  return compass;
}
