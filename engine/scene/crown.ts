import type { Crown } from './solids.ts';

/** Length inside a crown of the beam that arrives at x, y, z from the unit vector dx, dy, dz (dz above 0). [m] */
export function lengthInCrown(
  crown: Crown,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const from = Math.max(0, (crown.base - z) / dz);
  const to = (crown.top - z) / dz;
  if (to <= from) return 0;
  const px = x - crown.x;
  const py = y - crown.y;
  switch (crown.kind) {
    case 'round':
      return inEllipsoid(crown, px, py, z, dx, dy, dz, from, to);
    case 'cone':
      return inCone(crown, px, py, z, dx, dy, dz, from, to);
    case 'column':
      return inCylinder(crown.radius, px, py, dx, dy, from, to);
  }
}

/**
 * Stretch of the beam inside |(x/a, y/a, z/h)| < 1. The discriminant is A − |X × D|², which loses no digits far away.
 */
function inEllipsoid(
  crown: Crown,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
  from: number,
  to: number,
): number {
  const a = crown.radius;
  const h = (crown.top - crown.base) / 2;
  const px = x / a;
  const py = y / a;
  const pz = (z - (crown.top + crown.base) / 2) / h;
  const ux = dx / a;
  const uy = dy / a;
  const uz = dz / h;
  const squared = ux * ux + uy * uy + uz * uz;
  const cx = py * uz - pz * uy;
  const cy = pz * ux - px * uz;
  const cz = px * uy - py * ux;
  const discriminant = squared - (cx * cx + cy * cy + cz * cz);
  if (discriminant <= 0) return 0;
  const middle = -(px * ux + py * uy + pz * uz) / squared;
  const half = Math.sqrt(discriminant) / squared;
  return Math.max(0, Math.min(to, middle + half) - Math.max(from, middle - half));
}

/** Stretch of the beam inside ρ < a, `from` to `to`. */
function inCylinder(a: number, x: number, y: number, dx: number, dy: number, from: number, to: number): number {
  const squared = dx * dx + dy * dy;
  const cross = x * dy - y * dx;
  const discriminant = a * a * squared - cross * cross;
  if (discriminant <= 0) return squared === 0 && x * x + y * y < a * a ? Math.max(0, to - from) : 0;
  const middle = -(x * dx + y * dy) / squared;
  const half = Math.sqrt(discriminant) / squared;
  return Math.max(0, Math.min(to, middle + half) - Math.max(from, middle - half));
}

/** Stretch of the beam inside ρ < k·(top − z), below the apex: A·t² + 2B·t + C < 0. */
function inCone(
  crown: Crown,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
  from: number,
  to: number,
): number {
  const k = crown.radius / (crown.top - crown.base);
  const fall = k * dz;
  const room = k * (crown.top - z);
  const A = dx * dx + dy * dy - fall * fall;
  const B = x * dx + y * dy + fall * room;
  const C = x * x + y * y - room * room;
  // B² − AC without the cancellation of its large terms.
  const cross = x * dy - y * dx;
  const px = x * fall + dx * room;
  const py = y * fall + dy * room;
  const discriminant = px * px + py * py - cross * cross;
  if (discriminant <= 0) return 0;
  const root = Math.sqrt(discriminant);
  // The two roots, each by the form that does not subtract near-equals.
  const q = B >= 0 ? -(B + root) : root - B;
  const one = q / A;
  const other = C / q;
  const low = Math.min(one, other);
  const high = Math.max(one, other);
  // Shallower than the flank: inside between the roots. Steeper (or as steep): inside below the lower root.
  if (A > 0) return Math.max(0, Math.min(to, high) - Math.max(from, low));
  const leaves = A < 0 ? low : other;
  return Math.max(0, Math.min(to, leaves) - from);
}
