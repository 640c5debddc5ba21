import type { Drop, DropSide, Plan, PlanPoint } from '../../../plan/types.ts';
import { curtainOf, type CurtainPlace, roofOf, type RoofPlace, screenOf } from './candidates.ts';
import type { Contest } from './contest.ts';
import { type GroundMask, groundMask } from '../rules/ground-mask.ts';
import type { HarmPairs, Response } from './harm-pairs.ts';
import {
  curtainGains,
  type CurtainSums,
  curtainTables,
  fillCurtainSums,
  overheadGain,
  payoffSums,
  planeCrossings,
  skySums,
  sumOfCurtain,
  sumOver,
} from './plane-sums.ts';
import { sparedByCloth, sparedByRoof } from '../scoring/score.ts';
import type { ClothKind } from '../types.ts';
import type { Targets } from './targets.ts';
import { alongU, alongV, type TurnedLattice, turnedLattice } from './turned-lattice.ts';
import { type TurnedRays, turnedRays } from './turned-rays.ts';
import type { YardRules } from '../rules/yard-rules.ts';

/** Everything that is tried, in cells and metres. */
export interface Lattice {
  readonly turns: readonly number[];
  readonly step: number;
  /** Roofs in cells along u and v, either way round. */
  readonly sizes: readonly { readonly a: number; readonly b: number }[];
  readonly heights: readonly number[];
  /** Roofs with drops: at these turns, sizes and heights. */
  readonly box: {
    readonly turns: readonly number[];
    readonly sizes: readonly { readonly a: number; readonly b: number }[];
    readonly heights: readonly number[];
    readonly depths: readonly number[];
    readonly maxDrops: 1 | 2;
  };
  /** Screens: lengths in cells, their tops and their bottom. [m] */
  readonly screenCells: readonly number[];
  readonly screenTops: readonly number[];
  readonly screenBottom: number;
  readonly kinds: readonly ClothKind[];
}

/** Areas of cloth that make a family end here; more is one family more. [m²] */
const AREA_CLASSES = [2.5, 5, 7.5, 10.5, 16.5];
/** Candidates worth a look are gathered up to about this many before they are looked at. */
const GATHERED = 4_000;
/** Scores and looks between two steps of the search: a few milliseconds. */
const SCORES_A_STEP = 16;
const LOOKS_A_STEP = 50;
const SIDES: readonly DropSide[] = ['front', 'back', 'left', 'right'];
const [FRONT, BACK, LEFT, RIGHT] = [0, 1, 2, 3];
const KINDS: readonly ClothKind[] = ['roof', 'roof with drops', 'screen'];

/** How many families there are. @param places Plants near which cloth is told apart. */
export function familyCount(places: number): number {
  return KINDS.length * (AREA_CLASSES.length + 1) * places;
}

function familyOf(kind: ClothKind, area: number, place: number, places: number): number {
  const areaClass = AREA_CLASSES.filter((most) => area > most).length;
  return (KINDS.indexOf(kind) * (AREA_CLASSES.length + 1) + areaClass) * places + place;
}

/** What the search holds against all candidates. */
export interface Search {
  readonly plan: Plan;
  readonly targets: Targets;
  readonly pairs: HarmPairs;
  readonly responses: readonly Response[];
  readonly lattice: Lattice;
  /** Middles of the plants near which cloth is told apart. */
  readonly places: readonly PlanPoint[];
  readonly contest: Contest;
  readonly rules: YardRules;
  /** Height cap; Infinity: none. [m] */
  readonly cap: number;
  /** How tall a thing may stand unseen at a point [m]; `null`: it may be seen. */
  readonly hiddenHeight: ((at: PlanPoint) => number) | null;
  readonly maxScores: number;
}

/** What is left undone where a search stops at `maxScores`: no candidate it did not look at spares more. */
export interface SearchEnd {
  readonly finished: boolean;
  readonly unseen: number;
}

/**
 * Holds every candidate of the lattice against its bound and enters the promising ones. Yields the share of turns done.
 */
