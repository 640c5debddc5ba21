/** Lengths as a builder reads them, beside `formatCut` for what is cut. */
import { formatCut, formatLength } from '../plan/units.ts';
import type { Units } from '../plan/units.ts';

const INCH = 0.0254;

/** A length to set out by: to the centimetre, or the sixteenth of an inch. @param metres [m] */
export function formatTape(metres: number, units: Units): string {
  return units === 'metric' ? formatLength(metres, units) : formatCut(metres, units);
}

/** A wall, a kerf, a sag: what a sixteenth of an inch would hide. @param metres [m] */
export function formatThin(metres: number, units: Units): string {
  return units === 'metric' ? `${(metres * 1000).toFixed(1)} mm` : `${(metres / INCH).toFixed(3)} in`;
}

/** A volume to dig or to mix. @param cubicMetres [m³] */
export function formatVolume(cubicMetres: number, units: Units): string {
  return units === 'metric' ? `${Math.round(cubicMetres * 1000)} litres` : `${(cubicMetres / 0.3048 ** 3).toFixed(1)} ft³`;
}
