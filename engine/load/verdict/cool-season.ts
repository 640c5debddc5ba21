/**
 * Crops of the cool months: sown so that they are picked before the heat or after it. University of Arizona and UC
 * Cooperative Extension vegetable calendars, from memory.
 */

import type { PlantRow } from '../../plan/types.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';

const COOL: readonly string[] = [
  'lettuce',
  'leafy',
  'spinach',
  'cilantro',
  'pea',
  'radish',
  'kale',
  'cabbage',
  'carrot',
];

export function isCoolCrop({ id }: Pick<PlantRow, 'id'>): boolean {
  return COOL.includes(id);
}

/** What costs less than any cloth over such crops. @param names what they go by */
export function sowCool(...names: readonly string[]): string {
  return `sow ${agreeingWith(...names).them} for the cool months instead`;
}
