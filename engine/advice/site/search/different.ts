import { clothArea } from '../../compare/cost.ts';
import type { Scored } from './contest.ts';

/** Two pieces of a kind for the same plant are different from this ratio of their cloth on. Our choice. */
const AREA_RATIO = 1.5;

/**
 * Of scored cloth, best first, those that differ really from all before them: in kind, in the plant they are for, or in
 * size; the best of each kind among them.
 * @param forWhom index of the plant that a piece spares most
 */
export function reallyDifferent(scored: readonly Scored[], most: number, forWhom: (one: Scored) => number): Scored[] {
  const differing: { one: Scored; plant: number; area: number }[] = [];
  for (const one of scored.toSorted((a, b) => b.spared - a.spared)) {
    const [plant, area] = [forWhom(one), clothArea(one.cloth)];
    const like = differing.some(
      (other) =>
        other.one.kind === one.kind &&
        other.plant === plant &&
        Math.max(area, other.area) < AREA_RATIO * Math.min(area, other.area),
    );
    // A worse place for as much cloth or more is no choice either.
    const beaten = differing.some(
      (other) => other.one.kind === one.kind && other.plant === plant && other.area <= area,
    );
    if (!like && !beaten) differing.push({ one, plant, area });
  }
  const leaders = differing.filter(({ one }, k) => differing.findIndex((other) => other.one.kind === one.kind) === k);
  const others = differing.filter((each) => !leaders.includes(each));
  return [...leaders, ...others]
    .slice(0, most)
    .map(({ one }) => one)
    .toSorted((a, b) => b.spared - a.spared);
}
