/** Round steel tube: what its diameter and wall make of it. */

/**
 * Steel of the tubes here. Conduit has no guaranteed yield that we know of, so both limits are this project's own, low
 * on purpose.
 */
export const STEEL = {
  /** Young's modulus. [Pa] */
  modulus: 200e9,
  /** [kg/m³] */
  density: 7850,
  /** Bending stress not to be passed. [Pa] */
  allowable: 165e6,
  /** [Pa] */
  yield: 205e6,
} as const;

export interface TubeSection {
  /** Of steel, across the tube. [m²] */
  readonly area: number;
  /** Second moment of area, I. [m⁴] */
  readonly inertia: number;
  /** Elastic section modulus, S = 2I/D. [m³] */
  readonly modulus: number;
  /** Radius of gyration, √(I/A). [m] */
  readonly gyration: number;
  /** [kg/m] */
  readonly mass: number;
}

/**
 * @param outside Outside diameter D. [m]
 * @param wall Thickness of the wall, at most half of D. [m]
 */
export function sectionOf(outside: number, wall: number): TubeSection {
  const inside = outside - 2 * wall;
  const area = (Math.PI * (outside ** 2 - inside ** 2)) / 4;
  const inertia = (Math.PI * (outside ** 4 - inside ** 4)) / 64;
  return {
    area,
    inertia,
    modulus: (2 * inertia) / outside,
    gyration: Math.sqrt(inertia / area),
    mass: area * STEEL.density,
  };
}
