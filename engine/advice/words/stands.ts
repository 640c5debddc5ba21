/**
 * How plants stand on the heatwave day after a change that was made for them. What is taken off their heat damage is of
 * the whole season and of all sides; a verdict is of one day and the sunniest side: it is always told as that, so that
 * a plant may keep little of its damage and burn on that day, or most of it and be saved by water.
 */

import type { Verdict } from '../../load/types.ts';
import { burnsByFruit } from '../../load/verdict/planted.ts';
import type { Plan } from '../../plan/types.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';

export interface Standing {
  readonly id: string;
  readonly before: Verdict | null;
  readonly after: Verdict | null;
}

/**
 * "On the heatwave day the fig will still burn where it is sunniest, even if watered; water decides for the lemon
 * pot."; "" where nothing is to be said. What is too dark is told with its light.
 */
export function heatwaveWords(plan: Plan, plants: readonly Standing[]): string {
  const who = (stands: (plant: Standing) => boolean): string =>
    listWords(plants.filter(stands).map(({ id }) => namedInside(plan, id)));
  const isFruit = ({ id }: Standing): boolean => burnsByFruit(plan, id);
  const told = [
    [
      who((each) => each.after === 'will burn' && each.before === 'will burn' && !isFruit(each)),
      'WHO will still burn where it is sunniest, even if watered',
    ],
    [
      who((each) => each.after === 'will burn' && each.before !== 'will burn' && !isFruit(each)),
      'WHO will burn where it is sunniest, even if watered',
    ],
    [
      who((each) => each.after === 'will burn' && each.before === 'will burn' && isFruit(each)),
      'the fruit of WHO will still burn where it is sunniest',
    ],
    [
      who((each) => each.after === 'will burn' && each.before !== 'will burn' && isFruit(each)),
      'the fruit of WHO will burn where it is sunniest',
    ],
    [who((each) => each.after === 'at risk' && !isFruit(each)), 'water decides for WHO'],
    // Water does not cool fruit.
    [who((each) => each.after === 'at risk' && isFruit(each)), 'the fruit of WHO may burn where it is sunniest'],
    [who(({ after }) => after !== null && isUnharmed(after)), 'WHO will come to no harm'],
  ].flatMap(([names, words]) => (names === '' ? [] : [words.replace('WHO', () => names)]));
  return told.length === 0 ? '' : `On the heatwave day ${told.join('; ')}.`;
}

function isUnharmed(verdict: Verdict): boolean {
  return verdict === 'fine' || verdict === 'fine once established' || verdict === 'no shade needed';
}
