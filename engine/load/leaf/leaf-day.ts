import type { PlantRow } from '../../plan/types.ts';
import { LEAF_ABSORPTANCE } from './leaf-balance.ts';
import { fruitStillness, fruitTemperature, temperatureOf, type Watering } from './leaf.ts';
import { absorbed, type Incoming, incomingAt, type LeafMoment, mostAbsorbed } from './receives.ts';
import { CLOSED, OPEN, type Surroundings } from './surroundings.ts';

/**
 * Nodes of a table stand so far apart from 0 on; cubics between them are within 1e-4 K of the balance, in still air
 * within 2e-3 K where a leaf is as warm as the air and its own updraught ends. [W/m²]
 */
const STEP = 20;
const NODES = 64;

/**
 * One row's leaf, or fruit, through one day, at whatever points. In the air of a moment a leaf's temperature hangs on
 * what it takes up alone, so that one short table a moment, filled as it is asked, serves every point, share and sky.
 */
export class LeafDay {
  /** Of the samples. [h] */
  readonly hours: Float64Array;
  /** All samples, in order. */
  readonly samples: Int32Array;
  /** Whether it is a fruit, which feels the sun of the hour before. */
  readonly isFruit: boolean;
  private readonly moments: readonly LeafMoment[];
  private readonly incoming: readonly Incoming[];
  private readonly row: PlantRow;
  private readonly watering: Watering;
  private readonly absorptance: number;
  private readonly colours: readonly number[];
  private readonly nodes: Float64Array;
  /** By sample, of a fruit. */
  private readonly stillness: Float64Array;
  private readonly hot = new Map<number, Int32Array>();

  constructor(
    moments: readonly LeafMoment[],
    hours: Float64Array,
    row: PlantRow,
    watering: Watering,
    colours: readonly number[] = [],
    absorptance = LEAF_ABSORPTANCE,
  ) {
    this.hours = hours;
    this.samples = Int32Array.from(moments.keys());
    this.moments = moments;
    this.incoming = moments.map(incomingAt);
    this.row = row;
    this.watering = watering;
    this.absorptance = absorptance;
    this.colours = colours;
    this.isFruit = row.limitOf === 'fruit';
    this.stillness = Float64Array.from(this.isFruit ? moments : [], ({ wind }) => fruitStillness(wind));
    this.nodes = new Float64Array(this.isFruit ? 0 : moments.length * NODES).fill(NaN);
  }

  /** Temperature at a sample. [°C] @param share of the beam that reaches the point, 0 to 1 */
  at(sample: number, share: number, around: Surroundings): number {
    if (this.isFruit) return fruitTemperature(this.moments[sample], share, around, this.stillness[sample]);
    return this.takingUp(sample, absorbed(this.incoming[sample], share, around, this.absorptance));
  }

  /** The same where the shares of the whole day are known: a fruit feels those of the hour before. */
  on(sample: number, shares: Float64Array, around: Surroundings): number {
    return this.at(sample, this.isFruit ? this.hourShare(sample, shares) : shares[sample], around);
  }

  /**
   * The same at some samples, in their order, in loops that make no number anew. [°C]
   * @param into receives them, one a sample
   */
  through(shares: Float64Array, around: Surroundings, among: Int32Array, into: Float64Array): Float64Array {
    if (this.isFruit) for (let n = 0; n < among.length; n++) into[n] = this.on(among[n], shares, around);
    else {
      this.takeUp(shares, around, among, into);
      for (let n = 0; n < among.length; n++) into[n] = this.takingUp(among[n], into[n]);
    }
    return into;
  }

  private takeUp(shares: Float64Array, around: Surroundings, among: Int32Array, into: Float64Array): void {
    const { incoming, absorptance } = this;
    for (let n = 0; n < among.length; n++)
      into[n] = absorbed(incoming[among[n]], shares[among[n]], around, absorptance);
  }

  /** Share of the beam of the hour before that reached a point; 1 where none came. */
  private hourShare(sample: number, shares: Float64Array): number {
    const { moments, hours } = this;
    let came = 0;
    let reached = 0;
    for (let k = moments[sample].hour.first; k <= sample; k++) {
      const beam = moments[k].beam * hours[k];
      came += beam;
      reached += beam * shares[k];
    }
    return came > 0 ? reached / came : 1;
  }

  /** The samples whose shares decide how warm it is at the `hotSamples` of a limit. */
  feltSamples(limit: number): Int32Array {
    const hot = this.hotSamples(limit);
    if (!this.isFruit) return hot;
    const felt = new Uint8Array(this.samples.length);
    for (const k of hot) felt.fill(1, this.moments[k].hour.first, k + 1);
    return this.samples.filter((k) => felt[k] === 1);
  }

  /** The samples at which a leaf can be at a limit or over it, wherever it stands: at the others no point is harmed. */
  hotSamples(limit: number): Int32Array {
    let found = this.hot.get(limit);
    if (!found) this.hot.set(limit, (found = this.samples.filter((k) => this.hottest(k) >= limit)));
    return found;
  }

  private hottest(sample: number): number {
    if (this.isFruit) return Math.max(this.at(sample, 1, OPEN), this.at(sample, 1, CLOSED));
    return this.takingUp(sample, mostAbsorbed(this.incoming[sample], this.absorptance, this.colours));
  }

  private takingUp(sample: number, takenUp: number): number {
    const along = takenUp / STEP;
    const n = Math.floor(along);
    if (n < 1 || n > NODES - 3) return temperatureOf(this.moments[sample], this.row, this.watering, takenUp);
    return cubicAt(this.nodes, this.filled(sample, n), along - n);
  }

  /** Index of a sample's n-th node; it, the one before it and the two after it are filled. */
  private filled(sample: number, n: number): number {
    const { nodes } = this;
    const at = sample * NODES + n;
    // A sum is a number where all of them are.
    if (Number.isNaN(nodes[at - 1] + nodes[at] + nodes[at + 1] + nodes[at + 2])) this.fill(sample, n - 1, n + 2);
    return at;
  }

  private fill(sample: number, first: number, last: number): void {
    for (let n = first; n <= last; n++)
      if (Number.isNaN(this.nodes[sample * NODES + n]))
        this.nodes[sample * NODES + n] = temperatureOf(this.moments[sample], this.row, this.watering, n * STEP);
  }
}

/** The cubic through two nodes on either side, from the inner two on. @param x from the one to the other, 0 to 1 */
function cubicAt(nodes: Float64Array, at: number, x: number): number {
  const a = nodes[at - 1];
  const b = nodes[at];
  const c = nodes[at + 1];
  const d = nodes[at + 2];
  return b + x * ((6 * c - 2 * a - 3 * b - d) / 6 + x * ((a + c) / 2 - b + x * ((d - a) / 6 + (b - c) / 2)));
}

/**
 * The leaves of one day, each made when it is first asked for; a limit does not change them.
 * @param colours of the walls and buildings that may stand round a point: shares of sunlight that they throw back
 * @param absorptance to sunlight, a bare leaf's where nothing is said
 */
export type Leaves = (watering: Watering, row: PlantRow, absorptance?: number) => LeafDay;

export function leavesOf(moments: readonly LeafMoment[], hours: Float64Array, colours: readonly number[]): Leaves {
  const known = new Map<string, LeafDay>();
  return (watering, row, absorptance) => {
    const key = `${watering} ${row.leafWidth} ${row.bothSides} ${row.limitOf} ${absorptance}`;
    let leaf = known.get(key);
    if (!leaf) known.set(key, (leaf = new LeafDay(moments, hours, row, watering, colours, absorptance)));
    return leaf;
  };
}
