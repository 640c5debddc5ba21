import { underSky } from '../../../load/leaf/surroundings.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import { planDirection } from '../../../scene/direction.ts';
import type { LeafTables } from '../scoring/leaf-tables.ts';
import { type FruitHours, fruitHours, fruitRows, harmOfFruit, isFruit, type Row } from './fruit-hours.ts';
import type { Targets } from './targets.ts';

/** Coefficients of a leaf's excess in the hidden share of the sky: constant, linear, quadratic. */
export const TERMS = 3;

/**
 * Pairs of a point and a sample of a heat day in which the plant is harmed as the yard is, or would be under less sky;
 * of a fruit also those whose sun it still feels then.
 */
export interface HarmPairs {
  readonly count: number;
  /** Index of the view (a point under one state of the yard's sky). */
  readonly view: Int32Array;
  /** Towards the sun, on the plan. */
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly dz: Float64Array;
  /** worth × part × hours of the sample: what a kelvin of excess counts for. */
  readonly weight: Float64Array;
  /** As the yard is. [K] */
  readonly excess: Float64Array;
  readonly heat: Int32Array;
  readonly sample: Int32Array;
  /** First pair of each view, and one more: `firstOf[v]` up to `firstOf[v + 1]`. */
  readonly firstOf: Int32Array;
  readonly views: readonly View[];
  readonly fruit: FruitHours;
  /** Room for how each pair's ray meets cloth. */
  readonly met: Uint8Array;
  /** Σ weight × excess of each view, and all harm. [K·h/day] */
  readonly harmOf: Float64Array;
  readonly harm: number;
}

export interface View {
  /** Index into `targets.points`. */
  readonly point: number;
  readonly sky: Float64Array;
  readonly skyView: number;
}

/** Finds the harmful pairs. @param hidden Largest share of its sky that cloth could hide from a point. */
export function harmPairsOf(targets: Targets, leaves: LeafTables, hidden: number): HarmPairs {
  const { heats, points, scene } = targets;
  const directions = heats.map(({ samples }) =>
    Array.from({ length: samples.count }, (_, k) =>
      planDirection(samples.azimuth[k], samples.altitude[k], scene.upBearing),
    ),
  );
  const views: View[] = [];
  const rows: Row[] = [];
  const firstOf: number[] = [];
  for (const [index, point] of points.entries()) {
    if (point.weight === 0) continue;
    const { plant } = point;
    const { limit } = targets.plants[plant];
    const distinct = [...new Set(point.sky)];
    for (const sky of distinct) {
      const view = views.length;
      const heatsOf = heats.flatMap((_, h) => (point.sky[h] === sky ? [h] : []));
      const skyView = point.around[heatsOf[0]].sky;
      views.push({ point: index, sky, skyView });
      firstOf.push(rows.length);
      for (const heat of heatsOf) {
        const { samples } = heats[heat];
        const leaf = leaves[plant][heat];
        const around = point.around[heat];
        if (leaf.isFruit) {
          rows.push(...fruitRows(view, heat, heats[heat], leaf, limit, point.shares[heat], around, point.weight));
          continue;
        }
        const most = underSky(around, skyView * (1 - hidden));
        for (const k of leaf.hotSamples(limit)) {
          const share = point.shares[heat][k];
          const excess = leaf.at(k, share, around) - limit;
          // Monotone in the sky view: where neither end is above the limit nothing between is.
          if (excess <= 0 && leaf.at(k, share, most) <= limit) continue;
          rows.push({ view, heat, sample: k, weight: point.weight * samples.hours[k], excess, fruit: null });
        }
      }
    }
  }
  firstOf.push(rows.length);
  return { ...inColumns(rows, directions), firstOf: Int32Array.from(firstOf), views, ...harmsOf(rows, views.length) };
}

/** Harm of each view, and of all. */
function harmsOf(rows: readonly Row[], views: number): Pick<HarmPairs, 'harmOf' | 'harm'> {
  const harmOf = new Float64Array(views);
  for (const { view, weight, excess } of rows) harmOf[view] += weight * Math.max(0, excess);
  return { harmOf, harm: harmOf.reduce((sum, each) => sum + each, 0) };
}

/** @param directions towards the sun, by heat day and sample */
function inColumns(
  rows: readonly Row[],
  directions: readonly (readonly SpacePoint[])[],
): Omit<HarmPairs, 'firstOf' | 'views' | 'harmOf' | 'harm'> {
  const column = (of: (row: Row) => number) => Float64Array.from(rows, of);
  return {
    count: rows.length,
    view: Int32Array.from(rows, ({ view }) => view),
    dx: column(({ heat, sample }) => directions[heat][sample][0]),
    dy: column(({ heat, sample }) => directions[heat][sample][1]),
    dz: column(({ heat, sample }) => directions[heat][sample][2]),
    weight: column(({ weight }) => weight),
    excess: column(({ excess }) => excess),
    heat: Int32Array.from(rows, ({ heat }) => heat),
    sample: Int32Array.from(rows, ({ sample }) => sample),
    fruit: fruitHours(rows),
    met: new Uint8Array(rows.length),
  };
}

/**
 * What of one cloth a ray meets: nothing, its roof, curtains along u or v of a turn, or two of these (a ray meets a box
 * of cloth twice at most). Cloth is thicker the more it slants to the ray, so each is told apart.
 */
export const CROSSINGS = [
  'none',
  'roof',
  'u',
  'v',
  'roof and u',
  'roof and v',
  'u and v',
  'u twice',
  'v twice',
] as const;
/** Index of a crossing: [roofs][curtains along u][curtains along v]. */
export const CROSSING_OF: readonly (readonly (readonly number[])[])[] = [
  [
    [0, 3, 8],
    [2, 6, 6],
    [7, 6, 6],
  ],
  [
    [1, 5, 5],
    [4, 6, 6],
    [7, 6, 6],
  ],
];

/** Numbers that a pair takes in a table of answers: [crossing][term]. */
export const TERMS_A_PAIR = CROSSINGS.length * TERMS;

/**
 * What a pair counts for with a crossing (an index of `CROSSINGS`) and so much of its sky hidden; a fruit must be asked
 * about in the order of its pairs, all of them. [K·h/day]
 */
export function harmOfPair(pairs: HarmPairs, terms: Float64Array, p: number, crossing: number, hidden: number): number {
  const at = p * TERMS_A_PAIR + crossing * TERMS;
  if (isFruit(pairs, p)) return harmOfFruit(pairs, p, terms[at], hidden);
  const excess = parabolaAt(terms, at, hidden);
  return excess > 0 ? pairs.weight[p] * excess : 0;
}

/** The parabola of the three terms from `at` on, where so much of the sky is hidden. */
export function parabolaAt(terms: Float64Array, at: number, hidden: number): number {
  return terms[at] + hidden * (terms[at + 1] + hidden * terms[at + 2]);
}
