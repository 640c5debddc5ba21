import { noNeedOf } from '../../words/no-need.ts';
import type { PlantStanding } from '../scoring/plant-states.ts';
import type { Uncounted } from '../types.ts';

/** For whose sake cloth is sought. */
export interface WhoCounts {
  readonly ids: ReadonlySet<string>;
  readonly uncounted: readonly Uncounted[];
  /** Counted because the person says so, though nothing speaks for cloth over them. */
  readonly allTheSame: readonly Uncounted[];
}

/**
 * @param asked ids that the person named; absent: all that may gain by shade
 * @param before how the plants stand in the yard as it is
 */
export function whoCounts(before: readonly PlantStanding[], asked: readonly string[] | undefined): WhoCounts {
  const judged = before.filter(({ worth, state }) => worth > 0 && (state.harm ?? 0) > 0);
  const withoutNeed = judged.flatMap(({ id, state }): Uncounted[] => {
    const because = noNeedOf(state.verdict);
    return because === null ? [] : [{ id, because }];
  });
  const counts = (id: string): boolean =>
    asked === undefined ? !withoutNeed.some((plant) => plant.id === id) : asked.includes(id);
  return {
    ids: new Set(before.filter(({ id }) => counts(id)).map(({ id }) => id)),
    uncounted: judged
      .filter(({ id }) => !counts(id))
      .map(
        ({ id }) =>
          (asked === undefined && withoutNeed.find((plant) => plant.id === id)) || { id, because: 'not asked for' },
      ),
    allTheSame: withoutNeed.filter(({ id }) => counts(id)),
  };
}
