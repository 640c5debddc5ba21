import { underSky } from '../../../load/leaf/surroundings.ts';
import { planDirection } from '../../../scene/direction.ts';
import type { LeafTables } from '../scoring/leaf-tables.ts';
import type { Targets } from './targets.ts';

/**
 * Crossings of one and the same cloth that are told apart: none, one, two (a ray meets a box of cloth twice at most).
 */
const LEVELS = 3;
/** Coefficients of a leaf's excess in the hidden share of the sky: constant, linear, quadratic. */
const TERMS = 3;

/**
 * Pairs of a point and a sample of a heat day in which the plant is harmed as the yard is, or would be under less sky.
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
  /** Σ weight × excess: all harm. [K·h/day] */
  readonly harm: number;
}

interface View {
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
  const rows: { view: number; heat: number; sample: number; weight: number; excess: number }[] = [];
  const firstOf: number[] = [];
  let harm = 0;
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
        const most = underSky(around, skyView * (1 - hidden));
        for (const k of leaf.hotSamples(limit)) {
          const share = point.shares[heat][k];
          const excess = leaf.at(k, share, around) - limit;
          // Monotone in the sky view: where neither end is above the limit nothing between is.
          if (excess <= 0 && leaf.at(k, share, most) <= limit) continue;
          const weight = point.weight * samples.hours[k];
          harm += weight * Math.max(0, excess);
          rows.push({ view, heat, sample: k, weight, excess });
        }
      }
    }
  }
  firstOf.push(rows.length);
  const column = (of: (row: (typeof rows)[number]) => number) => Float64Array.from(rows, of);
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
    firstOf: Int32Array.from(firstOf),
    views,
    harm,
  };
}

/**
 * The most that cloth of one kind can spare, split so that it adds up over the cloth's surface. A pair whose ray is met
 * is spared `once` or `twice` by the shade itself; hiding sky can cool leaves further (or warm them, which is left out
 * here), in proportion to the share of the sky hidden from the view.
 */
export interface Gains {
  /** [K·h/day] by pair */
  readonly once: Float64Array;
  readonly twice: Float64Array;
  /** Most that hiding the whole sky could spare at the steepest rate, by view. [K·h/day] */
  readonly bySky: Float64Array;
}

/**
 * How a leaf's excess answers to cloth of one density: for none, one and two crossings of the beam a parabola in the
 * hidden share x of its sky, through its values at 0, half and most; within 1e-5 K of the leaf's own balance.
 */
export interface Response {
  readonly density: number;
  /** [pair][crossings][term] of the excess. [K] */
  readonly terms: Float64Array;
  /** Of cloth that no ray meets twice: a roof, a screen. */
  readonly flat: Gains;
  /** Of a roof with drops. */
  readonly box: Gains;
}

/** @param crossings 1 where no ray can meet the cloth twice */
export function responseOf(
  targets: Targets,
  pairs: HarmPairs,
  leaves: LeafTables,
  density: number,
  crossings: 1 | 2,
): Response {
  const { points, plants } = targets;
  const most = 1 - (1 - density) ** crossings;
  const terms = new Float64Array(pairs.count * LEVELS * TERMS);
  for (const [v, { point, skyView }] of pairs.views.entries()) {
    const { plant, shares, around } = points[point];
    const { limit } = plants[plant];
    const under = [0, most / 2, most].map((hidden) => around.map((open) => underSky(open, skyView * (1 - hidden))));
    for (let p = pairs.firstOf[v]; p < pairs.firstOf[v + 1]; p++) {
      const [heat, sample] = [pairs.heat[p], pairs.sample[p]];
      const leaf = leaves[plant][heat];
      for (let level = 0; level <= crossings; level++) {
        const share = shares[heat][sample] * (1 - density) ** level;
        const atNone = level === 0 ? pairs.excess[p] : leaf.at(sample, share, under[0][heat]) - limit;
        const atHalf = leaf.at(sample, share, under[1][heat]) - limit;
        const atMost = leaf.at(sample, share, under[2][heat]) - limit;
        const at = (p * LEVELS + level) * TERMS;
        terms[at] = atNone;
        terms[at + 1] = (4 * atHalf - 3 * atNone - atMost) / most;
        terms[at + 2] = (2 * (atNone + atMost) - 4 * atHalf) / (most * most);
      }
    }
  }
  const flat = gainsOf(pairs, terms, density, 1);
  return { density, terms, flat, box: crossings === 2 ? gainsOf(pairs, terms, most, 2) : flat };
}

/**
 * @param most Largest share of the sky that the cloth can hide; along it each excess is a parabola, steepest at an end.
 */
function gainsOf(pairs: HarmPairs, terms: Float64Array, most: number, crossings: number): Gains {
  const once = new Float64Array(pairs.count);
  const twice = new Float64Array(pairs.count);
  const bySky = new Float64Array(pairs.views.length);
  for (let p = 0; p < pairs.count; p++) {
    const now = harmOfPair(pairs, terms, p, 0, 0);
    once[p] = now - harmOfPair(pairs, terms, p, 1, 0);
    if (crossings === 2) twice[p] = now - harmOfPair(pairs, terms, p, 2, 0);
    let steepest = 0;
    for (let level = 0; level <= crossings; level++) {
      if (harmOfPair(pairs, terms, p, level, 0) === 0 && harmOfPair(pairs, terms, p, level, most) === 0) continue;
      const at = (p * LEVELS + level) * TERMS;
      steepest = Math.max(steepest, -terms[at + 1], -terms[at + 1] - 2 * most * terms[at + 2]);
    }
    bySky[pairs.view[p]] += pairs.weight[p] * steepest;
  }
  return { once, twice, bySky };
}

/** What a pair counts for with so many crossings and so much of its sky hidden. [K·h/day] */
export function harmOfPair(
  pairs: HarmPairs,
  terms: Float64Array,
  p: number,
  crossings: number,
  hidden: number,
): number {
  const at = (p * LEVELS + crossings) * TERMS;
  const excess = terms[at] + hidden * (terms[at + 1] + hidden * terms[at + 2]);
  return excess > 0 ? pairs.weight[p] * excess : 0;
}
