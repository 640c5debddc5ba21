/**
 * What people type, in metric and in feet: a number may have a unit, and without one it is in the plan's `units`.
 * Decimal commas are accepted.
 */

import { METRES_PER_INCH, METRES_PER_UNIT, SPEED_PER_UNIT, LIGHT_PER_UNIT, KELVIN_PER_FAHRENHEIT } from './per-unit.ts';
import type { Units } from './units.ts';

/** Spellings that people use, by the unit they mean. */
const SPELLINGS: Readonly<Record<string, string>> = {
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  centimetres: 'cm',
  centimeters: 'cm',
  millimetres: 'mm',
  millimeters: 'mm',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '"': 'in',
  inch: 'in',
  inches: 'in',
  ins: 'in',
  yard: 'yd',
  yards: 'yd',
  ms: 'm/s',
  'm/sec': 'm/s',
  kmh: 'km/h',
  kph: 'km/h',
  'mi/h': 'mph',
  kt: 'kn',
  kts: 'kn',
  knot: 'kn',
  knots: 'kn',
  m2: 'm²',
  sqm: 'm²',
  'sq m': 'm²',
  cm2: 'cm²',
  ft2: 'ft²',
  sqft: 'ft²',
  'sq ft': 'ft²',
  yd2: 'yd²',
  sqyd: 'yd²',
  'sq yd': 'yd²',
  acres: 'acre',
  kilo: 'kg',
  kilos: 'kg',
  kgs: 'kg',
  gram: 'g',
  grams: 'g',
  tonne: 't',
  tonnes: 't',
  pound: 'lb',
  pounds: 'lb',
  lbs: 'lb',
  ounce: 'oz',
  ounces: 'oz',
  lx: 'lux',
  klx: 'klux',
  'foot-candles': 'fc',
  footcandles: 'fc',
  ftc: 'fc',
};

/**
 * A typed length in metres: `6'6"`, `6 ft 6 in`, `6' 2`, `5'-4 1/2"`, `40 in`, `2.2 m`, `188 cm`, `1,88`.
 * A bare number is in metres, or in feet where units are imperial. `null` when it cannot be read.
 */
export function parseLength(text: string, units: Units): number | null {
  const typed = tidy(text);
  const feetAndInches =
    /^([+-]?)(\d+(?:\.\d+)?)\s*(?:'|ft\.?|feet|foot)\s*-?\s*(\d.*?)\s*(?:"|''|in\.?|ins|inch|inches)?$/.exec(typed);
  if (feetAndInches !== null) {
    const inches = parseNumber(feetAndInches[3]);
    if (inches === null || inches >= 12) return null;
    return withoutNoise(
      (feetAndInches[1] === '-' ? -1 : 1) * (Number(feetAndInches[2]) * 12 + inches) * METRES_PER_INCH,
    );
  }
  return parseQuantity(typed, METRES_PER_UNIT, units === 'metric' ? 'm' : 'ft');
}

/** A typed temperature in °C (`38`, `38 °C`, `100 F`); a bare number is in °C or °F. `null` when it cannot be read. */
export function parseTemperature(text: string, units: Units): number | null {
  const { value, unit } = temperatureParts(text, units);
  if (value === null || unit === 'K') return null;
  return unit === 'F' ? withoutNoise((value - 32) * KELVIN_PER_FAHRENHEIT) : value;
}

/** A typed rain in mm; a bare number is in mm or inches. `null` when it cannot be read. */
export function parseRain(text: string, units: Units): number | null {
  const metres = parseQuantity(tidy(text), METRES_PER_UNIT, units === 'metric' ? 'mm' : 'in');
  return metres === null ? null : withoutNoise(metres * 1000);
}

/**
 * A typed speed in m/s (`20 m/s`, `72 km/h`, `45 mph`, `39 kn`); a bare number is in m/s or mph. `null` when it cannot
 * be read.
 */
export function parseSpeed(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), SPEED_PER_UNIT, units === 'metric' ? 'm/s' : 'mph');
}

/** A typed reading of a light meter in lux (`98000`, `98 klux`, `9100 fc`); a bare number is in lux or foot-candles. */
export function parseLight(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), LIGHT_PER_UNIT, units === 'metric' ? 'lux' : 'fc');
}

/** A number without a unit: `0.6`, `0,6`, `1 1/2`, `2½`, `−3`; `null` when it cannot be read. */
export function parseNumber(text: string): number | null {
  const typed = tidy(text).replaceAll('½', ' 1/2').replaceAll('¼', ' 1/4').replaceAll('¾', ' 3/4').trim();
  const parts = /^([+-]?)(?:(\d+|\d*\.\d+|\d+\.)(?:\s+|$))?(?:(\d+)\s*\/\s*(\d+))?$/.exec(typed);
  if (parts === null || (parts[2] === undefined && parts[3] === undefined)) return null;
  const whole = Number(parts[2] ?? 0);
  const fraction = parts[3] === undefined ? 0 : Number(parts[3]) / Number(parts[4]);
  if (!Number.isFinite(whole + fraction)) return null;
  return parts[1] === '-' ? -(whole + fraction) : whole + fraction;
}

/** A number and a unit out of a table; without a unit the one assumed. */
function parseQuantity(typed: string, perUnit: Readonly<Record<string, number>>, assumed: string): number | null {
  const parts = /^([^a-z°'"]*)(.*)$/.exec(typed);
  const value = parts === null ? null : parseNumber(parts[1]);
  if (parts === null || value === null) return null;
  const spelt = parts[2].trim().replace(/\.$/, '');
  const unit = spelt === '' ? assumed : Object.hasOwn(SPELLINGS, spelt) ? SPELLINGS[spelt] : spelt;
  return Object.hasOwn(perUnit, unit) ? withoutNoise(value * perUnit[unit]) : null;
}

function temperatureParts(text: string, units: Units): { value: number | null; unit: 'C' | 'F' | 'K' } {
  const parts = /^([^a-z°]*)(?:°\s*)?(c|f|k|celsius|fahrenheit)?$/.exec(tidy(text));
  const letter = parts?.[2]?.[0] ?? (units === 'metric' ? 'c' : 'f');
  return {
    value: parts === null ? null : parseNumber(parts[1]),
    unit: letter === 'f' ? 'F' : letter === 'k' ? 'K' : 'C',
  };
}

/** 188 cm is 1.88 m, not 1.8800000000000001. */
function withoutNoise(value: number): number {
  return Number(value.toPrecision(12));
}

/** Lower case, one kind of quote, sign and decimal mark, single spaces. */
function tidy(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/[’′‘]/g, "'")
    .replaceAll(/[”″“]/g, '"')
    .replaceAll("''", '"')
    .replaceAll(/[−–]/g, '-')
    .replaceAll(/(\d),(\d)/g, '$1.$2')
    .replaceAll(/\s+/g, ' ');
}
