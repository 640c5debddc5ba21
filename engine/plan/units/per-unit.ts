/**
 * What each unit is in the plan's own. Exact: 1 ft = 0.3048 m, 1 mile = 1609.344 m, 1 lb = 0.45359237 kg (international
 * yard and pound agreement of 1959), °F = °C × 9/5 + 32.
 */
export const METRES_PER_FOOT = 0.3048;
export const METRES_PER_INCH = 0.0254;
export const METRES_PER_UNIT: Readonly<Record<string, number>> = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  km: 1000,
  ft: METRES_PER_FOOT,
  in: METRES_PER_INCH,
  yd: 0.9144,
};
export const SPEED_PER_UNIT: Readonly<Record<string, number>> = {
  'm/s': 1,
  'km/h': 1 / 3.6,
  mph: 0.44704,
  kn: 1852 / 3600,
};
export const AREA_PER_UNIT: Readonly<Record<string, number>> = {
  'm²': 1,
  'cm²': 1e-4,
  ha: 1e4,
  'ft²': METRES_PER_FOOT ** 2,
  'yd²': 0.9144 ** 2,
  acre: 4046.8564224,
};
export const MASS_PER_UNIT: Readonly<Record<string, number>> = {
  kg: 1,
  g: 0.001,
  t: 1000,
  lb: 0.45359237,
  oz: 0.45359237 / 16,
};
export const LIGHT_PER_UNIT: Readonly<Record<string, number>> = { lux: 1, klux: 1000, fc: 1 / METRES_PER_FOOT ** 2 };
export const KELVIN_PER_FAHRENHEIT = 5 / 9;

/** Instants are counted in milliseconds. */
export const MS_PER_MINUTE = 60_000;
export const MS_PER_HOUR = 3_600_000;
export const MS_PER_DAY = 86_400_000;
