/**
 * How plants stand on the heatwave day after a change that was made for them. What is taken off their heat damage is of
 * the whole season and of all sides; a verdict is of one day and the sunniest side: it is always told as that, so that
 * a plant may keep little of its damage and burn on that day, or most of it and be saved by water.
 */
import { listWords } from '../../plan/list-words.ts';
import { namedInside } from '../../plan/names.ts';
import type { Verdict } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';

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
  const [still, burns, water, unharmed] = [
    who(({ before, after }) => after === 'will burn' && before === 'will burn'),
    who(({ before, after }) => after === 'will burn' && before !== 'will burn'),
    who(({ after }) => after === 'at risk'),
    who(({ after }) => after !== null && isUnharmed(after)),
  ];
  const told = [
    ...(still === '' ? [] : [`${still} will still burn where it is sunniest, even if watered`]),
    ...(burns === '' ? [] : [`${burns} will burn where it is sunniest, even if watered`]),
    ...(water === '' ? [] : [`water decides for ${water}`]),
    ...(unharmed === '' ? [] : [`${unharmed} will come to no harm`]),
  ];
  return told.length === 0 ? '' : `On the heatwave day ${told.join('; ')}.`;
}

function isUnharmed(verdict: Verdict): boolean {
  return verdict === 'fine' || verdict === 'fine once established' || verdict === 'no shade needed';
}
