/**
 * Wind on a roof of cloth and on cloth that stands: an orientation, never a certificate.
 * Pressure after ASCE/SEI 7 with all its site factors 1 (from memory; 0.613 = ½ × 1.226 kg/m³). V is the gust, 3 s.
 */

import type { WindRange } from './types.ts';

/** [kg/m³ / 2] */
const HALF_AIR_DENSITY = 0.613;
export const GRAVITY = 9.80665;

/**
 * Uplift of a free monopitch roof, nothing below and blocked below, at 0, 5 … 30°. BS 6399-2:1997 Table 13; at 0°
 * blocked EN 1991-1-4 Table 7.6 (from memory); never less blocked than clear. Between the rows linear, beyond 30° as
 * at 30°.
 */
const UPLIFT_STEP_DEG = 5;
const UPLIFT_CLEAR = [0.5, 0.7, 0.9, 1.1, 1.3, 1.6, 1.8];
const UPLIFT_BLOCKED = [1.3, 1.4, 1.4, 1.5, 1.5, 1.6, 1.8];

/** Free-standing wall, net: EN 1991-1-4 Table 7.9, solidity 0.8 (from memory). */
export const SIDE_PUSH = 1.2;

/** Velocity pressure of a gust. [Pa]  @param gust 3-second gust. [m/s] */
export function windPressure(gust: number): number {
  return HALF_AIR_DENSITY * gust ** 2;
}

/** Uplift coefficient of a roof pitched by `pitchDeg`. */
export function upliftCoefficient(pitchDeg: number): WindRange {
  const place = Math.min(UPLIFT_CLEAR.length - 1, Math.abs(pitchDeg) / UPLIFT_STEP_DEG);
  return { clear: between(UPLIFT_CLEAR, place), blocked: between(UPLIFT_BLOCKED, place) };
}

/**
 * What holes leave of the wind's force on a cloth, Kp = 1 − (1 − d)²: AS/NZS 1170.2 Appendix D, porous walls and
 * hoardings (from memory), the most cautious of the published forms. @param density Covered share, here the cloth's
 * nominal density.
 */
export function holesFactor(density: number): number {
  return 1 - (1 - density) ** 2;
}

/** Uplift of a roof. [N]  @param area The cloth's own, along its slope. [m²] */
export function upliftForce(gust: number, area: number, density: number, pitchDeg: number): WindRange {
  const force = windPressure(gust) * holesFactor(density) * area;
  const coefficient = upliftCoefficient(pitchDeg);
  return { clear: force * coefficient.clear, blocked: force * coefficient.blocked };
}

/** Sideways push on a cloth that stands or hangs. [N]  @param area [m²] */
export function sidePush(gust: number, area: number, density: number): number {
  return windPressure(gust) * SIDE_PUSH * holesFactor(density) * area;
}

/** No wind on earth is asked about beyond this; an open cloth would otherwise bear any. [m/s] */
const STRONGEST_GUST = 100;

/**
 * Gust at which a rail reaches a line load, 100 m/s at most. [m/s]  @param lineLoad [N/m]  @param tributary Width of
 * cloth that pulls on it. [m]
 * @param sideways What pushes it square to that pull at 1 m/s. [N/m] A round tube bears the two as one.
 */
export function gustOfLineLoad(
  lineLoad: number,
  tributary: number,
  density: number,
  coefficient: number,
  sideways = 0,
): number {
  const perSquareSpeed = Math.hypot(HALF_AIR_DENSITY * coefficient * holesFactor(density) * tributary, sideways);
  return Math.min(STRONGEST_GUST, Math.sqrt(lineLoad / perSquareSpeed));
}

/** Gust at which a standing cloth pushes with a line load. [m/s]  @param tributary [m] */
export function gustOfSideLoad(lineLoad: number, tributary: number, density: number): number {
  return gustOfLineLoad(lineLoad, tributary, density, SIDE_PUSH);
}

/** Dead weight that holds a frame weighs so much more than what pulls at it: this project's own. */
export const BALLAST_FACTOR = 1.5;

/**
 * Inward pull of a taut strip of cloth on its edge, T = p·L²/(8s). [N/m]
 * @param pressure [Pa]
 * @param span [m]
 * @param sag [m]
 */
export function tautPull(pressure: number, span: number, sag: number): number {
  return (pressure * span ** 2) / (8 * sag);
}

function between(table: readonly number[], place: number): number {
  const low = Math.min(table.length - 2, Math.floor(place));
  return table[low] + (place - low) * (table[low + 1] - table[low]);
}
