import type { PlantRow } from '../../plan/types.ts';
import { absorbedByLeaf, blackBody, clearSkyEmissivity, LEAF_ABSORPTANCE, leafTemperature } from './leaf-balance.ts';

/**
 * Stomatal conductance of a leaf with enough water and of one without. [mol m⁻² s⁻¹] Both are always shown: water rules
 * a leaf's temperature.
 */
export const STOMATA = { watered: 0.25, thirsty: 0.02 } as const;
export type Watering = keyof typeof STOMATA;

/** How far an estimate may be off, root of squares over wind, stomata, width, absorptance and ground. [K] */
export const LEAF_SPREAD = 4;

const GROUND_ALBEDO = 0.25;
/**
 * How much hotter dry ground in full sun is than the air; in proportion to the share of the beam. A choice of this
 * project. [K]
 */
const SUNNY_GROUND_RISE = 18;
/** Emissivity of what hides the sky; it stands at the air's temperature. */
const COVER_EMISSIVITY = 0.95;
/** Share of a fruit's rise above the air that the beam makes; the sky makes the rest. A choice of this project. */
const FRUIT_BEAM_PART = 0.85;

/** The air and the light at one moment of a clear day. */
export interface LeafMoment {
  /** [°C] */
  readonly air: number;
  /** Highest of the day. [°C] */
  readonly airMax: number;
  /** [kPa] */
  readonly vapour: number;
  /** [kPa] */
  readonly pressure: number;
  /** At the leaf. [m/s] */
  readonly wind: number;
  /** On a surface that faces the sun, the glow round the sun included; and of the rest of the clear sky. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  /** Sine of the sun's apparent altitude. */
  readonly sinAltitude: number;
}

/**
 * Temperature of a leaf that faces the sun, or of the fruit's surface where that is the row's limit. [°C]
 * @param share of the beam that reaches it, 0 to 1; the ground below gets the same
 * @param skyView share of the sky's light that reaches it, 0 to 1
 * @param absorptance of the leaf to sunlight; a fruit's surface takes no heed of it
 */
export function surfaceTemperature(
  moment: LeafMoment,
  row: PlantRow,
  watering: Watering,
  share: number,
  skyView: number,
  absorptance = LEAF_ABSORPTANCE,
): number {
  if (row.limitOf === 'fruit') return fruitTemperature(moment, share, skyView);
  const { air, vapour, beam, diffuse, sinAltitude } = moment;
  const clearSky = clearSkyEmissivity(air, vapour) * blackBody(air);
  const cover = COVER_EMISSIVITY * blackBody(air);
  const light = {
    beam: beam * share,
    sky: diffuse * skyView,
    ground: beam * share * sinAltitude + diffuse * skyView,
    above: skyView * clearSky + (1 - skyView) * cover,
    below: blackBody(air + SUNNY_GROUND_RISE * share),
  };
  const stomata = STOMATA[watering];
  return leafTemperature(absorbedByLeaf(light, GROUND_ALBEDO, absorptance), {
    air,
    vapour,
    pressure: moment.pressure,
    wind: moment.wind,
    width: row.leafWidth,
    lower: stomata,
    upper: row.bothSides ? stomata : 0,
  });
}

/**
 * Surface of a fruit in the sun, water or not. [°C] In the open it rises above the air by what it does at the day's
 * warmest,
 * 1.17·Tmax + 6.21 − Tmax (Schrader, Zhang & Sun 2003, Acta Hortic. 618:397–405, for apples; ± 3 K), 11 to 14 K in the
 * range where
 * sun-exposed apples run 11 to 17 K above air (Schrader, ASHS 2009). Holding the surface itself at the day's figure
 * instead
 * would put a fruit 30 K above the cool air of the morning.
 */
export function fruitTemperature(moment: LeafMoment, share: number, skyView: number): number {
  const openRise = 0.17 * moment.airMax + 6.21;
  return moment.air + openRise * (FRUIT_BEAM_PART * share + (1 - FRUIT_BEAM_PART) * skyView);
}
