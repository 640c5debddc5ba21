import { footprintOf } from '../../../plan/geometry/cloth-shapes.ts';
import { meets } from '../../../plan/geometry/shapes.ts';
import type { Cloth } from '../../../plan/types.ts';
import type { Scored } from '../search/contest.ts';

/** Cloth that is put up together. */
export interface Group {
  readonly cloth: readonly Cloth[];
  /** All at once. [K·h/day] */
  readonly spared: number;
  /** As `Scored.cost`. */
  readonly cost: number;
  readonly cautioned: boolean;
}

/** What groups are asked. */
interface GroupJudge {
  spared(cloth: Group['cloth']): number;
  /** By all rules; asked only of those that nothing cheaper beats. */
  mayStand(cloth: Group['cloth']): boolean;
  /** Index of the plant that a piece spares most. */
  forWhom(one: Scored): number;
}

/** How many of the best single pieces are combined, by how many are wanted: a few hundred combinations. */
const SHORTLIST = [0, 0, 24, 16, 12] as const;
/** Of each plant at least so many stand on the shortlist: what spares it most, and the cheapest for it. */
const LEAST_FOR_A_PLANT = 2;

/**
 * Of all combinations of a shortlist, of so many pieces or fewer, every one scored with all its cloth hung at once,
 * those that no other beats in money and effect, the best first.
 * @param singles what no other beats in money and effect, best first
 */
export function bestTogether(singles: readonly Scored[], count: number, judge: GroupJudge): Group[] {
  const groups = Array.from({ length: count }, (_, k) =>
    chosenFrom(shortlist(singles, SHORTLIST[count], judge.forWhom), k + 1),
  )
    .flat()
    .map((pieces) => groupOf(pieces, judge))
    .sort((a, b) => b.spared - a.spared || a.cost - b.cost);
  const kept: Group[] = [];
  // What our own cautions speak against beats nothing that they do not.
  let [cheapest, cheapestSafe] = [Infinity, Infinity];
  for (const group of groups) {
    if (group.cost >= (group.cautioned ? cheapest : cheapestSafe) || !judge.mayStand(group.cloth)) continue;
    kept.push(group);
    cheapest = Math.min(cheapest, group.cost);
    if (!group.cautioned) cheapestSafe = group.cost;
  }
  return kept;
}

function groupOf(pieces: readonly Scored[], judge: GroupJudge): Group {
  const cloth = pieces.map((piece) => piece.cloth);
  return {
    cloth,
    spared: judge.spared(cloth),
    cost: pieces.reduce((sum, { cost }) => sum + cost, 0),
    cautioned: pieces.some(({ cautioned }) => cautioned),
  };
}

/** As many for each plant, from what spares it most to the cheapest: the best pair rarely serves one plant twice. */
function shortlist(singles: readonly Scored[], most: number, forWhom: (one: Scored) => number): readonly Scored[] {
  const byPlant = new Map<number, Scored[]>();
  for (const one of singles) {
    const plant = forWhom(one);
    byPlant.set(plant, [...(byPlant.get(plant) ?? []), one]);
  }
  const each = Math.max(LEAST_FOR_A_PLANT, Math.floor(most / Math.max(1, byPlant.size)));
  return [...byPlant.values()].flatMap((all) => spreadOver(all, each)).slice(0, 2 * most);
}

/** So many of a list, its first and last among them, evenly. */
function spreadOver<One>(all: readonly One[], count: number): One[] {
  if (all.length <= count) return [...all];
  return Array.from({ length: count }, (_, k) => all[Math.round((k * (all.length - 1)) / (count - 1))]);
}

function chosenFrom(list: readonly Scored[], count: number): Scored[][] {
  if (count === 0) return [[]];
  return list.flatMap((first, k) =>
    chosenFrom(
      list.slice(k + 1).filter((other) => !collide(first.cloth, other.cloth)),
      count - 1,
    ).map((rest) => [first, ...rest]),
  );
}

function collide(a: Cloth, b: Cloth): boolean {
  const [one, other] = [footprintOf(a), footprintOf(b)];
  return other.length > 2 ? meets(one, other) : meets(other, one.length > 2 ? one : [...one, ...one]);
}
