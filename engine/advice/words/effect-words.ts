/** What a change does to whose heat damage: a number never stands without the plants that it is told of. */

import type { Plan } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namesInside } from '../../plan/words/names.ts';
import type { PlantEffect } from './served.ts';

/** "37 % less heat damage to the blueberry pot and 23 % less to the raspberries" */
export function lessWords(plan: Plan, plants: readonly PlantEffect[]): string {
  return alike(plants, (share, ids, first) => {
    const which = share < 0 ? 'more' : 'less';
    return `${formatShare(Math.abs(share))} ${which}${first ? ' heat damage' : ''} to ${namesInside(plan, ids)}`;
  });
}

/** "57 % of the heat damage off the lemon pot and 23 % off the raspberries" */
export function offWords(plan: Plan, plants: readonly PlantEffect[]): string {
  return alike(
    plants,
    (share, ids, first) => `${formatShare(share)}${first ? ' of the heat damage' : ''} off ${namesInside(plan, ids)}`,
  );
}

/** Plants of which the same is told are told together. */
function alike(
  plants: readonly PlantEffect[],
  told: (share: number, ids: readonly string[], first: boolean) => string,
): string {
  const groups = new Map<string, PlantEffect[]>();
  for (const plant of plants)
    groups.set(formatShare(plant.share), [...(groups.get(formatShare(plant.share)) ?? []), plant]);
  return listWords(
    [...groups.values()].map((group, k) =>
      told(
        group[0].share,
        group.map(({ id }) => id),
        k === 0,
      ),
    ),
  );
}
