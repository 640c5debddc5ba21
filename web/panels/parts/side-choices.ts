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
