import { defaultPm } from '../../../engine/index.ts';
import type { Knowledge, KnownBy } from '../../../engine/index.ts';
import type { FieldUnit } from './number-field.ts';

/** How a number in a box is known, and how far it may be off where nobody has said. */
export function knownAs(by: KnownBy, value: number, unit: FieldUnit): Knowledge {
  const pm = defaultPm(by, value, unit === 'percent' ? 'share' : unit === 'degrees' ? 'bearing' : 'length');
  return { by, pm: Math.round(pm * 1000) / 1000 };
}

export const KNOWN_BY_WORDS: Readonly<Record<KnownBy, string>> = {
  tape: 'measured',
  shadow: 'by its shadow',
  paced: 'paced',
  picture: 'from a picture',
  compass: 'by compass',
  guess: 'guessed',
  catalogue: 'from a table',
};
