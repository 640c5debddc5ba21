import type { Knowledge, KnownBy } from '../../../engine/index.ts';

/** How far a number may be off when nobody says: 2 cm by tape, 5 % by shadow or paces, 20 % guessed. */
export function usualDoubt(by: KnownBy, value: number): number {
  const share = by === 'guess' ? 0.2 : 0.05;
  return by === 'tape' ? 0.02 : Math.round(Math.abs(value) * share * 1000) / 1000;
}

export function guessed(value: number): Knowledge {
  return { by: 'guess', pm: usualDoubt('guess', value) };
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
