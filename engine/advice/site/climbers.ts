/** Climbers for a living screen: how dense they are by years, when in leaf, what they drink. */

import { formatDistance } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';

export interface Climber {
  readonly id: 'annual' | 'vine' | 'evergreen';
  readonly name: string;
  /** Share of the light that its leaves stop in its first, second, third and fourth summer. */
  readonly stops: readonly [number, number, number, number];
  readonly leaves: string;
  /** Litres a week for each plant in a hot summer without rain. */
  readonly water: string;
}

/**
 * Grown leaves: shares of light let through of 0.15 (Virginia creeper), 0.18 (honeysuckle), 0.20 (ivy) and 0.41
 * (clematis), Pérez et al. (2011), Applied Energy 88:4854; one layer of Virginia creeper 0.43, five 0.14, Ip, Lam and
 * Miller (2010), Building and Environment 45:81–88 (both from memory). The years before are this project's own guess,
 * after what the University of Minnesota Extension says (H447, "Vines: growing a living screen"): little in the first
 * year, while roots establish, vigorous afterwards; annual climbers cover within the summer. Water: common practice, no
 * source.
 */
export const CLIMBERS: readonly Climber[] = [
  {
    id: 'annual',
    name: 'Annual climber (beans, morning glory)',
    stops: [0.4, 0.4, 0.4, 0.4],
    leaves: 'sown anew each spring, in leaf about eight weeks later until autumn',
    water: '10 to 15',
  },
  {
    id: 'vine',
    name: 'Grape vine or Virginia creeper',
    stops: [0.1, 0.35, 0.6, 0.75],
    leaves: 'in leaf from spring to autumn, bare in winter: the winter sun comes through',
    water: '10 to 20 in its first two summers, later less often and deeply',
  },
  {
    id: 'evergreen',
    name: 'Star jasmine or honeysuckle',
    stops: [0.1, 0.25, 0.45, 0.75],
    leaves: 'in leaf all year: it takes the winter sun too; frost-tender kinds only where winters are mild',
    water: '10 to 20 in its first two summers, later less often and deeply',
  },
];

/** Trellis with posts as for a fence, a metre of it, in euros or dollars alike, from memory. */
export const TRELLIS_A_METRE = { from: 60, to: 150 } as const;
/** A pot of climber, and how far apart they are planted (common practice, no source). [m] */
export const CLIMBER = { from: 8, to: 25, apart: 1.2 } as const;
/** Of leaves on a trellis. [m] */
export const DEEP = 0.3;

/** A young tree as it is sold, and the crown that it has after years. [m] */
const TREE = { tall: 2, crown: { from: 3, to: 4 } } as const;

export function treeInstead(units: Units): string {
  const length = (metres: number): string => (units === 'metric' ? `${metres} m` : formatDistance(metres, units));
  return (
    `A tree takes longer: bought ${length(TREE.tall)} tall it shades little for 3 to 5 years, and a crown ` +
    `${length(TREE.crown.from)} to ${length(TREE.crown.to)} wide comes after 6 to 10 (from memory; ask a nursery ` +
    `near you). Draw it as it will be then, and see.`
  );
}
/** Where dense leaves spare less than thin ones: what shelters a yard from the wind leaves it hotter. */
export const STILL_AIR = 'Grown dense it keeps the wind off too, and leaves in still air get hotter: keep it thinned.';
export const TRELLIS_CARE =
  'Leaves cannot come off before a storm as cloth does: a grown trellis catches the wind like a solid fence. Have ' +
  'its posts set as for one, by somebody who builds fences, and ask what your rules allow.';
/** On paving nothing grows by itself; sizes are common practice, no source. */
export function planterWords(units: Units): string {
  const [hole, planter] = units === 'metric' ? ['0.5 m', '50 L'] : ['20 in', '13 gal'];
  return (
    `It would stand on paving: have slabs lifted and a hole of soil ${hole} deep and wide made for each plant, or ` +
    `give each a planter of ${planter} or more, which wants water every day in summer and stays smaller. A full ` +
    `one weighs as much as a person: on a balcony or a roof ask first what the floor bears.`
  );
}

export const LIVING_SOURCES =
  'Grown leaves: Pérez et al. (2011), Applied Energy 88:4854; Ip et al. (2010), Building and Environment 45:81 ' +
  '(from memory). Years before: our guess after University of Minnesota Extension, “Vines: growing a living ' +
  'screen”. Water: common practice. Prices: rough, from memory.';
