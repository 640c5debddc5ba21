/**
 * Rails and posts as beams and columns. Set-screw sockets are not rigid, so rails are simply supported.
 * Beams after Young, Budynas & Sadegh, Roark's Formulas for Stress and Strain, 8th ed. 2012, Table 8.1;
 * columns after AISC 360-16 §E3 (both from memory).
 */

import { STEEL } from './tube.ts';
import type { TubeSection } from './tube.ts';

export interface BeamState {
  /** At mid-span. [m] */
  readonly sag: number;
  /** Largest bending stress. [Pa] */
  readonly stress: number;
}

/** Span over sag below which a rail is said to sag. */
export const SAGS_BELOW = 180;
/** Span over sag below which a rail is refused without a post under its middle. */
export const REFUSED_BELOW = 90;

/** @param load Uniform load. [N/m]  @param span [m] */
export function underUniformLoad(tube: TubeSection, load: number, span: number): BeamState {
  return {
    sag: (5 * load * span ** 4) / (384 * STEEL.modulus * tube.inertia),
    stress: (load * span ** 2) / 8 / tube.modulus,
  };
}

/** @param force At mid-span. [N]  @param span [m] */
export function underPointLoad(tube: TubeSection, force: number, span: number): BeamState {
  return { sag: (force * span ** 3) / (48 * STEEL.modulus * tube.inertia), stress: (force * span) / 4 / tube.modulus };
}

/** A post held at its foot only, pushed sideways at its free end. @param force [N]  @param height [m] */
export function asFlagpole(tube: TubeSection, force: number, height: number): BeamState {
  return { sag: (force * height ** 3) / (3 * STEEL.modulus * tube.inertia), stress: (force * height) / tube.modulus };
}

/** Uniform load at which a simply supported rail reaches the allowable stress. [N/m]  @param span [m] */
export function allowableLineLoad(tube: TubeSection, span: number): number {
  return (8 * STEEL.allowable * tube.modulus) / span ** 2;
}

/**
 * Force along a post at which it buckles by Euler. [N]
 * @param lengthFactor K: 1 between pins, 2.1 fixed at its foot only
 */
export function eulerForce(tube: TubeSection, height: number, lengthFactor: number): number {
  return (Math.PI ** 2 * STEEL.modulus * tube.inertia) / (lengthFactor * height) ** 2;
}

/** Nominal strength of a post in compression. [N]  @param lengthFactor K, as for `eulerForce` */
export function columnStrength(tube: TubeSection, height: number, lengthFactor: number): number {
  const slenderness = (lengthFactor * height) / tube.gyration;
  const elastic = eulerForce(tube, height, lengthFactor) / tube.area;
  const critical =
    slenderness <= 4.71 * Math.sqrt(STEEL.modulus / STEEL.yield)
      ? 0.658 ** (STEEL.yield / elastic) * STEEL.yield
      : 0.877 * elastic;
  return critical * tube.area;
}
