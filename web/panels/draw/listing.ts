import { area, dayWords, formatArea, formatLength, stepsWords, isCloth } from '../../../engine/index.ts';
import type { Feature, KnownBy, Plan, Units } from '../../../engine/index.ts';
import { FIELDS } from '../../common/fields/feature-fields.ts';
import { KNOWN_BY_WORDS } from '../../common/fields/known-by.ts';
import { showNumber } from '../../common/fields/read-field.ts';

/** A heading of the list and what stands under it. */
export interface Group {
  readonly name: string;
  readonly features: readonly Feature[];
}

const GROUPS: readonly { readonly name: string; readonly holds: (feature: Feature) => boolean }[] = [
  { name: 'Walls', holds: ({ kind }) => kind === 'wall' },
  { name: 'Buildings', holds: ({ kind }) => kind === 'building' },
  { name: 'Trees and hedges', holds: ({ kind }) => kind === 'tree' || kind === 'hedge' },
  { name: 'Beds', holds: ({ kind }) => kind === 'bed' },
  { name: 'Plants', holds: (feature) => feature.kind === 'plant' && !feature.container },
  { name: 'Pots', holds: (feature) => feature.kind === 'plant' && feature.container === true },
  { name: 'Roofs and screens', holds: isCloth },
  { name: 'Keep clear', holds: ({ kind }) => kind === 'keepout' },
  { name: 'Ground', holds: ({ kind }) => kind === 'ground' },
  { name: 'Onlookers', holds: ({ kind }) => kind === 'eye' },
  { name: 'Readings', holds: ({ kind }) => kind === 'reading' },
];

/** Everything on the plan in the order the list shows it; kinds without things are left out. */
export function groupsOf(plan: Plan): readonly Group[] {
  return GROUPS.map(({ name, holds }) => ({ name, features: plan.features.filter(holds) })).filter(
    ({ features }) => features.length > 0,
  );
}

/** What of a feature throws or takes shade: "3.40 m high". Its other numbers stand where it is opened. */
export function sizeWords(feature: Feature, units: Units): string {
  const length = (metres: number): string => formatLength(metres, units);
  switch (feature.kind) {
    case 'keepout':
      return formatArea(area(feature.outline), units);
    case 'ground':
      return [`${formatArea(area(feature.outline), units)} of ${feature.surface}`, stepsWords(feature.steps ?? 0)]
        .filter(Boolean)
        .join(', ');
    case 'bed':
      return `${length(feature.plantHeight)} high`;
    case 'canopy':
      return `${length(feature.length)} × ${length(feature.width)} at ${length(feature.height)}`;
    case 'eye':
      return `eyes at ${length(feature.height)}`;
    case 'reading':
      return (
        `${dayWords(feature.when)}` +
        `${feature.leaf === undefined ? '' : `, leaf ${showNumber(FIELDS.reading[0], feature.leaf, units)}`}`
      );
    default:
      return `${length(feature.height)} high`;
  }
}

/** How the least known number of a feature is known; `null` when all of them are measured. */
export function leastKnown(feature: Feature): { readonly by: KnownBy; readonly words: string } | null {
  const rank: readonly KnownBy[] = ['guess', 'paced', 'picture', 'shadow', 'compass', 'catalogue'];
  const all = Object.values(feature.how ?? {}).map(({ by }) => by);
  const by = rank.find((each) => all.includes(each));
  return by ? { by, words: KNOWN_BY_WORDS[by] } : null;
}
