/** What grew since last year: asked once a new year has begun, with last year's numbers to change. */

import type { Feature, Plan } from '../../../plan/types.ts';
import { formatLength } from '../../../plan/units/shown.ts';
import { unitsOf } from '../../../plan/units/units.ts';
import { agreeingWith } from '../../../plan/words/agreement.ts';
import { namedInside } from '../../../plan/words/names.ts';

/** A size that a year may have changed. */
export interface GrownQuestion {
  readonly feature: string;
  /** Key of the feature that the answer replaces. */
  readonly key: 'height' | 'spread' | 'crownWidth' | 'crownBase' | 'plantHeight' | 'thickness';
  /** Last year's, and what the plan says now. [m] */
  readonly last: number;
  readonly now: number;
  readonly question: string;
}

/** @param are as it agrees with the name that follows */
type Asked = readonly [key: GrownQuestion['key'], words: (are: string) => string];

const ASKED: Readonly<Partial<Record<Feature['kind'], readonly Asked[]>>> = {
  tree: [
    ['height', (are) => `How tall ${are}`],
    ['crownWidth', () => 'How wide is the crown of'],
    ['crownBase', () => 'How high is the lowest leaf of'],
  ],
  hedge: [
    ['height', (are) => `How tall ${are}`],
    ['thickness', () => 'How thick is'],
  ],
  plant: [
    ['height', (are) => `How tall ${are}`],
    ['spread', (are) => `How wide ${are}`],
  ],
  bed: [['plantHeight', () => 'How tall do the plants stand in']],
};

/**
 * One question for each size of what lives in the yard, in the plan's order; none before a first year is frozen, none
 * for what is new.
 */
export function grownQuestions(plan: Plan): GrownQuestion[] {
  const before = plan.past?.at(-1)?.plan;
  if (before === undefined) return [];
  const units = unitsOf(plan);
  return plan.features.flatMap((feature) => {
    const name = namedInside(plan, feature.id);
    const { are } = agreeingWith(name);
    return (ASKED[feature.kind] ?? []).flatMap(([key, words]): GrownQuestion[] => {
      const old = before.features.find(({ id, kind }) => id === feature.id && kind === feature.kind);
      const last = sizeOf(old, key);
      const now = sizeOf(feature, key);
      if (last === null || now === null) return [];
      return [
        {
          feature: feature.id,
          key,
          last,
          now,
          question: `${words(are)} ${name} now? Last year: ${formatLength(last, units)}.`,
        },
      ];
    });
  });
}

function sizeOf(feature: Feature | undefined, key: GrownQuestion['key']): number | null {
  const value: unknown = feature && Object.entries(feature).find(([name]) => name === key)?.[1];
  return typeof value === 'number' ? value : null;
}
