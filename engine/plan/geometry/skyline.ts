/** What a skyline must have to say how the land lies between its points. */

/** Fewer say nothing of what lies between. */
export const LEAST_SKYLINE_POINTS = 3;
/** Over a wider stretch without a point nobody can say what stands there. [°] */
export const WIDEST_SKYLINE_GAP = 180;

/** The widest stretch without one of some bearings, all of 0 to 360. [°] 360 of a single one. */
export function widestGap(bearings: readonly number[]): number {
  const sorted = bearings.toSorted((a, b) => a - b);
  return Math.max(...sorted.map((bearing, k) => (sorted[k + 1] ?? sorted[0] + 360) - bearing));
}
