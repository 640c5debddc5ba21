/** Things that stand in the yard of several tests of advice, where no test says otherwise. */

import type { Building, Plant } from '../../../engine/plan/types.ts';

export const LEMON: Plant = {
  id: 'lemon',
  kind: 'plant',
  name: 'Lemon',
  at: [6, 4],
  height: 1.5,
  spread: 1.1,
  plant: 'lemon',
};

export const POT: Plant = { ...LEMON, id: 'pot', spread: 1, container: true };

export const TOMATO: Plant = {
  id: 'tomato',
  kind: 'plant',
  name: 'Tomato',
  at: [9.5, 6],
  height: 1.1,
  spread: 0.6,
  plant: 'tomato',
};

/** Takes the afternoon sun off the ground beside it. */
export const TOWER: Building = {
  id: 'tower',
  kind: 'building',
  outline: [
    [0.5, 2],
    [2, 2],
    [2, 6],
    [0.5, 6],
  ],
  height: 4.5,
};
