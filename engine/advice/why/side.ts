import type { PlantSide } from '../../load/types.ts';
import type { Side } from '../../plan/types.ts';
import { compassWord } from '../../plan/words/compass-word.ts';

const LETTERS: Readonly<Record<string, number>> = { n: 0, ne: 45, e: 90, se: 135, s: 180, sw: 225, w: 270, nw: 315 };

/** A side as people say it: `SW`, `south-west`, `225`, `top`, `all`, `unknown`. `null` when it cannot be read. */
export function parseSide(text: string): Side | null {
  const typed = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]/g, '')
    .replace(/°$/, '');
  if (typed === 'top' || typed === 'all' || typed === 'unknown') return typed;
  const letters = typed
    .replaceAll('north', 'n')
    .replaceAll('south', 's')
    .replaceAll('east', 'e')
    .replaceAll('west', 'w');
  if (Object.hasOwn(LETTERS, letters)) return LETTERS[letters];
  const bearing = Number(text.trim().replace(/°$/, ''));
  return typed !== '' && bearing >= 0 && bearing <= 360 ? bearing % 360 : null;
}

/** "south-west side", "top". */
export function sideWords(side: PlantSide): string {
  return side === 'top' ? 'top' : `${compassWord(side)} side`;
}

/** The nearest of the eight bearings at which plants are judged. [°] */
export function nearestOfEight(bearing: number): number {
  return (Math.round(bearing / 45) * 45) % 360;
}
