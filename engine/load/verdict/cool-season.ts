/**
 * Crops of the cool months: sown so that they are picked before the heat or after it. University of Arizona and UC
 * Cooperative Extension vegetable calendars, from memory.
 */

import type { Plan, PlantRow } from '../../plan/types.ts';
import { plantFeatures, rowOf } from './planted.ts';

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

/** Whether some plants are nothing but such crops. @param ids of plants, beds or planted trees */
export function areCoolCrops(plan: Plan, ids: readonly string[]): boolean {
  const rows = plantFeatures(plan).flatMap((plant) => (ids.includes(plant.id) ? [rowOf(plan, plant)] : []));
  return rows.length > 0 && rows.every((row) => row !== undefined && isCoolCrop(row));
}

/** What costs less than any cloth over such crops. @param them "the lettuce", "it" */
export function sowCool(them: string): string {
  return `sow ${them} for the cool months instead`;
}
