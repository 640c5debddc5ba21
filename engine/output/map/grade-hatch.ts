/**
 * One hatch in five densities, a grade each, for paper and for eyes that want it: how far apart its lines are, and how
 * thick. [px at 96 dpi]
 */
export const GRADE_HATCH = [
  { gap: 18, stroke: 0.8 },
  { gap: 11, stroke: 0.8 },
  { gap: 7, stroke: 0.9 },
  { gap: 4.5, stroke: 1.1 },
  { gap: 3, stroke: 1.5 },
] as const;
