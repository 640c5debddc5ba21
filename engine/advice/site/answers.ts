/** Of what was found, the few that a person chooses between. */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { AnswerRole } from './types.ts';

/** The least answer does at least this share of the best, the one for the money at least that. */
export const LEAST_OF_BEST = 0.5;
const NEARLY_THE_BEST = 0.8;

interface Weighed {
  /** On the search's points. [K·h/day] */
  readonly spared: number;
  readonly cost: number;
  /** Whether our own cautions speak against it: it does not stand first where another can. */
  readonly cautioned: boolean;
}

/** The same worked out exactly. */
interface Exact {
  readonly spared: number;
  readonly cost: number;
  /** Whether it keeps every plant's light: the search asks that at a few places of a bed. */
  readonly keepsLight: boolean;
}

export interface Answer<Candidate, Full> {
  readonly candidate: Candidate;
  readonly full: Full;
  readonly roles: readonly AnswerRole[];
}

/**
 * The cheapest with at least 80 % of the best one's effect, the best whatever it costs, the cheapest with half of it;
 * none that another beats in money and effect.
 * @param inFull works one out exactly; asked of few
 */
export function answersOf<Candidate extends Weighed, Full extends Exact>(
  candidates: readonly Candidate[],
  inFull: (candidate: Candidate) => Full,
): Answer<Candidate, Full>[] {
  const byCost = candidates.toSorted((a, b) => a.cost - b.cost || b.spared - a.spared);
  const most = bestOf(byCost, inFull);
  if (most === null) return [];
  const safe = byCost.filter(({ cautioned }) => !cautioned);
  const safest = bestOf(safe, inFull) ?? most;
  const cheapestWith = (from: readonly Candidate[], share: number, best: Candidate): Candidate | null =>
    from.find(
      (one) =>
        one.spared >= (share - SLACK) * best.spared &&
        inFull(one).keepsLight &&
        inFull(one).spared >= share * inFull(best).spared - ROUNDING,
    ) ?? null;
  const asked: readonly (readonly [AnswerRole, Candidate | null])[] = [
    [
      'most for money',
      cheapestWith(safe, NEARLY_THE_BEST, most) ?? cheapestWith(safe, NEARLY_THE_BEST, safest) ?? most,
    ],
    ['most', most],
    ['least', cheapestWith(safe, LEAST_OF_BEST, most) ?? cheapestWith(byCost, LEAST_OF_BEST, most)],
  ];
  const chosen = [...new Set(asked.flatMap(([, one]) => (one === null ? [] : [one])))];
  return chosen
    .filter((one) => !chosen.some((other) => beats(other, one, inFull)))
    .map((candidate) => ({
      candidate,
      full: inFull(candidate),
      roles: asked.filter(([, one]) => one === candidate).map(([role]) => role),
    }));
}

/** The search's numbers and the exact ones differ a little: what is this near is worked out. */
const SLACK = 0.02;

/** What spares most and keeps every plant's light; `null`: nothing does. */
export function bestOf<Candidate extends Weighed, Full extends Exact>(
  candidates: readonly Candidate[],
  inFull: (candidate: Candidate) => Full,
): Candidate | null {
  return candidates.toSorted((a, b) => b.spared - a.spared).find((one) => inFull(one).keepsLight) ?? null;
}

function beats<Candidate extends Weighed, Full extends Exact>(
  other: Candidate,
  one: Candidate,
  inFull: (candidate: Candidate) => Full,
): boolean {
  if (other === one || (other.cautioned && !one.cautioned)) return false;
  const [a, b] = [inFull(other), inFull(one)];
  return a.cost <= b.cost && a.spared >= b.spared && (a.cost < b.cost || a.spared > b.spared);
}

/** Money is well spent as long as it does at least this share of what the first money did. Our choice. */
const STILL_PAYS = 0.25;
/** An answer that spares less of the harm than this is not worth building. Our choice. */
const WORTH_BUILDING = 0.15;

/**
 * Whether what an answer adds to a cheaper one is worth its money.
 * @param effect what the answer does, as a share of the harm @param before what is there to be had for less
 * @param first the cheapest answer of all; absent: this is it
 */
export function isWorth(
  { effect, cost }: { readonly effect: number; readonly cost: number | null },
  before: { readonly effect: number; readonly cost: number | null } | undefined,
  first: { readonly effect: number; readonly cost: number | null } | undefined,
): boolean {
  if (before === undefined || first === undefined) return effect >= WORTH_BUILDING;
  if (cost === null || before.cost === null || first.cost === null || first.cost <= 0 || cost <= before.cost)
    return true;
  return (effect - before.effect) / (cost - before.cost) >= (STILL_PAYS * first.effect) / first.cost;
}
