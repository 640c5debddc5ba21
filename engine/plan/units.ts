/**
 * What people type and read, in metric and in feet. The plan itself is always metric: metres, °C, m/s, m², kg, mol.
 * A number shown always has its unit; a number typed may have one, and without one it is in the plan's `units`.
 * Decimal commas are accepted. Exact: 1 ft = 0.3048 m, 1 mile = 1609.344 m, 1 lb = 0.45359237 kg (international yard
 * and pound agreement of 1959), °F = °C × 9/5 + 32.
 */
import type { Plan } from './types.ts';

/** What is shown and assumed where no unit is typed. */
export type Units = 'metric' | 'imperial';

const METRES_PER_FOOT = 0.3048;
const METRES_PER_INCH = 0.0254;
const METRES_PER_UNIT: Readonly<Record<string, number>> = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  km: 1000,
  ft: METRES_PER_FOOT,
  in: METRES_PER_INCH,
  yd: 0.9144,
};
const SPEED_PER_UNIT: Readonly<Record<string, number>> = { 'm/s': 1, 'km/h': 1 / 3.6, mph: 0.44704, kn: 1852 / 3600 };
const AREA_PER_UNIT: Readonly<Record<string, number>> = {
  'm²': 1,
  'cm²': 1e-4,
  ha: 1e4,
  'ft²': METRES_PER_FOOT ** 2,
  'yd²': 0.9144 ** 2,
  acre: 4046.8564224,
};
const MASS_PER_UNIT: Readonly<Record<string, number>> = {
  kg: 1,
  g: 0.001,
  t: 1000,
  lb: 0.45359237,
  oz: 0.45359237 / 16,
};
const LIGHT_PER_UNIT: Readonly<Record<string, number>> = { lux: 1, klux: 1000, fc: 1 / METRES_PER_FOOT ** 2 };
const KELVIN_PER_FAHRENHEIT = 5 / 9;

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

/** The units a plan is shown in; metric where it does not say. */
export function unitsOf(plan: Plan): Units {
  return plan.units ?? 'metric';
}

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

/** A typed area in m²; a bare number is in m² or square feet. `null` when it cannot be read. */
export function parseArea(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), AREA_PER_UNIT, units === 'metric' ? 'm²' : 'ft²');
}

/** How far it is, as one would say it of a walk: `7.5 m`, `10 m`, `33 ft`. */
export function formatDistance(metres: number, units: Units): string {
  return units === 'metric'
    ? `${fixed(metres, metres < 9.95 ? 1 : 0)} m`
    : `${fixed(metres / (12 * METRES_PER_INCH), 0)} ft`;
}

/** Up to what a hand measures off: the next 5 cm or 2 in. @param metres [m] */
export function formatUpToHand(metres: number, units: Units): string {
  const step = units === 'metric' ? 0.05 : 2 * METRES_PER_INCH;
  return formatLength(Math.ceil(metres / step - 1e-6) * step, units);
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

/** A typed temperature in °C (`38`, `38 °C`, `100 F`); a bare number is in °C or °F. `null` when it cannot be read. */
export function parseTemperature(text: string, units: Units): number | null {
  const { value, unit } = temperatureParts(text, units);
  if (value === null || unit === 'K') return null;
  return unit === 'F' ? withoutNoise((value - 32) * KELVIN_PER_FAHRENHEIT) : value;
}

/**
 * A typed difference of temperatures in K (`4`, `4 K`, `7 F`): 9 °F of difference are 5 K. `null` when it cannot be
 * read.
 */
export function parseTemperatureDifference(text: string, units: Units): number | null {
  const { value, unit } = temperatureParts(text, units);
  return value === null ? null : unit === 'F' ? withoutNoise(value * KELVIN_PER_FAHRENHEIT) : value;
}

/**
 * A temperature of air or leaf, to the degree: `38 °C`, `100 °F`. @param celsius [°C]
 * @param decimals shown at most: what was typed whole is read whole
 */
export function formatTemperature(celsius: number, units: Units, decimals = 0): string {
  const [value, unit] = units === 'metric' ? [celsius, '°C'] : [celsius / KELVIN_PER_FAHRENHEIT + 32, '°F'];
  return `${fixed(value, decimals).replace(/\.0+$/, '')} ${unit}`;
}

const MM_PER_INCH = 25.4;

/** A typed rain in mm; a bare number is in mm or inches. `null` when it cannot be read. */
export function parseRain(text: string, units: Units): number | null {
  const metres = parseQuantity(tidy(text), METRES_PER_UNIT, units === 'metric' ? 'mm' : 'in');
  return metres === null ? null : withoutNoise(metres * 1000);
}

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
  return limitToStep(celsius, units, (steps) => Math.floor(steps + KEPT_IN_TENTHS));
}

/** What a plant is damaged from in frost, never told too low: −1.7 is `−1.5 °C`, `29 °F`. @param celsius [°C] */
export function formatFrostLimit(celsius: number, units: Units): string {
  return limitToStep(celsius, units, (steps) => Math.ceil(steps - KEPT_IN_TENTHS));
}

