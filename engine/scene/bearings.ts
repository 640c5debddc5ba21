import { ROUNDING } from '../plan/numbers/tolerances.ts';
const TURN = 2 * Math.PI;

/**
 * Directions ordered by their bearing on the plan: what spans a part of the compass is asked of those in that part
 * alone.
 */
export class Bearings {
  /** Numbers of the directions by their bearing, twice round. */
  readonly order: Int32Array;
  /** What was found last lies in `order` from here … */
  first = 0;
  /** … up to here. */
  end = 0;
  /** Ascending, twice round. [rad] */
  private readonly sorted: Float64Array;

  /** @param x, y of each direction, of any length */
  constructor(x: Float64Array, y: Float64Array) {
    const bearing = x.map((each, k) => Math.atan2(y[k], each));
    const once = Int32Array.from(x, (_, k) => k).sort((a, b) => bearing[a] - bearing[b]);
    this.order = Int32Array.from({ length: 2 * x.length }, (_, n) => once[n % x.length]);
    this.sorted = Float64Array.from(this.order, (k, n) => bearing[k] + (n < x.length ? 0 : TURN));
  }

  /** Finds the directions between two bearings, from the right one round to the left, and some beside. [rad] */
  find(right: number, left: number): void {
    const span = left - right;
    const from = right - ROUNDING < -Math.PI ? right - ROUNDING + TURN : right - ROUNDING;
    this.first = firstFrom(this.sorted, from);
    this.end = firstFrom(this.sorted, from + 2 * ROUNDING + (span < -ROUNDING ? span + TURN : span));
  }

  /** Finds all of them. */
  findAll(): void {
    this.first = 0;
    this.end = this.order.length / 2;
  }
}

/** Index of the first of rising numbers that is no less than one; their count where all are less. */
export function firstFrom(rising: Float64Array | Int32Array, least: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle] < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
