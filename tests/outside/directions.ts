const RAD = Math.PI / 180;

export interface Direction {
  readonly azimuth: number;
  readonly altitude: number;
}

/** Angle between two directions. [°] Well-behaved where they all but coincide, and at the zenith. */
export function separation(a: Direction, b: Direction): number {
  const [x, y, z] = vector(a).map((component, axis) => component - vector(b)[axis]);
  return (2 * Math.asin(Math.min(1, Math.hypot(x, y, z) / 2))) / RAD;
}

/** Difference of two azimuths, −180 to 180. [°] */
export function azimuthDifference(a: number, b: number): number {
  return ((((a - b + 180) % 360) + 360) % 360) - 180;
}

function vector({ azimuth, altitude }: Direction): [number, number, number] {
  const flat = Math.cos(altitude * RAD);
  return [Math.sin(azimuth * RAD) * flat, Math.cos(azimuth * RAD) * flat, Math.sin(altitude * RAD)];
}
