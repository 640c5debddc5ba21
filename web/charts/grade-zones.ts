import { contours } from 'd3-contour';
import { gradeNumbersAt } from '../../engine/index.ts';
import type { GridSpec, Occupied, PlanPoint } from '../../engine/index.ts';

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
  const trace = contours().size([grid.columns, grid.rows]);
  return [1, 2, 3, 4, 5].flatMap((grade): GradeZone[] => {
    const within = Array.from(grades, (value) => (value === grade ? 1 : 0));
    if (!within.includes(1)) return [];
    const rings = trace
      .contour(within, 0.5)
      .coordinates.flat()
      .map((ring) => ring.map(([u, v]): PlanPoint => [grid.x0 + u * grid.cell, grid.y0 + v * grid.cell]));
    return [{ grade, rings, numbersAt: gradeNumbersAt(grid, within, occupied) }];
  });
}
