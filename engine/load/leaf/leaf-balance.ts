/**
 * Energy balance of a leaf. Every flux is per m² of leaf surface averaged over its two sides, so a factor 0.5 stands
 * before each one-sided input; mixing this with formulas per projected area doubles the load. Source: Campbell, G. S.,
 * Norman, J. M. (1998), An Introduction to Environmental Biophysics, 2nd ed., Springer, equations 7.30, 7.33, 10.10 and
 * 14.1, table 7.6 (from memory, checked against an open implementation that names them).
 */

/** Stefan–Boltzmann. [W m⁻² K⁻⁴] */
const STEFAN_BOLTZMANN = 5.67e-8;
/** Molar heat of air at constant pressure. [J mol⁻¹ K⁻¹] */
const AIR_HEAT = 29.3;
const KELVIN = 273.15;
/** Longwave absorptance and emissivity of a leaf. */
const LEAF_EMISSIVITY = 0.97;
/** Absorptance of a leaf to sunlight, 0.45 to 0.60. Not that of PAR, which is higher. */
export const LEAF_ABSORPTANCE = 0.5;
/** Outdoor air is turbulent: conductances are this much higher than in a wind tunnel (C&N, ch. 7). */
const OUTDOOR_TURBULENCE = 1.4;
/** Slowest wind at a leaf; the forced formula ends below. [m/s] */
const LEAST_WIND = 0.1;

/** Saturation vapour pressure (C&N 3.8). @param temperature [°C] @returns [kPa] */
export function saturationVapour(temperature: number): number {
  return 0.611 * Math.exp((17.502 * temperature) / (temperature + 240.97));
}

/** Mean air pressure. @param elevation [m] @returns [kPa] */
export function airPressure(elevation: number): number {
  return 101.3 * (1 - 2.25577e-5 * elevation) ** 5.2559;
}

/** Emissivity of the clear sky (C&N 10.10, Brutsaert 1975). @param air [°C] @param vapour [kPa] */
export function clearSkyEmissivity(air: number, vapour: number): number {
  return 1.72 * (vapour / (air + KELVIN)) ** (1 / 7);
}

/** Longwave given off by a black body. @param temperature [°C] @returns [W/m²] */
export function blackBody(temperature: number): number {
  const kelvin = temperature + KELVIN;
  const squared = kelvin * kelvin;
  return STEFAN_BOLTZMANN * squared * squared;
}

/** What shines on a leaf that faces the sun. [W/m²] */
export interface LeafLight {
  /** Direct, on a surface that faces the sun, after all that is in the way. */
  readonly beam: number;
  /** From the sky on the level, after all that hides it. */
  readonly sky: number;
  /** Sunlight on the ground below. */
  readonly ground: number;
  /** Longwave from above: sky and what hides it. */
  readonly above: number;
  /** Longwave from the ground. */
  readonly below: number;
}

/**
 * Radiation a flat leaf absorbs. [W/m²] It sees half sky and half ground in total whatever its tilt.
 * @param albedo of the ground @param absorptance of the leaf to sunlight
 */
export function absorbedByLeaf(light: LeafLight, albedo: number, absorptance = LEAF_ABSORPTANCE): number {
  const short = absorptance * 0.5 * (light.beam + light.sky + albedo * light.ground);
  return short + LEAF_EMISSIVITY * 0.5 * (light.above + light.below);
}

/** The air at a leaf, and the leaf. */
export interface LeafAir {
  /** [°C] */
  readonly air: number;
  /** Vapour pressure of the air. [kPa] */
  readonly vapour: number;
  /** [kPa] */
  readonly pressure: number;
  /** At the leaf. [m/s] */
  readonly wind: number;
  /** Leaf width. [m] */
  readonly width: number;
  /** Stomatal conductance to vapour of the lower and the upper side. [mol m⁻² s⁻¹] */
  readonly lower: number;
  readonly upper: number;
}

/**
 * Temperature at which a leaf gives off what it takes in. [°C]
 * The balance falls strictly with the leaf's temperature, so there is one; found by Newton's steps kept inside a
 * bracket, to 1e-6 K.
 * @param absorbed of `absorbedByLeaf` [W/m²]
 * @param turbulence 1.4 outdoors, 1 in a wind tunnel
 */
export function leafTemperature(absorbed: number, at: LeafAir, turbulence = OUTDOOR_TURBULENCE): number {
  const { air, vapour, pressure, wind, width, lower, upper } = at;
  const d = 0.72 * width;
  const forced = turbulence * 0.135 * Math.sqrt(Math.max(wind, LEAST_WIND) / d);
  const forcedCubed = forced * forced * forced;
  const latentHeat = 45064 - 42.53 * air;
  const emits = LEAF_EMISSIVITY * STEFAN_BOLTZMANN;

  let low = air - 40;
  let high = air + 90;
  let leaf = air;
  for (let step = 0; step < 60; step++) {
    const free = 0.05 * Math.sqrt(Math.sqrt(Math.abs(leaf - air) / d));
    const heat = Math.cbrt(forcedCubed + free * free * free);
    const boundary = (heat * 0.147) / 0.135;
    const vapourOut = (0.5 * lower * boundary) / (lower + boundary) + (0.5 * upper * boundary) / (upper + boundary);
    // No powers by `**`, which take most of the time that the whole balance takes.
    const kelvin = leaf + KELVIN;
    const kelvinCubed = kelvin * kelvin * kelvin;
    const saturated = saturationVapour(leaf);
    const gain =
      absorbed -
      emits * kelvinCubed * kelvin -
      AIR_HEAT * heat * (leaf - air) -
      (latentHeat * vapourOut * (saturated - vapour)) / pressure;
    if (gain > 0) low = leaf;
    else high = leaf;
    const saturatedSlope = (17.502 * 240.97 * saturated) / ((240.97 + leaf) * (240.97 + leaf));
    const slope = 4 * emits * kelvinCubed + AIR_HEAT * heat + (latentHeat * vapourOut * saturatedSlope) / pressure;
    const next = leaf + gain / slope;
    const kept = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(kept - leaf) < 1e-7) return kept;
    leaf = kept;
  }
  return leaf;
}
