import type { Stage } from '../state/view.ts';

/** Each stage's name, its short one for a phone's tab, and what its card is for. */
export const STAGE_NAMES: Readonly<
  Record<Stage, { readonly full: string; readonly short: string; readonly about: string }>
> = {
  draw: {
    full: 'Draw the yard',
    short: 'Draw',
    about: 'Walls, trees, beds and pots, to scale, with how each number is known.',
  },
  heat: { full: 'Find the heat', short: 'Heat', about: 'Where and when the sun does harm, plant by plant.' },
  place: { full: 'Place a pot', short: 'Pots', about: 'Where a pot stands best, summer and winter.' },
  try: {
    full: 'Try a canopy',
    short: 'Try',
    about: 'Cloth on the plan before it is bought: what it spares, and whom.',
  },
  build: { full: 'Build it', short: 'Build', about: 'The sheet to build from: pieces, cuts, posts, cautions.' },
  year: {
    full: 'Through the year',
    short: 'Year',
    about: 'When to put up and take down, what to note, and whether it worked.',
  },
};
