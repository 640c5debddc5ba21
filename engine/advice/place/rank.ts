/** The places for a pot in their order, worked out only as far down as somebody asks. */

import type { LightStanding } from '../../load/light/light-class.ts';
import { COOKING_ROOTS } from '../../load/pot/root-zone.ts';
import type { Roots } from '../../load/types.ts';
import { boundsOf, distance } from '../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import type { PlantLight } from '../compare/types.ts';
import { potGround } from './ground.ts';
import type { PotJudge } from './judge.ts';
import { STEP_AS_FAR, type Way, wayBetween } from './way.ts';
import { wantsWinterSun, WINTER_SUN } from './winter.ts';

/** Places are tried this far apart, farther in a large yard, where the best are then tried again half as far. [m] */
const STEP = 0.5;
const MOST_PLACES = 400;
/** Nearer than this to where it stands is no other place. [m] */
const ELSEWHERE = 0.5;
/** Places nearer to each other than this are much alike, and only the best of them is named. Our choice. [m] */
const APART = 2.5;
/** Places named beside staying, where nobody says how many: three to choose from. */
export const SPOTS = 2;
/** So many are judged in full for each that is named, so that the count does not change which come first. */
const JUDGED_EACH = 2;
/** Where roots die at all of those, so many more are asked whether they live there. Our choice. */
const ASKED_FOR_ROOTS = 4;
/** A piece of work is worth this share of today's harm, and half a K·h a day at least. Our choice. */
const WORK = 0.1;
/** Doses this near each other are alike: then the sun it likes and the way decide. [K·h/day] */
const ALIKE = 0.5;
/** More sun than its range by more than this puts a place behind those that are harmed alike and within it. [h/day] */
const OVER = 1;

/** A place whose light is known. */
export interface Tried extends Candidate {
  readonly light: PlantLight;
  readonly standing: LightStanding;
  /** Hours of sun beyond the plant's range. */
  readonly over: number;
  /** Whether its roots die there however the pot is kept cool, and do not where it stands. */
  readonly rootsDie: boolean;
}

/** A place that is known all round. */
export interface Judged extends Tried {
  readonly roots: RootFate;
}

interface Candidate extends Way {
  readonly at: PlanPoint;
  /** [K·h/day] */
  readonly harm: number;
  /** What it takes to stand there, carried, kept cool, carried off for winter, as so much harm. [K·h/day] */
  readonly work: number;
}

export type RootFate = 'live' | 'live if kept cool' | 'die';

/** Light enough comes first. */
export const LIGHT_ORDER: readonly LightStanding[] = ['enough', 'short', 'too dark'];

export interface Ranking {
  /** Where it stands now. */
  readonly stay: Judged;
  /** Where else it may stand, on the lattice. */
  readonly places: readonly PlanPoint[];
  /**
   * Where it stands among the best places, judged in full and well apart from each other, the best first.
   * @param count of places that are to be named
   */
  ranked(count: number): Judged[];
  /** Every place whose light has been looked at. */
  tried(): Tried[];
}

export function rankingOf(plan: Plan, plant: Plant, row: PlantRow, judge: PotJudge): Ranking {
  const known = new Map<PlanPoint, Tried>();
  const candidateAt = (at: PlanPoint): Candidate => ({
    at,
    ...wayBetween(plan, plant.at, at),
    harm: judge.roughHarmAt(at),
    work: 0,
  });
  const lit = (candidate: Candidate): Tried => {
    const tried = known.get(candidate.at) ?? triedOf(candidate, judge.lightAt(candidate.at), row);
    known.set(candidate.at, tried);
    return tried;
  };
  const ground = potGround(plan, plant);
  const mayStand = (at: PlanPoint): boolean => distance(at, plant.at) > ELSEWHERE && ground.reasonAt(at) === null;
  const { step, all } = lattice(plan);
  const places = all.filter(mayStand);
  const coarse = places.map(candidateAt);
  const now = lit(candidateAt(plant.at));
  const stay = judgedInFull(now, row, judge, null);
  const inFull = (tried: Tried): Judged => judgedInFull(tried, row, judge, stay);
  return {
    stay,
    places,
    ranked(count) {
      const judged = JUDGED_EACH * Math.max(SPOTS, count);
      const around = spreadOut(inOrder(coarse, lit), judged).flatMap(({ at: [x, y] }) =>
        NEIGHBOURS.map(([dx, dy]): PlanPoint => [x + (dx * step) / 2, y + (dy * step) / 2]),
      );
      const likely = spreadOut(
        inOrder([...coarse, ...around.filter(mayStand).map(candidateAt)], lit),
        judged + ASKED_FOR_ROOTS,
      );
      const best = likely.slice(0, judged).map(inFull);
      const isCool = ({ at }: Tried): boolean => fateOf(judge.rootsAt(at)) === 'live';
      const cooler = best.some(({ roots }) => roots === 'live') ? undefined : likely.slice(judged).find(isCool);
      return [...best, ...(cooler === undefined ? [] : [inFull(cooler)]), stay].sort(better);
    },
    tried: () => [...known.values()],
  };
}

