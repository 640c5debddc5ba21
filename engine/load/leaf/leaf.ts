import type { PlantRow } from '../../plan/types.ts';
import { LEAF_ABSORPTANCE, leafTemperature } from './leaf-balance.ts';
import { absorbed, incomingAt, type LeafMoment } from './receives.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * Stomatal conductance of a leaf with enough water and of one without. [mol m⁻² s⁻¹] Both are always shown: water rules
 * a leaf's temperature.
 */
const STOMATA = { watered: 0.25, thirsty: 0.02 } as const;
export type Watering = keyof typeof STOMATA;

/** How far an estimate may be off, root of squares over wind, stomata, width, absorptance and ground. [K] */
export const LEAF_SPREAD = 4;

/** Share of a fruit's rise above the air that the beam makes; the sky makes the rest. A choice of this project. */
const FRUIT_BEAM_PART = 0.85;

/**
 * Temperature of a leaf that faces the sun, or of the fruit's surface where that is the row's limit, by the balance
 * itself. [°C] What asks often asks `LeafDay`.
 * @param share of the beam that reaches it, 0 to 1
 * @param absorptance of the leaf to sunlight; a fruit's surface takes no heed of it
 */
export function surfaceTemperature(
  moment: LeafMoment,
  row: PlantRow,
  watering: Watering,
  share: number,
  around: Surroundings,
  absorptance = LEAF_ABSORPTANCE,
): number {
  if (row.limitOf === 'fruit') return fruitTemperature(moment, share, around);
  return temperatureOf(moment, row, watering, absorbed(incomingAt(moment), share, around, absorptance));
}

/** Temperature of a row's leaf that takes up so much. [°C] @param takenUp of `absorbed` [W/m²] */
export function temperatureOf(moment: LeafMoment, row: PlantRow, watering: Watering, takenUp: number): number {
  const stomata = STOMATA[watering];
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
 * Surface of a fruit in the sun, water or not. [°C] In the open it rises above the air by what it does at the day's
 * warmest, 1.17·Tmax + 6.21 − Tmax (Schrader, Zhang & Sun 2003, Acta Hortic. 618:397–405, for apples; ± 3 K), 11 to
 * 14 K in the range where sun-exposed apples run 11 to 17 K above air (Schrader, ASHS 2009). Holding the surface itself
 * at the day's figure instead would put a fruit 30 K above the cool air of the morning.
 */
export function fruitTemperature(moment: LeafMoment, share: number, { sky }: Surroundings): number {
  const openRise = 0.17 * moment.airMax + 6.21;
  return moment.air + openRise * (FRUIT_BEAM_PART * share + (1 - FRUIT_BEAM_PART) * sky);
}