function limitToStep(celsius: number, units: Units, round: (steps: number) => number): string {
  const step = LIMIT_STEP[units];
  const shown = step * round((units === 'metric' ? celsius : celsius / KELVIN_PER_FAHRENHEIT + 32) / step);
  return `${fixed(shown, Number.isInteger(shown) ? 0 : 1)} ${units === 'metric' ? '°C' : '°F'}`;
}

/** A difference of temperatures: `4 °C`, `7 °F`; a kelvin is a word of the trade’s. @param kelvin [K] */
export function formatTemperatureDifference(kelvin: number, units: Units, decimals = 0): string {
  return units === 'metric' ? `${fixed(kelvin, decimals)} °C` : `${fixed(kelvin / KELVIN_PER_FAHRENHEIT, decimals)} °F`;
}

/** A clock time as it is said: `13:30`, or `1:30 pm` where units are imperial. @param clock "HH:MM" */
export function formatClock(clock: string, units: Units): string {
  if (units === 'metric') return clock;
  const [hour, minute] = clock.split(':');
  if (minute === '00' && (hour === '12' || hour === '00')) return hour === '12' ? 'noon' : 'midnight';
  const twelve = `${Number(hour) % 12 || 12}${minute === '00' ? '' : `:${minute}`}`;
  return `${twelve} ${Number(hour) < 12 ? 'am' : 'pm'}`;
}

/** From one clock time to another, each "HH:MM". */
export interface ClockStretch {
  readonly from: string;
  readonly to: string;
}

/** So near to the sun's rise or set a time is told as that. [minutes] */
const AT_THE_EDGE = 20;

/** "sunrise" or "sunset" of a clock time near either; `null` of another. @param sunUp of its day, where it is known */
export function edgeWord(clock: string, sunUp: ClockStretch | null): 'sunrise' | 'sunset' | null {
  if (sunUp === null) return null;
  const minutes = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3, 5));
  const isNear = (edge: string): boolean => Math.abs(minutes(clock) - minutes(edge)) <= AT_THE_EDGE;
  return isNear(sunUp.from) ? 'sunrise' : isNear(sunUp.to) ? 'sunset' : null;
}

/**
 * From one clock time to another: `13:30 to 20:40`, `1:30 to 8:40 pm`, `13:30 to sunset`.
 * @param sunUp of their day, where it is known
 */
export function formatStretch({ from, to }: ClockStretch, units: Units, sunUp: ClockStretch | null = null): string {
  const [first, last] = [from, to].map((clock) => edgeWord(clock, sunUp) ?? formatClock(clock, units));
  const half = / [ap]m$/.exec(last)?.[0] ?? '';
  return `${half !== '' && first.endsWith(half) ? first.slice(0, -half.length) : first} to ${last}`;
}

/**
 * A typed speed in m/s (`20 m/s`, `72 km/h`, `45 mph`, `39 kn`); a bare number is in m/s or mph. `null` when it cannot
 * be read.
 */
export function parseSpeed(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), SPEED_PER_UNIT, units === 'metric' ? 'm/s' : 'mph');
}

/** A wind speed: `20 m/s (72 km/h)`, `45 mph`. @param metresPerSecond [m/s] */
export function formatSpeed(metresPerSecond: number, units: Units): string {
  if (units === 'imperial') return `${fixed(metresPerSecond / SPEED_PER_UNIT.mph, 0)} mph`;
  const decimals = metresPerSecond < 10 && !Number.isInteger(metresPerSecond) ? 1 : 0;
  return `${fixed(metresPerSecond, decimals)} m/s (${fixed(metresPerSecond * 3.6, 0)} km/h)`;
}

/** A typed mass in kg; a bare number is in kg or pounds. `null` when it cannot be read. */
export function parseMass(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), MASS_PER_UNIT, units === 'metric' ? 'kg' : 'lb');
}

/** @param kilograms [kg] */
export function formatMass(kilograms: number, units: Units): string {
  const value = units === 'metric' ? kilograms : kilograms / MASS_PER_UNIT.lb;
  return `${fixed(value, Math.abs(value) < 10 ? 1 : 0)} ${units === 'metric' ? 'kg' : 'lb'}`;
}

/** A typed reading of a light meter in lux (`98000`, `98 klux`, `9100 fc`); a bare number is in lux or foot-candles. */
export function parseLight(text: string, units: Units): number | null {
  return parseQuantity(tidy(text), LIGHT_PER_UNIT, units === 'metric' ? 'lux' : 'fc');
}

/** A light meter's reading, to three digits: `98000 lux`, `9100 fc`. @param lux [lux] */
export function formatLight(lux: number, units: Units): string {
  const value = units === 'metric' ? lux : lux / LIGHT_PER_UNIT.fc;
  return `${Number(value.toPrecision(3))} ${units === 'metric' ? 'lux' : 'fc'}`;
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

/** Rounded, never "-0". */
function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text.replace('-', '−');
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