export function* searchLattice(asked: Search): Generator<number, SearchEnd, void> {
  const search = mostClothFirst(asked);
  const { lattice, contest, maxScores, plan } = search;
  let unseen = 0;
  for (const [index, turn] of spreadOut(lattice.turns).entries()) {
    const turned = turnedLattice(plan.site.boundary, turn, lattice.step);
    const steps = searchTurn(search, turned);
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        unseen = Math.max(unseen, step.value);
        break;
      }
      yield (index + step.value) / lattice.turns.length;
    }
  }
  return { finished: contest.scored < maxScores, unseen };
}

/** More cloth mostly spares more: found first, it leaves fewer others worth a look. */
function mostClothFirst(search: Search): Search {
  const { lattice, responses } = search;
  const falling = (values: readonly number[]) => values.toSorted((a, b) => b - a);
  const largest = (sizes: Lattice['sizes']) => sizes.toSorted((one, other) => other.a * other.b - one.a * one.b);
  return {
    ...search,
    responses: responses.toSorted((one, other) => other.density - one.density),
    lattice: {
      ...lattice,
      sizes: largest(lattice.sizes),
      box: { ...lattice.box, sizes: largest(lattice.box.sizes), depths: falling(lattice.box.depths) },
      screenCells: falling(lattice.screenCells),
      screenTops: falling(lattice.screenTops),
    },
  };
}

/** Turns far apart first, so that good bests stand early. */
function spreadOut(turns: readonly number[]): number[] {
  const order: number[] = [];
  for (let gap = 8; gap >= 1; gap /= 2) {
    turns.forEach((turn, k) => {
      if (k % gap === 0 && !order.includes(turn)) order.push(turn);
    });
  }
  return order;
}

/** A candidate whose bound is worth a look. */
interface Promising {
  readonly family: number;
  readonly bound: number;
  readonly response: number;
  readonly roof: RoofPlace | null;
  readonly curtains: readonly CurtainPlace[];
  readonly drops: readonly Drop[];
}

interface TurnSearch extends Search {
  readonly turned: TurnedLattice;
  readonly rays: TurnedRays;
  /** Nearest place of each half node, (2·columns + 1) a row. */
  readonly nearest: Uint8Array;
  readonly mask: GroundMask;
}

function* searchTurn(search: Search, turned: TurnedLattice): Generator<number, number, void> {
  const { lattice, targets, pairs, responses } = search;
  const at: TurnSearch = {
    ...search,
    turned,
    rays: turnedRays(targets, pairs, turned),
    nearest: nearestPlaces(turned, search.places),
    mask: groundMask(search.rules, search.hiddenHeight ?? (() => Infinity), turned),
  };
  const size = (turned.columns + 1) * (turned.rows + 1);
  const plane = new Float64Array(size);
  const sky = new Float64Array(size * pairs.views.length);
  let unseen = 0;
  const withRoofs = lattice.kinds.includes('roof');
  const withDrops = lattice.kinds.includes('roof with drops') && lattice.box.turns.includes(turned.turn);
  const withScreens = lattice.kinds.includes('screen');
  const jobs = (withRoofs || withDrops ? lattice.heights.length : 0) + (withScreens ? 1 : 0);
  let done = 0;
  const breaks = [
    ...new Set([
      ...(withDrops
        ? lattice.box.heights.flatMap((height) => [height, ...lattice.box.depths.map((depth) => height - depth)])
        : []),
      ...(withScreens ? [lattice.screenBottom, ...lattice.screenTops] : []),
    ]),
  ].sort((a, b) => a - b);
  const drops: { u: CurtainSums; v: CurtainSums }[] = [];
  for (const response of withDrops ? responses : []) {
    drops.push(tablesFor(at, breaks, curtainGains(response.box), response.box.bySky, response.density));
    yield done / jobs;
  }
  if (withScreens) {
    for (const [r, response] of responses.entries()) {
      const tables = tablesFor(at, breaks, response.flat.once, response.flat.bySky, response.density);
      unseen = Math.max(unseen, yield* lookAt(at, screensWorthALook(at, r, tables), null, () => done / jobs));
    }
    done++;
  }
  for (const height of withRoofs || withDrops ? lattice.heights : []) {
    const crossings = planeCrossings(at.rays, pairs, height);
    const blocked = at.mask.blockedAt(height);
    yield done / jobs;
    let hasSky = false;
    const skyThere = (): Float64Array => {
      if (!hasSky) skySums(at.rays, pairs, height, sky);
      hasSky = true;
      return sky;
    };
    const roofs = { crossings, skyThere };
    for (const [r, response] of responses.entries()) {
      if (withRoofs) {
        payoffSums(at.rays, pairs, crossings, response.flat, response.density, plane);
        unseen = Math.max(
          unseen,
          yield* lookAt(at, roofsWorthALook(at, r, height, blocked, plane), roofs, () => done / jobs),
        );
      }
      if (withDrops && lattice.box.heights.includes(height)) {
        payoffSums(at.rays, pairs, crossings, response.box, response.density, plane);
        unseen = Math.max(
          unseen,
          yield* lookAt(at, boxesWorthALook(at, r, height, blocked, plane, drops[r]), null, () => done / jobs),
        );
      }
    }
    done++;
  }
  return unseen;
}

