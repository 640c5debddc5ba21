import type { Cloth } from '../../../plan/types.ts';
import type { Move } from './moves.ts';

/** What a cloth that is moved about is asked. */
export interface RefineJudge {
  /** What it spares; and no less than that, sooner told. [K·h/day] */
  spared(cloth: Cloth): number;
  sparedAtMost(cloth: Cloth): number;
  /** Whether it may stand there, by all rules. Asked before `spared` where it is quick, after it where it is dear. */
  mayStand(cloth: Cloth): boolean;
  mayWin(cloth: Cloth): boolean;
}

export interface Refined {
  readonly cloth: Cloth;
  /** [K·h/day] */
  readonly spared: number;
  /** Places tried between the steps of the lattice. */
  readonly tried: number;
}

/** Less than this share more is no reason to move. */
const WORTH_A_MOVE = 1e-4;
/** Places that one cloth is tried at, at most. */
const MOST_TRIES = 140;

/**
 * Moves a cloth about in ever smaller steps as long as that spares more: the best near by, which nobody proves. It
 * never ends worse than it began.
 */
export function refined(start: Cloth, moves: readonly Move[], judge: RefineJudge): Refined {
  let cloth = start;
  let spared = judge.spared(start);
  let tried = 0;
  const wins = (move: Move, by: number): boolean => {
    const next = tried < MOST_TRIES ? move.apply(cloth, by) : null;
    if (next === null || !judge.mayStand(next)) return false;
    tried++;
    const enough = spared * (1 + WORTH_A_MOVE);
    if (judge.sparedAtMost(next) <= enough) return false;
    const value = judge.spared(next);
    if (value <= enough || !judge.mayWin(next)) return false;
    [cloth, spared] = [next, value];
    return true;
  };
  const levels = Math.max(...moves.map(({ steps }) => steps.length));
  for (let level = 0; level < levels; level++) {
    let moved = true;
    while (moved && tried < MOST_TRIES) {
      moved = false;
      for (const move of moves) {
        const step = move.steps[Math.min(level, move.steps.length - 1)];
        const way = wins(move, step) ? step : wins(move, -step) ? -step : 0;
        if (way !== 0) moved = true;
        while (way !== 0 && wins(move, way));
      }
    }
  }
  return { cloth, spared, tried };
}
