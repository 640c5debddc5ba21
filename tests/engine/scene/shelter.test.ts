import { describe, expect, test } from 'vitest';
import type { Feature, Plan, PlanPoint } from '../../../engine/plan/types.ts';
import { shelterOf } from '../../../engine/scene/shelter.ts';
import { wall } from '../../parts/drawn.ts';
import { emptyPlan } from '../cast/random-plans.ts';

// The property's box is 18 × 14 m about the origin.
const fence = (path: readonly PlanPoint[], height = 2, openness = 0): Feature =>
  wall(path.join(), path, { height, openness });
const west = fence([
  [-5, -60],
  [-5, 60],
]);
const round = fence([
  [-5, -5],
  [5, -5],
  [5, 5],
  [-5, 5],
  [-5, -5],
]);
const guess = (...features: readonly Feature[]) => shelterOf(emptyPlan(features)).shelter;

describe('how sheltered a yard is', () => {
  test('by its plan, whatever is drawn', () => {
    const plan = emptyPlan([round]);
    const said: Plan = { ...plan, site: { ...plan.site, shelter: 'open' } };
    expect(shelterOf(said)).toEqual({ shelter: 'open', guessed: false });
  });

  test('else guessed: nothing round it is open, a wall on one side sheltered, four walls a court', () => {
    expect(shelterOf(emptyPlan())).toEqual({ shelter: 'open', guessed: true });
    // A wall 5 m off meets 13 of 36 bearings within 10 m: those within 60° of square.
    expect(guess(west)).toBe('sheltered');
    expect(guess(round)).toBe('court');
  });

  test('low walls, walls that the wind passes, and what stands farther off than 10 m do not count', () => {
    expect(guess({ ...round, height: 1.4 } as Feature)).toBe('open');
    expect(guess({ ...round, openness: 0.4 } as Feature)).toBe('open');
    const far = fence([
      [-8, -60],
      [-8, 60],
    ]);
    // 8 m off it meets the 7 bearings within 37° of square.
    expect(guess(far)).toBe('open');
  });

  test('a house over the middle is a court; a hedge counts like a wall', () => {
    const house: Feature = {
      id: 'house',
      kind: 'building',
      outline: [
        [-2, -2],
        [2, -2],
        [2, 2],
        [-2, 2],
      ],
      height: 3,
    };
    expect(guess(house)).toBe('court');
    expect(guess({ ...round, kind: 'hedge', openness: undefined } as Feature)).toBe('court');
  });
});