function tablesFor(
  { turned, rays, pairs }: TurnSearch,
  breaks: readonly number[],
  gains: Float64Array,
  bySky: Float64Array,
  density: number,
): { u: CurtainSums; v: CurtainSums } {
  const tables = curtainTables(turned, breaks);
  fillCurtainSums(rays, pairs, gains, bySky, density, 'u', tables.u);
  fillCurtainSums(rays, pairs, gains, bySky, density, 'v', tables.v);
  return tables;
}

interface RoofTables {
  readonly crossings: ReturnType<typeof planeCrossings>;
  skyThere(): Float64Array;
}

/** Enters candidates, the most promising first. @returns the highest bound that was not looked at, 0 if all were */
function* lookAt(
  at: TurnSearch,
  batches: Iterable<Promising[]>,
  roofs: RoofTables | null,
  doneNow: () => number,
): Generator<number, number, void> {
  const { contest, turned, rays, pairs, responses, maxScores } = at;
  let next = contest.scored + SCORES_A_STEP;
  let looks = 0;
  let unseen = 0;
  yield doneNow();
  for (const batch of batches) {
    batch.sort((a, b) => b.bound - a.bound);
    for (const candidate of batch) {
      if (!contest.beats(candidate.family, candidate.bound)) continue;
      if (contest.scored >= maxScores) {
        unseen = Math.max(unseen, candidate.bound);
        continue;
      }
      const { roof, curtains, drops, family, bound } = candidate;
      const response = responses[candidate.response];
      const kind = roof === null ? 'screen' : drops.length > 0 ? 'roof with drops' : 'roof';
      const cloth =
        roof === null ? screenOf(turned, curtains[0], response.density) : roofOf(turned, roof, response.density, drops);
      contest.enter(family, kind, cloth, bound, () =>
        roof !== null && roofs !== null
          ? sparedByRoof(rays, pairs, response, roofs.crossings, roofs.skyThere(), roof)
          : sparedByCloth(rays, pairs, response, roof, curtains),
      );
      if (contest.scored >= next || ++looks % LOOKS_A_STEP === 0) {
        next = contest.scored + SCORES_A_STEP;
        yield doneNow();
      }
    }
    yield doneNow();
  }
  return unseen;
}

