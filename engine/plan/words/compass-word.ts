import { wrapBearing } from '../geometry/angles.ts';

const SIDES_OF_EIGHT = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;

/** The nearest of eight compass words to a true bearing. [°] */
export function compassWord(bearing: number): string {
  return SIDES_OF_EIGHT[Math.round(wrapBearing(bearing) / 45) % 8];
}
