import { area, distance, formatArea, formatLength } from '../../../engine/index.ts';
import type { Feature, KnownBy, Plan, Units } from '../../../engine/index.ts';
import { FIELDS, KNOWN_BY_WORDS, showNumber } from '../../common/fields.ts';
import type { ToolId } from '../../map/drawing/tools.ts';

/** A heading of the list, what stands under it, and the tools that add to it. */
export interface Group {
  readonly name: string;
  readonly adds: readonly ToolId[];
  readonly features: readonly Feature[];
}

const GROUPS: readonly {
  readonly name: string;
  readonly adds: readonly ToolId[];
  readonly holds: (feature: Feature) => boolean;
}[] = [
  { name: 'Walls and fences', adds: ['wall'], holds: ({ kind }) => kind === 'wall' },
  { name: 'Buildings', adds: ['building'], holds: ({ kind }) => kind === 'building' },
  { name: 'Trees and hedges', adds: ['tree', 'hedge'], holds: ({ kind }) => kind === 'tree' || kind === 'hedge' },
  { name: 'Beds', adds: ['bed'], holds: ({ kind }) => kind === 'bed' },
  { name: 'Plants in the ground', adds: ['plant'], holds: (feature) => feature.kind === 'plant' && !feature.container },
  { name: 'Pots', adds: ['pot'], holds: (feature) => feature.kind === 'plant' && feature.container === true },
  {
    name: 'Roofs and screens',
    adds: ['canopy', 'screen'],
    holds: ({ kind }) => kind === 'canopy' || kind === 'screen',
  },
  { name: 'Areas to keep clear', adds: ['keepout'], holds: ({ kind }) => kind === 'keepout' },
  { name: 'Ground', adds: ['ground'], holds: ({ kind }) => kind === 'ground' },
  { name: 'People who look in', adds: ['eye'], holds: ({ kind }) => kind === 'eye' },
  { name: 'Readings', adds: ['reading'], holds: ({ kind }) => kind === 'reading' },
];

/**
 * Everything on the plan in the order the list shows it; headings without things stay, since they hold the way to add
 * one.
 */
export function groupsOf(plan: Plan): readonly Group[] {
  return GROUPS.map(({ name, adds, holds }) => ({ name, adds, features: plan.features.filter(holds) }));
}

/** A feature's size in a few words: "8.50 m long, 1.80 m high". */
export function sizeWords(feature: Feature, units: Units): string {
  const length = (metres: number): string => formatLength(metres, units);
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'screen':
      return `${length(lengthOf(feature.path))} long, ${length(feature.height)} high`;
    case 'building':
      return `${formatArea(area(feature.outline), units)}, ${length(feature.height)} high`;
    case 'bed':
      return `${formatArea(area(feature.outline), units)}, plants ${length(feature.plantHeight)} high`;
    case 'keepout':
      return formatArea(area(feature.outline), units);
    case 'ground':
      return `${formatArea(area(feature.outline), units)} of ${feature.surface}`;
    case 'tree':
      return `${length(feature.height)} high, crown ${length(feature.crownWidth)} wide`;
    case 'plant':
      return `${length(feature.height)} high, ${length(feature.spread)} wide`;
    case 'canopy':
      return `${length(feature.length)} × ${length(feature.width)} at ${length(feature.height)}`;
    case 'eye':
      return `${feature.path.length > 1 ? 'a line of sight' : 'one place'}, eyes at ${length(feature.height)}`;
    case 'reading':
      return (
        `${feature.when.replace('T', ' ')}` +
        `${feature.leaf === undefined ? '' : `, leaf ${showNumber(FIELDS.reading[0], feature.leaf, units)}`}`
      );
  }
}

/** How the least known number of a feature is known; `null` when all of them are measured. */
export function leastKnown(feature: Feature): { readonly by: KnownBy; readonly words: string } | null {
  const rank: readonly KnownBy[] = ['guess', 'paced', 'picture', 'shadow', 'compass', 'catalogue'];
  const all = Object.values(feature.how ?? {}).map(({ by }) => by);
  const by = rank.find((each) => all.includes(each));
  return by ? { by, words: KNOWN_BY_WORDS[by] } : null;
}

function lengthOf(path: readonly (readonly [number, number])[]): number {
  return path.slice(1).reduce((sum, point, i) => sum + distance(path[i], point), 0);
}