function* roofsWorthALook(
  at: TurnSearch,
  response: number,
  height: number,
  blocked: Int32Array,
  plane: Float64Array,
): Generator<Promising[]> {
  const { turned, lattice, contest, nearest, responses, places } = at;
  const base = overheadGain(at.pairs, responses[response].flat, responses[response].density);
  const { columns, rows } = turned;
  const width = columns + 1;
  const sizes = lattice.sizes.map(({ a, b }) => ({
    a,
    b,
    family0: familyOf('roof', a * b * lattice.step ** 2, 0, places.length),
  }));
  const [widest, deepest] = [Math.max(...sizes.map(({ a }) => a)), Math.max(...sizes.map(({ b }) => b))];
  for (const { a, b } of sizes) contest.candidates += Math.max(0, columns - a + 1) * Math.max(0, rows - b + 1);
  let batch: Promising[] = [];
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      // No roof from this node on spares more than all the ground that the largest would cover.
      if (
        !contest.mayMatter(
          base + sumOver(plane, 0, width, i, j, Math.min(widest, columns - i), Math.min(deepest, rows - j)),
        )
      )
        continue;
      for (const { a, b, family0 } of sizes) {
        if (i + a > columns || j + b > rows) continue;
        const bound = base + sumOver(plane, 0, width, i, j, a, b);
        const family = family0 + nearest[(2 * j + b) * (2 * columns + 1) + 2 * i + a];
        if (!contest.beats(family, bound) || !mayStand(at, i, j, a, b, height, blocked, bound)) continue;
        batch.push({ family, bound, response, roof: { i, j, a, b, height }, curtains: [], drops: [] });
      }
    }
    if (batch.length < GATHERED) continue;
    yield batch;
    batch = [];
  }
  yield batch;
}

function* boxesWorthALook(
  at: TurnSearch,
  response: number,
  height: number,
  blocked: Int32Array,
  plane: Float64Array,
  { u: frontal, v: lateral }: { u: CurtainSums; v: CurtainSums },
): Generator<Promising[]> {
  const { turned, lattice, contest, nearest, responses, places } = at;
  const base = overheadGain(at.pairs, responses[response].box, responses[response].density);
  const { density } = responses[response];
  const { columns, rows } = turned;
  const width = columns + 1;
  const high = frontal.breaks.indexOf(height);
  const gains = new Float64Array(SIDES.length);
  let batch: Promising[] = [];
  for (const depth of lattice.box.depths) {
    const low = frontal.breaks.indexOf(height - depth);
    for (const { a, b } of lattice.box.sizes) {
      const sets = SIDES_TRIED[lattice.box.maxDrops].map((sides) => {
        const cloth =
          a * b * lattice.step +
          sides.reduce((sum, side) => sum + (side === 'front' || side === 'back' ? a : b) * depth, 0);
        return {
          sides,
          indices: sides.map((side) => SIDES.indexOf(side)),
          family0: familyOf('roof with drops', cloth * lattice.step, 0, places.length),
        };
      });
      contest.candidates += sets.length * Math.max(0, columns - a + 1) * Math.max(0, rows - b + 1);
      for (let j = 0; j + b <= rows; j++) {
        for (let i = 0; i + a <= columns; i++) {
          const roof = base + sumOver(plane, 0, width, i, j, a, b);
          gains[FRONT] = sumOfCurtain(frontal, j + b, i, a, low, high);
          gains[BACK] = sumOfCurtain(frontal, j, i, a, low, high);
          gains[LEFT] = sumOfCurtain(lateral, i, j, b, low, high);
          gains[RIGHT] = sumOfCurtain(lateral, i + a, j, b, low, high);
          if (!contest.mayMatter(roof + gains[FRONT] + gains[BACK] + gains[LEFT] + gains[RIGHT])) continue;
          const place = nearest[(2 * j + b) * (2 * columns + 1) + 2 * i + a];
          for (const { sides, indices, family0 } of sets) {
            let bound = roof;
            for (let k = 0; k < indices.length; k++) bound += gains[indices[k]];
            const family = family0 + place;
            if (!contest.beats(family, bound) || !mayStand(at, i, j, a, b, height, blocked, bound)) continue;
            const where = { i, j, a, b, height };
            batch.push({
              family,
              bound,
              response,
              roof: where,
              curtains: sides.map((side) => curtainOf(where, side, depth)),
              drops: sides.map((side) => ({ side, depth, density })),
            });
          }
        }
        if (batch.length < GATHERED) continue;
        yield batch;
        batch = [];
      }
    }
  }
  yield batch;
}

/**
 * Whether nothing that can be told from nodes alone speaks against cloth over a × b cells (a screen: one of them 0).
 */
