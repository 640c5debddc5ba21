import { DEGREE } from '../../../plan/geometry/angles.ts';

/**
 * Reference evapotranspiration of short grass, day by day. Source of every equation: Allen, R. G., Pereira, L. S.,
 * Raes, D., Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, by equation number. The
 * paper's own coefficients are kept, also where the leaf's balance uses others: its worked examples come out to the
 * printed digit only so.
 */
/** [MJ m⁻² min⁻¹] */
const SOLAR_CONSTANT = 0.082;
/** [MJ K⁻⁴ m⁻² day⁻¹] */
const STEFAN_BOLTZMANN_DAY = 4.903e-9;
const GRASS_ALBEDO = 0.23;
/** As the paper has it for eq. 39. [K] */
const KELVIN = 273.16;

/** Atmospheric pressure, eq. 7. @param elevation [m] @returns [kPa] */
export function pressureAt(elevation: number): number {
  return 101.3 * ((293 - 0.0065 * elevation) / 293) ** 5.26;
}

/** Psychrometric constant, eq. 8. @param pressure [kPa] @returns [kPa/K] */
export function psychrometric(pressure: number): number {
  return 0.665e-3 * pressure;
}

/** Saturation vapour pressure, eq. 11. @param temperature [°C] @returns [kPa] */
export function saturation(temperature: number): number {
  return 0.6108 * Math.exp((17.27 * temperature) / (temperature + 237.3));
}

/** Slope of the saturation curve, eq. 13. @param temperature [°C] @returns [kPa/K] */
export function saturationSlope(temperature: number): number {
  return (4098 * saturation(temperature)) / (temperature + 237.3) ** 2;
}

/** The sun above the air on one day. */
export interface DaySun {
  /** Inverse relative distance to the sun, eq. 23. */
  readonly distance: number;
  /** Declination, eq. 24. [rad] */
  readonly declinationRad: number;
  /** Sunset hour angle, eq. 25. [rad] */
  readonly sunsetRad: number;
  /** Extraterrestrial radiation, eq. 21. [MJ/m² a day] */
  readonly extraterrestrial: number;
  /** Daylight, eq. 34. [h] */
  readonly daylight: number;
}

/**
 * @param latitude [°]
 * @param dayOfYear 1 to 366. Where the sun never sets or never rises the hour angle is held at π or 0.
 */
export function daySun(latitude: number, dayOfYear: number): DaySun {
  const turn = (2 * Math.PI * dayOfYear) / 365;
  const distance = 1 + 0.033 * Math.cos(turn);
  const declinationRad = 0.409 * Math.sin(turn - 1.39);
  const phi = latitude * DEGREE;
  const sunsetRad = Math.acos(Math.min(1, Math.max(-1, -Math.tan(phi) * Math.tan(declinationRad))));
  const level =
    sunsetRad * Math.sin(phi) * Math.sin(declinationRad) +
    Math.cos(phi) * Math.cos(declinationRad) * Math.sin(sunsetRad);
  return {
    distance,
    declinationRad,
    sunsetRad,
    extraterrestrial: ((24 * 60) / Math.PI) * SOLAR_CONSTANT * distance * level,
    daylight: (24 / Math.PI) * sunsetRad,
  };
}

/** Radiation under a clear sky, eq. 37. @param elevation [m] @returns [MJ/m² a day] */
export function clearSkyRadiation(sun: DaySun, elevation: number): number {
  return (0.75 + 2e-5 * elevation) * sun.extraterrestrial;
}

/**
 * Wind 2 m above the ground from a wind measured higher up, eq. 47.
 * @param height of the measurement [m]
 * @returns [m/s]
 */
export function windAtTwoMetres(wind: number, height: number): number {
  return (wind * 4.87) / Math.log(67.8 * height - 5.42);
}

/** Mean of the saturation pressures of the day's high and low, eq. 12. @returns [kPa] */
export function meanSaturation(high: number, low: number): number {
  return (saturation(high) + saturation(low)) / 2;
}

/** A day as a grass sward has it. */
export interface FaoDay {
  /** [°C] */
  readonly high: number;
  readonly low: number;
  /** Actual vapour pressure. [kPa] */
  readonly vapour: number;
  /** 2 m above the ground. [m/s] */
  readonly wind: number;
  /** Solar radiation on the level. [MJ/m² a day] */
  readonly solar: number;
  readonly latitude: number;
  readonly dayOfYear: number;
  /** [m] */
  readonly elevation: number;
}

/** Net longwave given off, eq. 39; the ratio of solar to clear-sky radiation is at most 1. @returns [MJ/m² a day] */
export function netLongwave(day: FaoDay): number {
  const clear = clearSkyRadiation(daySun(day.latitude, day.dayOfYear), day.elevation);
  const cover = clear > 0 ? Math.min(1, day.solar / clear) : 1;
  const emitted = ((day.high + KELVIN) ** 4 + (day.low + KELVIN) ** 4) / 2;
  return STEFAN_BOLTZMANN_DAY * emitted * (0.34 - 0.14 * Math.sqrt(day.vapour)) * (1.35 * cover - 0.35);
}

/** What the Penman–Monteith equation itself takes. */
export interface PenmanMonteith {
  /** Net radiation and heat into the soil. [MJ/m² a day] */
  readonly netRadiation: number;
  readonly soilHeat: number;
  /** Mean air temperature. [°C] */
  readonly air: number;
  readonly wind: number;
  /** [kPa] */
  readonly saturated: number;
  readonly vapour: number;
  /** [kPa/K] */
  readonly slope: number;
  readonly psychrometric: number;
}

/** Eq. 6. @returns [mm a day], never below 0 */
export function penmanMonteith(at: PenmanMonteith): number {
  const byHeat = 0.408 * at.slope * (at.netRadiation - at.soilHeat);
  const byAir = ((at.psychrometric * 900) / (at.air + 273)) * at.wind * (at.saturated - at.vapour);
  return Math.max(0, (byHeat + byAir) / (at.slope + at.psychrometric * (1 + 0.34 * at.wind)));
}

/** What reaches one place of what the open field has: shares of the sun's energy, of the sky, and of the wind. */
export interface Sheltered {
  readonly light: number;
  readonly sky: number;
  readonly wind: number;
}

const IN_THE_OPEN: Sheltered = { light: 1, sky: 1, wind: 1 };
/** Air is never quite still: the paper's least wind (p. 63, from memory). [m/s] */
const LEAST_WIND = 0.5;

/**
 * Reference evapotranspiration of a day, no heat into the soil; of grass in the shade, if it lies in some: it takes up
 * its share of the sun and gives off its share of long waves to the sky. @returns [mm a day]
 */
export function referenceEvapotranspiration(day: FaoDay, at: Sheltered = IN_THE_OPEN): number {
  const air = (day.high + day.low) / 2;
  return penmanMonteith({
    netRadiation: (1 - GRASS_ALBEDO) * day.solar * at.light - netLongwave(day) * at.sky,
    soilHeat: 0,
    air,
    wind: Math.max(LEAST_WIND, day.wind * at.wind),
    saturated: meanSaturation(day.high, day.low),
    vapour: day.vapour,
    slope: saturationSlope(air),
    psychrometric: psychrometric(pressureAt(day.elevation)),
  });
}
