import type { PlantRow } from '../../plan/types.ts';
import { LEAF_ABSORPTANCE, leafTemperature } from './leaf-balance.ts';
import { absorbed, incomingAt, type LeafMoment } from './receives.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * Stomatal conductance of a leaf with enough water and of one without. [mol m⁻² s⁻¹] Both are always shown: water rules
 * a leaf's temperature.
 */
export const STOMATA = { watered: 0.25, thirsty: 0.02 } as const;
export type Watering = keyof typeof STOMATA;

/** What of the sky's light a fruit takes beside the sun's. A choice of this project. */
export const FRUIT_SKY_PART = 0.15;
/** A fruit's rise by the wind at it, 1 at about 1 m/s, within these. A choice of this project. */
const FRUIT_WIND_POWER = -0.3;
const FRUIT_WIND_RANGE = [0.75, 1.6] as const;

/**
 * Temperature of a leaf that faces the sun, or of the fruit's surface where that is the row's limit, by the balance
 * itself. [°C] What asks often asks `LeafDay`.
 * @param share of the beam that reaches it, 0 to 1
 * @param absorptance of the leaf to sunlight; a fruit's surface takes no heed of it
 * @param sample of the day, for what the walls round it throw on it then
 */
export function surfaceTemperature(
  moment: LeafMoment,
  row: PlantRow,
  watering: Watering,
  share: number,
  around: Surroundings,
  absorptance = LEAF_ABSORPTANCE,
  sample = 0,
): number {
  if (row.limitOf === 'fruit') return fruitTemperature(moment, share, around);
  return temperatureOf(moment, row, watering, absorbed(incomingAt(moment, sample), share, around, absorptance));
}

/** Temperature of a row's leaf that takes up so much. [°C] @param takenUp of `absorbed` [W/m²] */
export function temperatureOf(moment: LeafMoment, row: PlantRow, watering: Watering, takenUp: number): number {
  return stomataTemperature(moment, row, STOMATA[watering], takenUp);
}

/** The same with any conductance of the stomata. [°C] @param stomata [mol m⁻² s⁻¹] */
export function stomataTemperature(moment: LeafMoment, row: PlantRow, stomata: number, takenUp: number): number {
  return leafTemperature(takenUp, {
    air: moment.air,
    vapour: moment.vapour,
    pressure: moment.pressure,
    wind: moment.wind,
    width: row.leafWidth,
    lower: stomata,
    upper: row.bothSides ? stomata : 0,
  });
}

/**
 * Surface of a fruit in the sun, water or not. [°C] In the open at the day's warmest it rises above the air by
 * 1.17·Tmax + 6.21 − Tmax (Schrader, Zhang & Sun 2003, Acta Hortic. 618:397–405, for apples; ± 3 K), 11 to 14 K in the
 * range where sun-exposed apples run 11 to 17 K above air (Schrader, ASHS 2009). That line is for midday in an orchard
 * at about 1 m/s; that the rise follows the light of the hour before, and the wind, is a choice of this project.
 * @param share of the beam of the hour before that reached it, 0 to 1
 * @param stillness of `fruitStillness`: whoever asks often has it at hand
 */
export function fruitTemperature(
  { air, airMax, wind, hour }: LeafMoment,
  share: number,
  { sky }: Surroundings,
  stillness = fruitStillness(wind),
): number {
  const openRise = 0.17 * airMax + 6.21;
  const light = share * hour.beam + FRUIT_SKY_PART * sky * hour.diffuse;
  return hour.openMost > 0 ? air + (openRise * stillness * light) / hour.openMost : air;
}

/** How much more a fruit's skin rises in this wind than at 1 m/s. @param wind at the fruit [m/s] */
export function fruitStillness(wind: number): number {
  const [least, most] = FRUIT_WIND_RANGE;
  return Math.min(most, Math.max(least, wind ** FRUIT_WIND_POWER));
}
