import type { CrownShape } from '../../plan/types.ts';

/**
 * A tree's crown as the plan has it, seen from the side: r half its width, c its foot above the ground, H its top. [m]
 *
 *      .-'''-.   H       sun at altitude a, t = tan a
 *     (   r   )          D: from the trunk to the far tip of the shadow
 *      '-...-'   c
 *         |
 *     ====|============·D
 */
export interface Crown {
  readonly shape: CrownShape;
  readonly width: number;
  readonly base: number;
}

/**
 * Distance from the trunk to the far tip of the shadow of a crown whose top is at `height`. [m]
 * @param tangent tan of the sun's altitude, above 0.
 */
export function shadowTip(crown: Crown, height: number, tangent: number): number {
  const r = crown.width / 2;
  switch (crown.shape) {
    case 'round':
      // The ray that touches the ellipsoid: D = Z/t + √(r² + b²/t²), Z its centre, b half its height.
      return (height + crown.base) / 2 / tangent + Math.hypot(r, (height - crown.base) / 2 / tangent);
    case 'cone':
      return Math.max(height / tangent, rimTip(crown, tangent));
    case 'column':
      return height / tangent + r;
  }
}

/** How far the lowest and widest ring of a crown throws its shadow: whatever the height, no tip is nearer. [m] */
export function rimTip(crown: Crown, tangent: number): number {
  return crown.base / tangent + crown.width / 2;
}

/**
 * The top of a crown from its shadow's tip: {@link shadowTip} solved for the height.
 * @returns NaN where no height above the crown's foot throws that tip, or, for a cone, where its rim threw it. [m]
 */
export function topFromTip(crown: Crown, tip: number, tangent: number): number {
  if (!(tip > rimTip(crown, tangent))) return Number.NaN;
  const r = crown.width / 2;
  switch (crown.shape) {
    case 'round':
      // Squared once the terms in H² cancel, so no root is left: H = D·t − (r·t)²/(D·t − c).
      return tip * tangent - (r * tangent) ** 2 / (tip * tangent - crown.base);
    case 'cone':
      return tip * tangent;
    case 'column':
      return (tip - r) * tangent;
  }
}
