import type { Canopy, Screen } from '../../plan/types.ts';
import type { LaidOut } from './lay-out.ts';
import { bestTogether } from './scoring/several.ts';
import { togetherScore } from './scoring/together.ts';
import type { Contest, Scored } from './search/contest.ts';
import { reallyDifferent } from './search/different.ts';
import type { ClothKind } from './types.ts';

/** Cloth to be shown, and what it spares on the search's points. [K·h/day] */
export interface Chosen {
  readonly kind: ClothKind | 'several';
  readonly cloth: readonly (Canopy | Screen)[];
  readonly spared: number;
}

/** Of what the search found best, what to show: pieces that really differ, or combinations of so many as are asked. */
export function choose({ targets, pairs, leaves, request, judges }: LaidOut, { bests }: Contest): Chosen[] {
  const singles = bests.filter((scored): scored is Scored => scored !== null).sort((a, b) => b.spared - a.spared);
  const { count, show } = request;
  const score = togetherScore(targets, pairs, leaves);
  if (count === 1) {
    const forWhom = new Map(
      singles.map((one) => [
        one,
        score([one.cloth]).reduce((most, each, plant, all) => (each > all[most] ? plant : most), 0),
      ]),
    );
    return reallyDifferent(singles, show, (one) => forWhom.get(one) ?? 0).map(({ kind, cloth, spared }) => ({
      kind,
      cloth: [cloth],
      spared,
    }));
  }
  const total = (cloth: readonly (Canopy | Screen)[]) => score(cloth).reduce((sum, each) => sum + each, 0);
  const allowed = (cloth: readonly (Canopy | Screen)[]) => judges.lateObjections(cloth).length === 0;
  return bestTogether(singles, count, total, allowed, show).map(({ cloth, spared }) => ({
    kind: 'several',
    cloth,
    spared,
  }));
}
