/**
 * How thirsty a plant is beside short grass. Crop coefficients of mid-season after FAO Irrigation and Drainage Paper
 * 56, Table 12 (Allen et al. 1998), from memory. What stands under `ESTIMATED` is not in that table: woody herbs and
 * shrubs of dry lands after the coefficients that landscapers water by (low 0.2 to 0.5, moderate 0.5 to 0.8; from
 * memory), the rest likened to its kin in the table.
 */

import { clamp } from '../../../plan/numbers/clamp.ts';
import type { PlantRow } from '../../../plan/types.ts';

const TABLE_12: Readonly<Record<string, readonly string[]>> = {
  0.65: ['orange', 'lemon', 'lime', 'mandarin', 'grapefruit', 'kumquat', 'citrus'],
  0.7: ['olive'],
  0.85: ['avocado', 'avocado-young', 'grape', 'strawberry'],
  0.9: ['peach', 'apricot', 'plum', 'almond', 'radish'],
  0.95: ['apple', 'pear', 'cherry', 'date', 'squash', 'asparagus'],
  1: ['cucumber', 'pumpkin', 'watermelon', 'lettuce', 'spinach', 'artichoke'],
  1.05: [
    'kiwifruit',
    'blueberry',
    'raspberry',
    'blackberry',
    'pepper',
    'chile',
    'eggplant',
    'melon',
    'bean',
    'cowpea',
    'cabbage',
    'carrot',
    'onion',
  ],
  1.1: ['walnut'],
  1.15: ['tomato', 'cherry-tomato', 'potato', 'sweetpotato', 'corn', 'pea', 'mint'],
  1.2: ['banana'],
};

const ESTIMATED: Readonly<Record<string, readonly string[]>> = {
  0.4: ['dragon'],
  0.5: ['rosemary', 'lavender', 'thyme', 'bougainvillea', 'oleander', 'lantana', 'salvia', 'geranium'],
  0.7: ['fig', 'pomegranate', 'jujube'],
  0.8: ['hydrangea', 'camellia', 'azalea', 'gardenia', 'hibiscus', 'fern'],
  1.1: ['sunflower'],
};

/** What is named in neither, by its group. */
const BY_GROUP: Readonly<Record<string, number>> = {
  'fruit tree': 0.9,
  citrus: 0.65,
  'tropical fruit': 0.85,
  'vine fruit': 0.85,
  berry: 1.05,
  vegetable: 1.05,
  herb: 1,
  ornamental: 0.7,
  succulent: 0.4,
};
/** Of a plant nobody knows anything about. */
const ANY = 1;

const KNOWN: ReadonlyMap<string, number> = new Map(
  [...Object.entries(TABLE_12), ...Object.entries(ESTIMATED)].flatMap(([value, ids]) =>
    ids.map((id) => [id, Number(value)] as const),
  ),
);

/** The coefficient as printed: for air of 45 % at the warmest and a wind of 2 m/s. */
export function tabledCoefficient(row: Pick<PlantRow, 'id' | 'group'> | undefined): number {
  return (row && (KNOWN.get(row.id) ?? BY_GROUP[row.group ?? ''])) ?? ANY;
}

/**
 * A printed mid-season coefficient in another climate, eq. 62.
 * @param wind 2 m above the ground, 1 to 6 @param driest least relative humidity of the day, 20 to 80 [%]
 * @param height of the plant, 0.1 to 10 [m]
 */
export function adjustedCoefficient(printed: number, wind: number, driest: number, height: number): number {
  const [u, rh, h] = [clamp(wind, 1, 6), clamp(driest, 20, 80), clamp(height, 0.1, 10)];
  return printed + (0.04 * (u - 2) - 0.004 * (rh - 45)) * (h / 3) ** 0.3;
}
