import { headingOf } from '../../plan/geometry/angles.ts';
import type { PlanPoint } from '../../plan/types.ts';

export { compassWord as bearingWord } from '../../plan/words/compass-word.ts';

/** A bearing brought to 0 ≤ bearing < 360. [°] */
export function wrapBearing(bearing: number): number {
  const wrapped = bearing % 360;
  return wrapped < 0 ? wrapped + 360 : wrapped + 0;
}

/** The short way from one bearing to another, clockwise positive, −180 < turn ≤ 180. [°] */
export function turnBetween(from: number, to: number): number {
  const turn = wrapBearing(to - from);
  return turn > 180 ? turn - 360 : turn;
}

/** Direction of a line on the plan, clockwise from the plan's +y. [°] 0 for a line without length. */
export function planDirectionOf(from: PlanPoint, to: PlanPoint): number {
  return wrapBearing(headingOf(from, to));
}

/**
 * Where on a sheet of paper a plan direction points: 'the top', 'the lower left'.
 * @param direction Clockwise from the plan's +y. [°]
 */
export function sheetWord(direction: number): string {
  const words = [
    'the top',
    'the upper right',
    'the right',
    'the lower right',
    'the bottom',
    'the lower left',
    'the left',
    'the upper left',
  ];
  return words[Math.round(wrapBearing(direction) / 45) % 8];
}
