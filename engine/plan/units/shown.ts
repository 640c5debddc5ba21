/** What people read, in metric and in feet: a number shown always has its unit. */

import { greatestCommonDivisor } from '../numbers/divisor.ts';
import { METRES_PER_INCH, SPEED_PER_UNIT, AREA_PER_UNIT, MASS_PER_UNIT, KELVIN_PER_FAHRENHEIT } from './per-unit.ts';
import type { Units } from './units.ts';

/** A length as people read it: `1.88 m`, or `6 ft 2 in` to the half inch (`10 in` under a foot). @param metres [m] */
export function formatLength(metres: number, units: Units): string {
  if (units === 'metric') return `${fixed(metres, 2)} m`;
  const halfInches = Math.round(Math.abs(metres) / (METRES_PER_INCH / 2));
  const feet = Math.floor(halfInches / 24);
  const left = halfInches - feet * 24;
  const inches = `${Math.floor(left / 2)}${left % 2 === 1 ? '½' : ''}`.replace(/^0½/, '½');
  const sign = metres < 0 && halfInches > 0 ? '−' : '';
  if (feet === 0) return `${sign}${inches} in`;
  return left === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${inches} in`;
}

/**
 * A length of a thing that is cut or bought, to the millimetre or the sixteenth of an inch: `2930 mm`, `9 ft 7 3/8 in`.
 * @param metres [m]
 */
export function formatCut(metres: number, units: Units): string {
  if (units === 'metric') return `${Math.round(metres * 1000)} mm`;
  const sixteenths = Math.round(metres / (METRES_PER_INCH / 16));
  const feet = Math.floor(sixteenths / 192);
  const inches = Math.floor((sixteenths - feet * 192) / 16);
  const parts = sixteenths % 16;
  const shared = greatestCommonDivisor(parts, 16);
  const inchText = parts === 0 ? `${inches}` : `${inches === 0 ? '' : `${inches} `}${parts / shared}/${16 / shared}`;
  if (feet === 0) return `${inchText} in`;
  return inchText === '0' ? `${feet} ft` : `${feet} ft ${inchText} in`;
}

/** How far it is, as one would say it of a walk: `7.5 m`, `10 m`, `33 ft`. */
export function formatDistance(metres: number, units: Units): string {
  return units === 'metric'
    ? `${fixed(metres, metres < 9.95 ? 1 : 0)} m`
    : `${fixed(metres / (12 * METRES_PER_INCH), 0)} ft`;
}

/** Up to what a hand measures off: the next 5 cm or 2 in. [m] */
export function upToHand(metres: number, units: Units): number {
  const step = units === 'metric' ? 0.05 : 2 * METRES_PER_INCH;
  return Math.ceil(metres / step - 1e-6) * step;
}

/** The same in words. @param metres [m] */
export function formatUpToHand(metres: number, units: Units): string {
  return formatLength(upToHand(metres, units), units);
}

/** A share as people read it: `37 %`. @param share 0 to 1, or more */
export function formatShare(share: number): string {
  return `${Math.round(100 * share)} %`;
}

/** @param squareMetres [m²] */
export function formatArea(squareMetres: number, units: Units): string {
  return units === 'metric' ? `${fixed(squareMetres, 1)} m²` : `${fixed(squareMetres / AREA_PER_UNIT['ft²'], 0)} ft²`;
}

/** So much of something for each area: `5.6 K·h a m²`, `0.52 K·h a ft²`. @param perSquareMetre [1/m²] */
export function formatPerArea(perSquareMetre: number, what: string, units: Units): string {
  return units === 'metric'
    ? `${fixed(perSquareMetre, 1)} ${what} a m²`
    : `${fixed(perSquareMetre * AREA_PER_UNIT['ft²'], 2)} ${what} a ft²`;
}

/**
 * A temperature of air or leaf, to the degree: `38 °C`, `100 °F`. @param celsius [°C]
 * @param decimals shown at most: what was typed whole is read whole
 */
export function formatTemperature(celsius: number, units: Units, decimals = 0): string {
  return `${bareTemperature(celsius, units, decimals)} ${DEGREES[units]}`;
}

/** The same beside another one that has the unit: `38`. @param celsius [°C] */
export function bareTemperature(celsius: number, units: Units, decimals = 0): string {
  return fixed(onScale(celsius, units), decimals).replace(/\.0+$/, '');
}

const DEGREES: Readonly<Record<Units, string>> = { metric: '°C', imperial: '°F' };

/** @param celsius [°C] */
function onScale(celsius: number, units: Units): number {
  return units === 'metric' ? celsius : celsius / KELVIN_PER_FAHRENHEIT + 32;
}

const MM_PER_INCH = 25.4;

/** Rain of a day or a storm: `12.5 mm`, `0.5 in`. @param millimetres [mm] */
export function formatRain(millimetres: number, units: Units): string {
  const [value, decimals, unit] = units === 'metric' ? [millimetres, 1, 'mm'] : [millimetres / MM_PER_INCH, 2, 'in'];
  return `${Number(value.toFixed(decimals))} ${unit}`;
}

/** What a limit is told to: half degrees of Celsius, whole ones of Fahrenheit. */
const LIMIT_STEP: Readonly<Record<Units, number>> = { metric: 0.5, imperial: 1 };
/** A limit given in whole °F and kept in tenths of °C is still that limit. [steps] */
const KEPT_IN_TENTHS = 0.11;

/** What a plant is harmed from in heat, never told too high: `44 °C`, `46.5 °C`, `111 °F`. @param celsius [°C] */
export function formatHeatLimit(celsius: number, units: Units): string {
  return `${bareHeatLimit(celsius, units)} ${DEGREES[units]}`;
}

/** The same beside a temperature that has the unit: `46.5`. @param celsius [°C] */
export function bareHeatLimit(celsius: number, units: Units): string {
  return limitToStep(celsius, units, (steps) => Math.floor(steps + KEPT_IN_TENTHS));
}

/** What a plant is damaged from in frost, never told too low: −1.7 is `−1.5 °C`, `29 °F`. @param celsius [°C] */
export function formatFrostLimit(celsius: number, units: Units): string {
  return `${limitToStep(celsius, units, (steps) => Math.ceil(steps - KEPT_IN_TENTHS))} ${DEGREES[units]}`;
}

function limitToStep(celsius: number, units: Units, round: (steps: number) => number): string {
  const step = LIMIT_STEP[units];
  const shown = step * round(onScale(celsius, units) / step);
  return fixed(shown, Number.isInteger(shown) ? 0 : 1);
}

/** A difference of temperatures: `4 °C`, `7 °F`; a kelvin is a word of the trade’s. @param kelvin [K] */
export function formatTemperatureDifference(kelvin: number, units: Units, decimals = 0): string {
  return `${fixed(units === 'metric' ? kelvin : kelvin / KELVIN_PER_FAHRENHEIT, decimals)} ${DEGREES[units]}`;
}

/** How far a temperature beside it may be off, its unit left to that one: "± 3". @param kelvin [K] */
export function formatPlusMinus(kelvin: number, units: Units): string {
  return `± ${fixed(units === 'metric' ? kelvin : kelvin / KELVIN_PER_FAHRENHEIT, 0)}`;
}

/** A wind speed: `20 m/s (72 km/h)`, `45 mph`. @param metresPerSecond [m/s] */
export function formatSpeed(metresPerSecond: number, units: Units): string {
  if (units === 'imperial') return `${fixed(metresPerSecond / SPEED_PER_UNIT.mph, 0)} mph`;
  const decimals = metresPerSecond < 10 && !Number.isInteger(metresPerSecond) ? 1 : 0;
  return `${fixed(metresPerSecond, decimals)} m/s (${fixed(metresPerSecond * 3.6, 0)} km/h)`;
}

/** @param kilograms [kg] */
export function formatMass(kilograms: number, units: Units): string {
  const value = units === 'metric' ? kilograms : kilograms / MASS_PER_UNIT.lb;
  return `${fixed(value, Math.abs(value) < 10 ? 1 : 0)} ${units === 'metric' ? 'kg' : 'lb'}`;
}

/** Rounded, never "-0". */
function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text.replace('-', '−');
}