function mayStand(
  { mask, contest, cap, hiddenHeight }: TurnSearch,
  i: number,
  j: number,
  a: number,
  b: number,
  height: number,
  blocked: Int32Array | null,
  bound: number,
): boolean {
  const seen =
    hiddenHeight !== null &&
    !(
      mask.isHidden(i, j, height) &&
      mask.isHidden(i + a, j, height) &&
      mask.isHidden(i, j + b, height) &&
      mask.isHidden(i + a, j + b, height)
    );
  const tooHigh = height > cap;
  const mayMatter =
    seen && tooHigh
      ? false
      : seen
        ? contest.beatsWithout('hidden', bound)
        : !tooHigh || contest.beatsWithout('height', bound);
  if (mayMatter && (blocked === null || mask.isClear(blocked, i, j, a, b)) && mask.cornersFit(i, j, a, b)) return true;
  contest.forbidden++;
  return false;
}

const ONE_SIDE: readonly (readonly DropSide[])[] = SIDES.map((side) => [side]);
const TWO_SIDES: readonly (readonly DropSide[])[] = SIDES.flatMap((a, k) => SIDES.slice(k + 1).map((b) => [a, b]));
const SIDES_TRIED = { 1: ONE_SIDE, 2: [...ONE_SIDE, ...TWO_SIDES] } as const;

function* screensWorthALook(
  at: TurnSearch,
  response: number,
  tables: { u: CurtainSums; v: CurtainSums },
): Generator<Promising[]> {
  const { lattice, contest, turned, nearest, places } = at;
  const { breaks } = tables.u;
  const low = breaks.indexOf(lattice.screenBottom);
  const across = 2 * turned.columns + 1;
  const forms = lattice.screenTops.flatMap((top) =>
    lattice.screenCells.map((cells) => ({
      top,
      high: breaks.indexOf(top),
      cells,
      family0: familyOf('screen', cells * lattice.step * (top - lattice.screenBottom), 0, places.length),
    })),
  );
  const [longest, highest] = [Math.max(...lattice.screenCells), Math.max(...forms.map(({ high }) => high))];
  let batch: Promising[] = [];
  for (const along of ['u', 'v'] as const) {
    const table = tables[along];
    for (const { cells } of forms) contest.candidates += table.lines * Math.max(0, table.lateral - cells);
    for (let line = 0; line < table.lines; line++) {
      for (let from = 0; from + 1 < table.lateral; from++) {
        if (
          !contest.mayMatter(sumOfCurtain(table, line, from, Math.min(longest, table.lateral - 1 - from), low, highest))
        )
          continue;
        for (const { top, high, cells, family0 } of forms) {
          if (from + cells >= table.lateral) continue;
          const bound = sumOfCurtain(table, line, from, cells, low, high);
          const [i2, j2] = along === 'u' ? [2 * from + cells, 2 * line] : [2 * line, 2 * from + cells];
          const family = family0 + nearest[j2 * across + i2];
          if (!contest.beats(family, bound)) continue;
          const [i, j, a, b] = along === 'u' ? [from, line, cells, 0] : [line, from, 0, cells];
          if (!mayStand(at, i, j, a, b, top, null, bound)) continue;
          batch.push({
            family,
            bound,
            response,
            roof: null,
            curtains: [{ along, line, from, cells, bottom: lattice.screenBottom, top }],
            drops: [],
          });
        }
      }
      if (batch.length < GATHERED) continue;
      yield batch;
      batch = [];
    }
  }
  yield batch;
}

/** Index of the place nearest to each half node. */
function nearestPlaces(turned: TurnedLattice, places: readonly PlanPoint[]): Uint8Array {
  const across = 2 * turned.columns + 1;
  const nearest = new Uint8Array(across * (2 * turned.rows + 1));
  const half = turned.step / 2;
  const placeI = places.map(([x, y]) => (alongU(turned, x, y) - turned.u0) / half);
  const placeJ = places.map(([x, y]) => (alongV(turned, x, y) - turned.v0) / half);
  for (let j = 0, index = 0; j <= 2 * turned.rows; j++) {
    for (let i = 0; i < across; i++, index++) {
      let least = Infinity;
      for (let p = 0; p < places.length; p++) {
        const squared = (i - placeI[p]) ** 2 + (j - placeJ[p]) ** 2;
        if (squared >= least) continue;
        least = squared;
        nearest[index] = p;
      }
    }
  }
  return nearest;
}
