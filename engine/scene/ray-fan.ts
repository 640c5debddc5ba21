/**
 * Rays from one point, each upwards and mirrored downwards, ordered by their bearing on the plan: what spans a part of
 * the compass is asked of the rays in that part alone.
 */
export class RayFan {
  /** How many go upwards; as many go downwards. */
  readonly count: number;
  /** Unit vectors of those upwards, 3 numbers each. */
  readonly directions: Float64Array;
  /** Ascending, twice round. [rad] */
  private readonly bearings: Float64Array;
  /** The ray of each bearing. */
  readonly order: Int32Array;
  first = 0;
  end = 0;

  constructor(directions: Float64Array) {
    this.count = directions.length / 3;
    this.directions = directions;
    const bearing = Float64Array.from({ length: this.count }, (_, k) =>
      Math.atan2(directions[3 * k + 1], directions[3 * k]),
    );
    const once = Array.from(bearing.keys()).sort((a, b) => bearing[a] - bearing[b]);
    this.order = Int32Array.from([...once, ...once]);
    this.bearings = Float64Array.from(this.order, (k, n) => bearing[k] + (n < this.count ? 0 : TURN));
  }

  /**
   * Finds the rays whose bearing lies between two, from the right one round to the left, and some beside: `order` holds
   * their numbers from `first` up to `end`.
   */
  find(right: number, left: number): void {
    const span = left - right;
    const from = right - SLACK < -Math.PI ? right - SLACK + TURN : right - SLACK;
    this.first = this.firstFrom(from);
    this.end = this.firstFrom(from + 2 * SLACK + (span < -SLACK ? span + TURN : span));
  }

  private firstFrom(bearing: number): number {
    let low = 0;
    let high = this.bearings.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.bearings[middle] < bearing) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

const TURN = 2 * Math.PI;
/** What rounding may do to a bearing, and far more. [rad] */
const SLACK = 1e-9;
