import { underSky } from '../../../load/leaf/surroundings.ts';
import { MOST_SLANT, slantPower } from '../../../scene/cloth-sheet.ts';
import type { LeafTables } from '../scoring/leaf-tables.ts';
import { type BareHarm, bareHarmOf } from './bare-harm.ts';
import { fruitGain, fruitPart, isFruit } from './fruit-hours.ts';
import { CROSSINGS, type HarmPairs, harmOfPair, TERMS, TERMS_A_PAIR, type View } from './harm-pairs.ts';
import type { Targets } from './targets.ts';

/**
 * The most that a cloth can spare, split so that it adds up over its surface: what the shade itself spares of each
 * pair, and what hiding sky can cool leaves further (or warm them, which is left out here), in proportion to the share
 * of the sky hidden from the view.
 */
export interface Gains {
  /** [K·h/day] by pair */
  readonly once: Float64Array;
  /** Most that hiding the whole sky could spare at the steepest rate, by view. [K·h/day] */
  readonly bySky: Float64Array;
}

/**
 * How a leaf's excess answers to cloth of one density: for each crossing a parabola in the hidden share x of its sky,
 * through its values at 0, half and all; within 1e-3 K of the leaf's own balance.
 */
export interface Response {
  readonly density: number;
  /** By pair: 0 where the cloth is denser than suits the plant, so that sparing it does not speak for the cloth. */
  readonly suits: Uint8Array;
  /** [pair][crossing][term] of the excess [K]; those with curtains belong to the turn last laid out. */
  readonly terms: Float64Array;
  /** Of a roof alone. */
  readonly roof: Gains;
  readonly bare: BareHarm;
}

/** What depends on how curtains stand: one turn's answers of a response. */
export interface TurnedResponse extends Response {
  /** Of a screen along u, and along v. */
  readonly screens: { readonly u: Gains; readonly v: Gains };
  /** Of a roof with drops, and of the drops along u and along v on top of the roof. */
  readonly box: Gains;
  readonly drops: { readonly u: Gains; readonly v: Gains };
}

/** Most of its sky that cloth can hide from a view: a ray meets it twice at most, each time as slanted as can be. */
export function mostHidden(density: number): number {
  return 1 - (1 - density) ** (2 * MOST_SLANT);
}

const [NONE, ROOF, U, V, ROOF_U, ROOF_V, UV, UU, VV] = CROSSINGS.keys();

/**
 * Answers to a roof; what curtains do is added turn by turn, by `turnedResponse`.
 * @param isSuited whether the cloth suits the plant of a view; left out: it suits all
 */
export function responseOf(
  pairs: HarmPairs,
  answers: ShadeAnswers,
  density: number,
  isSuited: (view: View) => boolean = () => true,
): Response {
  const ofView = pairs.views.map((view) => (isSuited(view) ? 1 : 0));
  const suits = Uint8Array.from(pairs.view, (view) => ofView[view]);
  const terms = new Float64Array(pairs.count * TERMS_A_PAIR);
  for (let p = 0; p < pairs.count; p++) {
    fill(terms, answers, p, NONE, 1, suits);
    fill(terms, answers, p, ROOF, (1 - density) ** slantPower(pairs.dz[p]), suits);
  }
  const most = mostHidden(density);
  return {
    density,
    suits,
    terms,
    roof: gainsOf(pairs, terms, most, [[ROOF, NONE]]),
    bare: bareHarmOf(pairs, terms, most),
  };
}

/** What the shade of a roof over all spares, told apart by pair: of a fruit's hours each its part. [K·h/day] */
export function sparedByShade(pairs: HarmPairs, { terms, roof }: Response): Float64Array {
  const takenOf = (p: number) => pairs.fruit.beam[p] - terms[p * TERMS_A_PAIR + ROOF * TERMS];
  return roof.once.map((gain, p) => (isFruit(pairs, p) ? fruitPart(pairs, p, takenOf) : gain));
}

