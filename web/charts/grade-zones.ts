import { gradeNumbersAt } from '../../engine/index.ts';
import type { GridSpec, Occupied, PlanPoint } from '../../engine/index.ts';
import { outlinesOf } from './contours.ts';

/** All ground of one grade. */
export interface GradeZone {
  /** 1 to 5. */
  readonly grade: number;
  /** Closed outlines; by the even-odd rule a ring inside another is a hole. */
  readonly rings: readonly (readonly PlanPoint[])[];
  /** Where its number stands: well inside, again and again over wide ground. */
  readonly numbersAt: readonly PlanPoint[];
}

/**
 * The ground of each grade that there is, lowest first.
 * @param grades 1 to 5 a cell, index = j·columns + i, NaN where there is none
 */
export function gradeZonesOf(
  grid: GridSpec,
  grades: Float64Array,
  occupied: readonly Occupied[],
): readonly GradeZone[] {
  return [1, 2, 3, 4, 5].flatMap((grade): GradeZone[] => {
    const within = grades.map((value) => (value === grade ? 1 : 0));
    if (!within.includes(1)) return [];
    const rings = outlinesOf(grid, within, 0.5);
    return [{ grade, rings, numbersAt: gradeNumbersAt(grid, Array.from(within), occupied) }];
  });
}
