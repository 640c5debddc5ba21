import type { Cloth } from '../../plan/types.ts';
import { kindOf } from './kinds/hung.ts';
import type { LaidOut } from './lay-out.ts';
import { thinnerThan } from './rules/suits.ts';
import { bestTogether } from './scoring/several.ts';
import { type TogetherScore, togetherScore } from './scoring/together.ts';
import { inOrder, type Standings } from './search/contest.ts';
import type { ClothKind } from './types.ts';

/** Cloth that may be shown, what it spares on the search's points [K·h/day], and what it costs. */
export interface Candidate {
  readonly kind: ClothKind | 'several';
  readonly cloth: readonly Cloth[];
  readonly spared: number;
  /** As `Scored.cost`. */
  readonly cost: number;
  readonly cautioned: boolean;
}

/** Of densities whose effect differs by no more than this the thinnest is taken. */
const NO_LESS_THAN = 0.95;

/** Of what the search found best, what may be shown: pieces, or combinations of so many as are asked. */
export function candidatesOf(laidOut: LaidOut, { fronts }: Standings): Candidate[] {
  const bests = fronts.flat().sort(inOrder);
  const { request, judges } = laidOut;
  if (request.count === 1) return bests.map(({ cloth, ...rest }) => ({ ...rest, cloth: [cloth] }));
  const score = scoreOf(laidOut);
  const forWhom = new Map(bests.map((one) => [one, mostOf(score([one.cloth]))]));
  return bestTogether(bests, request.count, {
    spared: (cloth) => sparedBy(score, cloth),
    mayStand: (cloth) => !judges.isTooDear(cloth) && judges.keptFromBy(cloth) === null,
    forWhom: (one) => forWhom.get(one) ?? 0,
  }).map((group) => ({ ...group, kind: group.cloth.length > 1 ? 'several' : kindOf(group.cloth[0]) }));
}

/** Index of the largest. */
function mostOf(values: Float64Array): number {
  return values.reduce((most, each, index) => (each > values[most] ? index : most), 0);
}

/** Makes cloth as thin as does nearly the same; as it is where its density was asked for. */
export function thinner(laidOut: LaidOut): (candidate: Candidate) => Candidate {
  if (laidOut.request.densities !== undefined) return (candidate) => candidate;
  const score = scoreOf(laidOut);
  return (candidate) => {
    const least = NO_LESS_THAN * sparedBy(score, candidate.cloth);
    const densest = Math.max(...candidate.cloth.map(({ density }) => density));
    for (const density of thinnerThan(densest)) {
      const cloth = candidate.cloth.map((one) => (one.density > density ? ofDensity(one, density) : one));
      const spared = sparedBy(score, cloth);
      if (spared >= least) return { ...candidate, cloth, spared };
    }
    return candidate;
  };
}

function ofDensity(cloth: Cloth, density: number): Cloth {
  if (cloth.kind === 'screen' || cloth.drops === undefined) return { ...cloth, density };
  return { ...cloth, density, drops: cloth.drops.map((drop) => ({ ...drop, density })) };
}

export function scoreOf({ targets, pairs, leaves }: LaidOut): TogetherScore {
  return togetherScore(targets, pairs, leaves);
}

export function sparedBy(score: TogetherScore, cloth: Candidate['cloth']): number {
  return score(cloth).reduce((sum, each) => sum + each, 0);
}
