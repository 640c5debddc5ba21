import type { Plant } from '../../../../engine/index.ts';

/** Who can carry a pot. */
export const MOVES: Readonly<Record<NonNullable<Plant['move']>, string>> = {
  carry: 'I can carry it',
  trolley: 'with a trolley',
  never: 'never',
};
