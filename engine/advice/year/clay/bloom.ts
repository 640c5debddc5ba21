/** When plants flower: common practice, no source; a kind's own months in the north, half a year on in the south. */

import type { PlantRow } from '../../../plan/types.ts';
import { isInSpan, type Span } from '../growth/months.ts';

const SUMMER: Span = [5, 9];
const NEVER = null;

const BY_ID: Readonly<Record<string, Span | null>> = {
  apple: [4, 5],
  pear: [3, 4],
  peach: [2, 4],
  apricot: [2, 3],
  plum: [3, 4],
  cherry: [3, 4],
  almond: [1, 3],
  walnut: [4, 5],
  fig: NEVER,
  mulberry: [4, 4],
  pomegranate: [5, 6],
  olive: [4, 6],
  date: [3, 4],
  loquat: [10, 1],
  persimmon: [4, 5],
  jujube: [5, 7],
  mango: [1, 4],
  'mango-young': [1, 4],
  avocado: [3, 5],
  'avocado-young': [3, 5],
  lychee: [2, 4],
  guava: [4, 6],
  banana: NEVER,
  kiwifruit: [5, 6],
  grape: [5, 6],
  blueberry: [3, 5],
  raspberry: [5, 6],
  blackberry: [5, 6],
  strawberry: [3, 6],
  corn: NEVER,
  sweetpotato: NEVER,
  potato: [5, 6],
  carrot: NEVER,
  radish: NEVER,
  onion: NEVER,
  asparagus: NEVER,
  artichoke: [5, 7],
  camellia: [11, 4],
  azalea: [3, 5],
  gardenia: [5, 8],
  jmaple: NEVER,
  fern: NEVER,
};

/** What is not named, by its group: fruiting vegetables and what is grown for its flowers flower while it is warm. */
const BY_GROUP: Readonly<Record<string, Span | null>> = {
  citrus: [3, 5],
  'fruit tree': [3, 5],
  'tropical fruit': SUMMER,
  'vine fruit': [5, 6],
  berry: [4, 6],
  vegetable: SUMMER,
  herb: SUMMER,
  ornamental: SUMMER,
  succulent: NEVER,
  any: NEVER,
};

/** @param month 1 to 12 @param latitude [°] */
export function isInFlower(row: Pick<PlantRow, 'id' | 'group'>, month: number, latitude: number): boolean {
  const span = row.id in BY_ID ? BY_ID[row.id] : BY_GROUP[row.group ?? ''];
  if (span === NEVER) return false;
  return isInSpan(span ?? SUMMER, month, latitude);
}