/**
 * The same with curtains along the axes of a turn.
 * @param across Each pair's way to the sun across curtains along u, and across those along v. [1]
 * @param drops Whether roofs with drops are asked about.
 */
export function turnedResponse(
  pairs: HarmPairs,
  answers: ShadeAnswers,
  { density, suits, terms, roof, bare }: Response,
  across: { readonly u: Float64Array; readonly v: Float64Array },
  drops: boolean,
): TurnedResponse {
  for (let p = 0; p < pairs.count; p++) {
    const u = (1 - density) ** slantPower(across.u[p]);
    const v = (1 - density) ** slantPower(across.v[p]);
    fill(terms, answers, p, U, u, suits);
    fill(terms, answers, p, V, v, suits);
    if (!drops) continue;
    const r = (1 - density) ** slantPower(pairs.dz[p]);
    fill(terms, answers, p, ROOF_U, r * u, suits);
    fill(terms, answers, p, ROOF_V, r * v, suits);
    fill(terms, answers, p, UV, u * v, suits);
    fill(terms, answers, p, UU, u * u, suits);
    fill(terms, answers, p, VV, v * v, suits);
  }
  const most = mostHidden(density);
  const screenOf = (crossing: number) => gainsOf(pairs, terms, most, [[crossing, NONE]]);
  const screens = { u: screenOf(U), v: screenOf(V) };
  if (!drops) return { density, suits, terms, roof, bare, screens, box: roof, drops: screens };
  const bySky = gainsBySky(pairs, terms, most, [NONE, ROOF, U, V, ROOF_U, ROOF_V, UV, UU, VV]);
  const onTop = (...steps: readonly Step[]): Gains => ({ once: gainsOnce(pairs, terms, steps), bySky });
  return {
    density,
    suits,
    terms,
    roof,
    bare,
    screens,
    box: { once: roof.once, bySky },
    drops: {
      u: onTop([U, NONE], [ROOF_U, ROOF], [UV, V], [UU, U]),
      v: onTop([V, NONE], [ROOF_V, ROOF], [UV, U], [VV, V]),
    },
  };
}

/**
 * How each pair's excess answers to shade of any depth, of a fruit how much of the beam is left: the terms at a few
 * shares of its own beam, from none to all.
 * Between them a cubic is within 1e-4 K of the leaf's own balance.
 */
export interface ShadeAnswers {
  /** [pair][node][term] [K] */
  readonly nodes: Float64Array;
}

const NODES = 6;
const ANSWERS_A_PAIR = NODES * TERMS;

export function shadeAnswers(targets: Targets, pairs: HarmPairs, leaves: LeafTables): ShadeAnswers {
  const { points, plants } = targets;
  const nodes = new Float64Array(pairs.count * ANSWERS_A_PAIR);
  for (const [v, { point, skyView }] of pairs.views.entries()) {
    const { plant, shares, around } = points[point];
    const { limit } = plants[plant];
    const under = [0, 0.5, 1].map((hidden) => around.map((open) => underSky(open, skyView * (1 - hidden))));
    for (let p = pairs.firstOf[v]; p < pairs.firstOf[v + 1]; p++) {
      const [heat, sample] = [pairs.heat[p], pairs.sample[p]];
      const leaf = leaves[plant][heat];
      if (leaf.isFruit) {
        for (let n = 0; n < NODES; n++) nodes[p * ANSWERS_A_PAIR + n * TERMS] = (pairs.fruit.beam[p] * n) / (NODES - 1);
        continue;
      }
      for (let n = 0; n < NODES; n++) {
        const share = (shares[heat][sample] * n) / (NODES - 1);
        const atNone = leaf.at(sample, share, under[0][heat]) - limit;
        const atHalf = leaf.at(sample, share, under[1][heat]) - limit;
        const atAll = leaf.at(sample, share, under[2][heat]) - limit;
        const at = p * ANSWERS_A_PAIR + n * TERMS;
        nodes[at] = atNone;
        nodes[at + 1] = 4 * atHalf - 3 * atNone - atAll;
        nodes[at + 2] = 2 * (atNone + atAll) - 4 * atHalf;
      }
    }
  }
  return { nodes };
}