/** With its harm as everywhere, and the work that it takes to stand there all year. @param stay `null`: it is there */
function judgedInFull(tried: Tried, row: PlantRow, judge: PotJudge, stay: Judged | null): Judged {
  const harm = judge.harmAt(tried.at);
  const roots = judge.rootsAt(tried.at);
  const fate = fateOf(roots);
  const today = stay ?? { harm, roots: fate };
  const isLeft = wantsWinterSun(row) && judge.winterAt(tried.at) < WINTER_SUN;
  const pieces = Number(stay !== null) + Number(isLeft) + cooling(roots);
  return {
    ...tried,
    harm,
    work: pieces * workAt(today.harm),
    roots: fate,
    rootsDie: fate === 'die' && today.roots !== 'die',
  };
}

/** What a piece of work must spare of today's harm to be worth it. [K·h/day] */
export function workAt(harm: number): number {
  return Math.max(ALIKE, WORK * harm);
}

/** To keep a pot cool is one piece of work, and another for each so many degrees. Our choice. [K] */
const HOTTER = 20;
/** Where it does not save the roots that is so much more. Our choice. */
const IN_VAIN = 2;

function cooling(roots: Roots): number {
  if (roots.verdict !== 'cooking') return 0;
  return 1 + (roots.warmest - COOKING_ROOTS) / HOTTER + (fateOf(roots) === 'die' ? IN_VAIN : 0);
}

/** What becomes of roots on the heatwave day: by themselves, or with what cools the pot first. */
export function fateOf({ warmest, verdict, help }: Roots): RootFate {
  if (verdict !== 'cooking') return 'live';
  return help !== null && warmest - help.cooler < COOKING_ROOTS ? 'live if kept cool' : 'die';
}

/**
 * Light enough first, then places where its roots can live, then harm and yearly work; of places alike in that those
 * within the sun it likes, then the way. Of two places that are too dark the one that misses by less.
 */
export function better(a: Tried, b: Tried): number {
  const light = LIGHT_ORDER.indexOf(a.standing) - LIGHT_ORDER.indexOf(b.standing);
  if (light !== 0) return light;
  if (a.standing === 'too dark' && b.standing === 'too dark')
    return shareOfLight(b) - shareOfLight(a) || a.harm - b.harm || effort(a) - effort(b);
  const roots = Number(a.rootsDie) - Number(b.rootsDie);
  return roots || harmStep(a) - harmStep(b) || Number(a.over > OVER) - Number(b.over > OVER) || lessHarm(a, b);
}

/** Places of one step are alike. */
function harmStep({ harm, work }: Candidate): number {
  return Math.round((harm + work) / ALIKE);
}

/** `better`'s order, without asking for the light of more places than are taken from it. */
function* inOrder(
  candidates: readonly Candidate[],
  lit: (candidate: Candidate) => Tried,
): Generator<Tried, void, void> {
  const darker: Tried[] = [];
  let sunnier: Tried[] = [];
  let step = -Infinity;
  for (const candidate of candidates.toSorted(lessHarm)) {
    if (harmStep(candidate) !== step) {
      yield* sunnier;
      [sunnier, step] = [[], harmStep(candidate)];
    }
    const tried = lit(candidate);
    if (tried.standing !== 'enough') darker.push(tried);
    else if (tried.over > OVER) sunnier.push(tried);
    else yield tried;
  }
  yield* sunnier;
  yield* darker.sort(better);
}

/** The way to carry, steps counted as so much more of it. [m] */
function effort({ metres, steps }: Candidate): number {
  return metres + STEP_AS_FAR * Math.abs(steps);
}

function lessHarm(a: Candidate, b: Candidate): number {
  return harmStep(a) - harmStep(b) || effort(a) - effort(b) || a.at[0] - b.at[0] || a.at[1] - b.at[1];
}

function triedOf(candidate: Candidate, light: PlantLight, row: PlantRow): Tried {
  return {
    ...candidate,
    light,
    standing: light.standing,
    over: Math.max(0, light.sunHours - row.sunHours[1]),
    rootsDie: false,
  };
}

/** The share of the light it needs, at most 1. */
function shareOfLight({ light }: Tried): number {
  return light.least === null || light.least === 0 ? 1 : Math.min(1, light.dailyLight / light.least);
}

const NEIGHBOURS: readonly PlanPoint[] = [
  [-1, -1],
  [0, -1],
  [1, -1],
  [-1, 0],
  [1, 0],
  [-1, 1],
  [0, 1],
  [1, 1],
];

function lattice(plan: Plan): { step: number; all: PlanPoint[] } {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const step = Math.max(STEP, Math.sqrt(((maxX - minX) * (maxY - minY)) / MOST_PLACES));
  const columns = Math.floor((maxX - minX) / step);
  const rows = Math.floor((maxY - minY) / step);
  return {
    step,
    all: Array.from({ length: columns * rows }, (_, n): PlanPoint => [
      minX + ((n % columns) + 0.5) * step,
      minY + (Math.floor(n / columns) + 0.5) * step,
    ]),
  };
}

function spreadOut(ranked: Iterable<Tried>, count: number): Tried[] {
  const named: Tried[] = [];
  for (const each of ranked) {
    if (named.length === count) break;
    if (named.every((other) => distance(other.at, each.at) >= APART)) named.push(each);
  }
  return named;
}
