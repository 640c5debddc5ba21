import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Cloth } from '../../../plan/types.ts';
import { answersOf } from '../answers.ts';
import { type Candidate, scoreOf, sparedBy } from '../choose.ts';
import type { LaidOut } from '../lay-out.ts';
import { sparedAtMost } from '../scoring/at-most.ts';
import { bentFrom } from './bend.ts';
import { hungFrom } from './hang.ts';
import { type Move, movesOf } from './moves.ts';
import { refined } from './refine.ts';

/** What was found between the steps of the lattice, beside what the lattice has. */
export interface BetweenSteps {
  readonly candidates: readonly Candidate[];
  readonly tried: number;
}

/** The best of each kind that are moved about, the answers of the lattice aside. */
const BEST_OF_A_KIND = 1;
const ROUNDS = 3;

/**
 * Moves the most promising candidates about between the steps of the lattice, and bends screens round a corner. What
 * comes of it costs no more, a bent screen's corner post aside, keeps the budget and breaks no rule; nobody proves
 * that it is the best.
 */
export function betweenSteps(laidOut: LaidOut, candidates: readonly Candidate[]): BetweenSteps {
  if (!laidOut.request.betweenSteps) return { candidates, tried: 0 };
  const mover = moverOf(laidOut);
  let all = candidates;
  const settled = new Set<Candidate>();
  // A better best asks more of the rest: others of the lattice may become answers, and are moved about in turn.
  for (let round = 0; round < ROUNDS; round++) {
    const next = promising(all).filter((candidate) => !settled.has(candidate));
    if (next.length === 0) break;
    const found = next.flatMap((candidate) => nearBy(candidate, mover, laidOut));
    [...next, ...found].forEach((candidate) => settled.add(candidate));
    all = [...all, ...found];
  }
  return { candidates: all, tried: mover.tried() };
}

/**
 * A candidate moved to the best near by; where it is a screen, those round a corner that spare more; where it is a
 * roof, those that hang from a wall near by, two posts fewer.
 */
function nearBy(candidate: Candidate, mover: Mover, { plan, request, units }: LaidOut): Candidate[] {
  const budget = request.budget ?? Infinity;
  const moved = mover.moved(candidate, candidate.cost);
  const [cloth] = moved.cloth;
  const others = (starts: readonly Cloth[], least: number): Candidate[] =>
    starts
      .map((start) => mover.moved({ ...moved, cloth: [start], spared: 0 }, Infinity))
      .filter(({ spared, cost }) => spared > least && cost <= budget + ROUNDING);
  if (moved.kind === 'roof' && cloth.kind === 'canopy') return [moved, ...others(hungFrom(cloth, plan), 0)];
  if (moved.kind === 'screen' && cloth.kind === 'screen')
    return [moved, ...others(bentFrom(cloth, units), moved.spared)];
  return [moved];
}

function promising(candidates: readonly Candidate[]): Candidate[] {
  const best = candidates.toSorted((a, b) => b.spared - a.spared);
  const kinds = [...new Set(candidates.map(({ kind }) => kind))];
  const answers = answersOf(candidates, (candidate) => ({ ...candidate, keepsLight: true })).map(
    ({ candidate }) => candidate,
  );
  const ofKinds = kinds.flatMap((kind) => best.filter((one) => one.kind === kind).slice(0, BEST_OF_A_KIND));
  return [...new Set([...answers, ...ofKinds])];
}

interface Mover {
  /** The candidate, each of its pieces moved in turn. @param most it may cost; Infinity: whatever */
  moved(candidate: Candidate, most: number): Candidate;
  tried(): number;
}

function moverOf(laidOut: LaidOut): Mover {
  const { judges, request, lattice, cap, targets, pairs, shades, units } = laidOut;
  const score = scoreOf(laidOut);
  const spared = remembered((cloth) => sparedBy(score, cloth));
  const atMost = remembered(sparedAtMost(targets, pairs, shades));
  const isAny = (asked: unknown) => asked === undefined || asked === 'any';
  const freedom = { height: isAny(request.heights), form: isAny(request.sizes), units };
  const heights = { canopy: lattice.roof.heights, screen: lattice.screen.tops };
  const inLimits = ({ kind, height }: Cloth) =>
    height >= Math.min(...heights[kind]) - ROUNDING && height <= Math.min(cap, Math.max(...heights[kind])) + ROUNDING;
  const mayHang = (cloth: Candidate['cloth']) => !judges.isTooDear(cloth) && judges.keptFromBy(cloth) === null;
  let tried = 0;
  const piece = (cloth: Cloth, others: readonly Cloth[], most: number, moves: readonly Move[]): Cloth => {
    const cautioned = judges.isCautioned(cloth);
    const result = refined(cloth, moves, {
      spared: (one) => spared([...others, one]),
      sparedAtMost: (one) => atMost([...others, one]),
      mayStand: (one) => inLimits(one) && isEmpty(judges.objections(one)),
      mayWin: (one) =>
        judges.cost(one) <= most + ROUNDING && mayHang([...others, one]) && (cautioned || !judges.isCautioned(one)),
    });
    tried += result.tried;
    return result.cloth;
  };
  const stands = (cloth: Candidate['cloth']) =>
    cloth.every((one) => inLimits(one) && isEmpty(judges.objections(one))) && mayHang(cloth);
  return {
    tried: () => tried,
    moved(candidate, most) {
      let cloth = candidate.cloth;
      for (const k of cloth.keys()) {
        const others = cloth.filter((_, n) => n !== k);
        const limit = most === Infinity ? Infinity : judges.cost(cloth[k]);
        const moved = piece(cloth[k], others, limit, movesOf(cloth[k], freedom));
        cloth = cloth.map((one, n) => (n === k ? moved : one));
      }
      return {
        ...candidate,
        cloth,
        spared: stands(cloth) ? spared(cloth) : 0,
        cost: cloth.reduce((sum, one) => sum + judges.cost(one), 0),
        cautioned: cloth.some(judges.isCautioned),
      };
    },
  };
}

/** One place is come by on several ways. */
function remembered(work: (cloth: Candidate['cloth']) => number): (cloth: Candidate['cloth']) => number {
  const known = new Map<string, number>();
  return (cloth) => {
    const key = JSON.stringify(cloth);
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = work(cloth)));
    return value;
  };
}

function isEmpty(objections: 'ground' | readonly unknown[]): boolean {
  return objections !== 'ground' && objections.length === 0;
}
