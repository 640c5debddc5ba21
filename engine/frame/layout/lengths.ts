/** Lengths, forces and stresses as a builder reads them, beside `formatCut` for what is cut. */

import { METRES_PER_FOOT, METRES_PER_INCH } from '../../plan/units/per-unit.ts';
import { formatCut, formatLength, formatMass } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { GRAVITY } from '../strength/wind.ts';

const QUARTER_INCH = METRES_PER_INCH / 4;

/** A length to set out by: to the centimetre, or the quarter of an inch. @param metres [m] */
export function formatTape(metres: number, units: Units): string {
  return units === 'metric' ? formatLength(metres, units) : formatMark(metres, units);
}

/**
 * Where a mark is made on tube, ground or cloth, finer than which nobody holds it: to the millimetre, or the quarter of
 * an inch. @param metres [m]
 */
export function formatMark(metres: number, units: Units): string {
  return formatCut(units === 'metric' ? metres : Math.round(metres / QUARTER_INCH) * QUARTER_INCH, units);
}

/** A tube's diameter and wall, as shops list them: `29.5 mm`, `1.163 in`. @param metres [m] */
export function formatThin(metres: number, units: Units): string {
  return units === 'metric' ? `${(metres * 1000).toFixed(1)} mm` : `${(metres / METRES_PER_INCH).toFixed(3)} in`;
}

/**
 * What a saw takes, or a rail sags: to the millimetre or the sixteenth of an inch, what is smaller than one in words.
 * @param metres [m]
 */
export function formatSlight(metres: number, units: Units): string {
  if (units === 'metric')
    return metres >= 0.0095 ? formatCut(metres, units) : `${Number((metres * 1000).toFixed(1))} mm`;
  return metres < METRES_PER_INCH / 32 ? 'less than 1/16 in' : formatCut(metres, units);
}

/** A round measure that nobody holds to the millimetre: `50 mm`, `about 2 in`. @param metres [m] */
export function formatAbout(metres: number, units: Units): string {
  return units === 'metric' ? formatCut(metres, units) : `about ${Math.round(metres / METRES_PER_INCH)} in`;
}

/** What a spade digs: to 5 cm, or up to the next 2 in. @param metres [m] */
export function formatDug(metres: number, units: Units): string {
  return units === 'metric'
    ? `${Math.round(metres * 20) * 5} cm`
    : `${Math.ceil(metres / METRES_PER_INCH / 2 - 0.1) * 2} in`;
}

/** A volume to dig or to mix. @param cubicMetres [m³] */
export function formatVolume(cubicMetres: number, units: Units): string {
  return units === 'metric'
    ? `${Math.round(cubicMetres * 1000)} litres`
    : `${(cubicMetres / METRES_PER_FOOT ** 3).toFixed(1)} ft³`;
}

/** A force as the weight that pulls as hard: `84 kg`, `186 lb`. @param newtons [N] */
export function formatForce(newtons: number, units: Units): string {
  return formatMass(newtons / GRAVITY, units);
}
