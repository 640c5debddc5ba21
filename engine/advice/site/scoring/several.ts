import type { Canopy, Screen } from '../../../plan/types.ts';
import { meets } from '../shapes.ts';
import { footprintOf } from '../../../plan/geometry/shapes.ts';
import type { Scored } from '../search/contest.ts';

/** Cloth that is put up together. */
export interface Group {
  readonly cloth: readonly (Canopy | Screen)[];
  readonly spared: number;
}

/** How many of the best single pieces are combined, by how many are wanted: a few hundred combinations. */
const SHORTLIST = [0, 0, 24, 16, 12] as const;

/**
 * The best of all combinations of a shortlist, every one scored with all its cloth hung at once.
 * @param singles best first @param allowed asked of those that would lead
 */
export function bestTogether(
  singles: readonly Scored[],
  count: number,
  score: (cloth: readonly (Canopy | Screen)[]) => number,
  allowed: (cloth: readonly (Canopy | Screen)[]) => boolean,
  keep: number,
): Group[] {
  const list = singles.slice(0, SHORTLIST[count]).map(({ cloth }) => cloth);
  const groups = chosenFrom(list, count)
    .map((cloth): Group => ({ cloth, spared: score(cloth) }))
    .sort((a, b) => b.spared - a.spared);
  const kept: Group[] = [];
  for (const group of groups) {
    if (kept.length >= keep) break;
    if (allowed(group.cloth)) kept.push(group);
  }
  return kept;
}

function chosenFrom(list: readonly (Canopy | Screen)[], count: number): (Canopy | Screen)[][] {
  if (count === 0) return [[]];
  return list.flatMap((first, k) =>
    chosenFrom(
      list.slice(k + 1).filter((other) => !collide(first, other)),
      count - 1,
    ).map((rest) => [first, ...rest]),
  );
}

function collide(a: Canopy | Screen, b: Canopy | Screen): boolean {
  const [one, other] = [footprintOf(a), footprintOf(b)];
  return other.length > 2 ? meets(one, other) : meets(other, one.length > 2 ? one : [...one, ...one]);
}
