import { headingOf, wrapBearing } from '../../plan/geometry/angles.ts';
import type { PlanPoint } from '../../plan/types.ts';

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