/** Writes the terms of a pair with a crossing of which cloth lets a part of the beam through. */
function fill(
  terms: Float64Array,
  answers: ShadeAnswers,
  p: number,
  crossing: number,
  transmittance: number,
  suits: Uint8Array,
): void {
  const at = p * TERMS_A_PAIR + crossing * TERMS;
  if (suits[p] === 1) writeAnswer(answers, p, transmittance, terms, at, TERMS);
  else writeAnswer(answers, p, 1, terms, at, 1);
}

/**
 * Writes the first terms of a pair of which cloth lets a part of the beam through: the cubic through the four nodes
 * about.
 */
export function writeAnswer(
  { nodes }: ShadeAnswers,
  p: number,
  transmittance: number,
  into: Float64Array,
  at: number,
  count: number,
): void {
  const along = transmittance * (NODES - 1);
  const n = Math.min(NODES - 3, Math.max(1, Math.floor(along)));
  const x = along - n;
  const a = (-x * (x - 1) * (x - 2)) / 6;
  const b = ((x + 1) * (x - 1) * (x - 2)) / 2;
  const c = (-(x + 1) * x * (x - 2)) / 2;
  const d = ((x + 1) * x * (x - 1)) / 6;
  for (let term = 0, from = p * ANSWERS_A_PAIR + (n - 1) * TERMS; term < count; term++, from++)
    into[at + term] =
      a * nodes[from] + b * nodes[from + TERMS] + c * nodes[from + 2 * TERMS] + d * nodes[from + 3 * TERMS];
}

/** From which crossing to which its shade may bring a pair. */
type Step = readonly [to: number, from: number];

/** @param most Largest share of the sky that the cloth can hide. */
function gainsOf(pairs: HarmPairs, terms: Float64Array, most: number, steps: readonly Step[]): Gains {
  return {
    once: gainsOnce(pairs, terms, steps),
    bySky: gainsBySky(pairs, terms, most, [...new Set(steps.flat())]),
  };
}

/** Of the steps the most that one of them spares counts. */
function gainsOnce(pairs: HarmPairs, terms: Float64Array, steps: readonly Step[]): Float64Array {
  const once = new Float64Array(pairs.count);
  for (const [to, from] of steps) {
    for (let p = 0; p < pairs.count; p++) {
      const gain = isFruit(pairs, p)
        ? fruitGain(pairs, p, beamKept(terms, p, from) - beamKept(terms, p, to))
        : harmOfPair(pairs, terms, p, from, 0) - harmOfPair(pairs, terms, p, to, 0);
      if (gain > once[p]) once[p] = gain;
    }
  }
  return once;
}

/** Of a fruit's pair. */
function beamKept(terms: Float64Array, p: number, crossing: number): number {
  return terms[p * TERMS_A_PAIR + crossing * TERMS];
}

/** Along the hidden share of the sky each excess is a parabola, steepest at an end. */
function gainsBySky(pairs: HarmPairs, terms: Float64Array, most: number, crossings: readonly number[]): Float64Array {
  const bySky = new Float64Array(pairs.views.length);
  for (let p = 0; p < pairs.count; p++) {
    if (isFruit(pairs, p)) {
      bySky[pairs.view[p]] += pairs.excess[p] > 0 ? pairs.weight[p] * pairs.fruit.perSky[p] : 0;
      continue;
    }
    let steepest = 0;
    for (let c = 0; c < crossings.length; c++) {
      const at = p * TERMS_A_PAIR + crossings[c] * TERMS;
      const slope = Math.max(-terms[at + 1], -terms[at + 1] - 2 * most * terms[at + 2]);
      if (slope <= steepest) continue;
      // What is harmed at neither end is spared nothing.
      if (terms[at] > 0 || terms[at] + most * (terms[at + 1] + most * terms[at + 2]) > 0) steepest = slope;
    }
    bySky[pairs.view[p]] += pairs.weight[p] * steepest;
  }
  return bySky;
}
