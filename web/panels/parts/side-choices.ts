import type { Side } from '../../../engine/index.ts';

/** The eight sides of a plant, and what can be said instead. */
export const SIDE_CHOICES = {
  NW: 'north-west',
  N: 'north',
  NE: 'north-east',
  W: 'west',
  top: 'the top',
  E: 'east',
  SW: 'south-west',
  S: 'south',
  SE: 'south-east',
  all: 'all round',
  unknown: "I don't know",
} as const;

export const PART_CHOICES = {
  leaf: 'Leaves',
  fruit: 'Fruit',
  flower: 'Flowers',
  bark: 'Bark',
  pot: 'All of it wilted in its pot',
} as const;

/** How bad, as it is counted up afterwards. Common practice, no source. */
export const AMOUNT_CHOICES = {
  '1': 'a few leaf tips',
  '2': 'up to a quarter',
  '3': 'up to half',
  '4': 'more than half',
  '5': 'dead',
} as const;

type SideKey = keyof typeof SIDE_CHOICES;

const ROUND = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

/** The choice that says a side; `unknown` where none is noted. */
export function sideKey(side: Side | undefined): SideKey {
  if (side === 'top' || side === 'all') return side;
  return typeof side === 'number' ? ROUND[Math.round(side / 45) % 8] : 'unknown';
}

export function sideOfKey(key: SideKey): Side {
  const place = ROUND.findIndex((each) => each === key);
  if (key === 'top' || key === 'all') return key;
  return place < 0 ? 'unknown' : 45 * place;
}
