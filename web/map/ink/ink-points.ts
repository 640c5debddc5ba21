import type { PlanPoint } from '../../../engine/index.ts';

/**
 * Ink for the plan as plain points: dots inside a crown, its leafy edge, threads along a cloth. Metres in, metres out;
 * the same shape always gets the same ink, wherever the paper lies.
 */

/** Dots a square metre of an opaque crown gets; a crown that lets half the light through gets half of them. */
const DOTS_PER_SQUARE_METRE = 44;
/** Turn from one dot to the next that never repeats: the golden angle. [rad] */
const GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

/**
 * Dots spread evenly over a crown, denser towards its rim where a drawn crown is dark, as many as it stops light.
 * At most `limit`, so that a great tree does not cost thousands.
 */
export function stipple(centre: PlanPoint, radius: number, openness: number, limit = 600): readonly PlanPoint[] {
  const wanted = Math.PI * radius * radius * DOTS_PER_SQUARE_METRE * (1 - openness);
  const count = Math.round(Math.min(limit * (1 - openness), wanted));
  return Array.from({ length: count }, (_, k): PlanPoint => {
    const share = (k + 0.5) / count;
    const distance = 0.93 * radius * share ** 0.42;
    const angle = k * GOLDEN_ANGLE;
    return [centre[0] + distance * Math.cos(angle), centre[1] + distance * Math.sin(angle)];
  });
}

/** A crown's edge as shallow leafy bows that touch its true circle from within. */
export function crownEdge(centre: PlanPoint, radius: number): readonly PlanPoint[] {
  const bows = Math.max(9, Math.round(radius * 8));
  const stepsPerBow = 6;
  const depth = Math.min(0.08, 0.06 * radius);
  return Array.from({ length: bows * stepsPerBow }, (_, k): PlanPoint => {
    const angle = (2 * Math.PI * k) / (bows * stepsPerBow);
    const r = radius - depth * (1 - Math.abs(Math.sin((Math.PI * k) / stepsPerBow)));
    return [centre[0] + r * Math.cos(angle), centre[1] + r * Math.sin(angle)];
  });
}

/**
 * Where a fence's posts or a wall's courses would be marked: points every `gap` along a path, its first point included.
 */
export function alongPath(
  path: readonly PlanPoint[],
  gap: number,
): readonly { readonly at: PlanPoint; readonly ux: number; readonly uy: number }[] {
  const marks: { at: PlanPoint; ux: number; uy: number }[] = [];
  let next = 0;
  let walked = 0;
  for (let i = 1; i < path.length; i += 1) {
    const a = path[i - 1];
    const b = path[i];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length === 0) continue;
    const ux = (b[0] - a[0]) / length;
    const uy = (b[1] - a[1]) / length;
    for (; next <= walked + length + 1e-9; next += gap) {
      const on = next - walked;
      marks.push({ at: [a[0] + ux * on, a[1] + uy * on], ux, uy });
    }
    walked += length;
  }
  return marks;
}
