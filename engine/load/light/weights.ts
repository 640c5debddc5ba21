import { radiansOf } from '../../plan/geometry/angles.ts';
import { stateOf } from '../../scene/build.ts';
import type { Scene } from '../../scene/solids.ts';
import type { SampleTable } from '../../sun/samples.ts';
import { meanWithinUnit, normalShare } from './normal.ts';

/**
 * The sun shines where the beam on a surface facing it is above this (World Meteorological Organization, sunshine
 * duration). [W/m²]
 */
const SUNSHINE_BEAM = 120;
/**
 * The hot load counts the beam in full from 38 °C air, not at all below 28 °C, linear between: this project's own
 * index. [°C], [K]
 */
const HOT_LOAD_FROM = 28;
const HOT_LOAD_RANGE = 10;
const MJ_PER_WATT_HOUR = 0.0036;
/**
 * Photosynthetic light in sunlight: 0.45 of the energy × 4.48 µmol/J (Faust & Logan 2018, HortScience 53:1250);
 * published factors run 1.96 to 2.30. [mol/MJ]
 */
export const MOL_PER_MJ = 2.018;
/** Under a closed sky a third of the clear sky's light is left (Ångström–Prescott with FAO 56's 0.25 and 0.50). */
const OVERCAST_PART = 1 / 3;

/** What `Channels` are summed for, in the order in which they are cast. */
export const CHANNELS = ['sunHours', 'morningHours', 'hotHours', 'beamDose', 'hotLoad', 'beamLight'] as const;
export type Channel = (typeof CHANNELS)[number];

/**
 * Every quantity of a spot is Σ share × weight; here are the weights, already divided by the days of the period. One
 * value a sample. Afternoon hours are sun hours less morning hours; `beamLight` is the part of the daily light that
 * comes from the sun and the glow round it, and is stopped with the beam.
 */
type Channels = Readonly<Record<Channel, Float64Array>>;

/** What a yearly state of the yard counts for in the means of a period. */
interface SkyPart {
  /** Index into `scene.states`. */
  readonly state: number;
  /** Share of the period's days. */
  readonly days: number;
  /** Daily light from an open sky on those days, already divided by all days of the period. [mol/m²] */
  readonly light: number;
}

export interface Weights {
  readonly channels: Channels;
  /** One entry a state that occurs; their `days` add up to 1. */
  readonly sky: readonly SkyPart[];
  /** Daily light from an open sky on each day, divided by all days of the period. [mol/m²] */
  readonly skyLightOfDay: Float64Array;
}

/**
 * Weights of a period's samples.
 * @param hotAir hot hours count from this air temperature on [°C]
 */
export function weightsOf(scene: Scene, samples: SampleTable, hotAir: number): Weights {
  const { count, dayOf } = samples;
  const perDay = 1 / samples.days.length;
  const channels = {
    sunHours: new Float64Array(count),
    morningHours: new Float64Array(count),
    hotHours: new Float64Array(count),
    beamDose: new Float64Array(count),
    hotLoad: new Float64Array(count),
    beamLight: new Float64Array(count),
  };
  const skyLightOfDay = new Float64Array(samples.days.length);
  for (let k = 0; k < count; k++) {
    const hours = samples.hours[k] * perDay;
    const sunny = samples.sunshine[k];
    const beam = samples.beam[k];
    const air = samples.air[k];
    const spread = samples.spread[k];
    if (beam > SUNSHINE_BEAM) {
      channels.sunHours[k] = sunny * hours;
      if (samples.azimuth[k] < 180) channels.morningHours[k] = sunny * hours;
      channels.hotHours[k] = sunny * hours * chanceOfHeat(air, spread, hotAir);
    }
    const dose = sunny * beam * hours * MJ_PER_WATT_HOUR;
    channels.beamDose[k] = dose;
    channels.hotLoad[k] = dose * meanWithinUnit((air - HOT_LOAD_FROM) / HOT_LOAD_RANGE, spread / HOT_LOAD_RANGE);
    const glow = samples.glow[k] * samples.diffuse[k];
    const fromSun = sunny * (beam * Math.sin(radiansOf(samples.altitude[k])) + glow);
    channels.beamLight[k] = fromSun * hours * MJ_PER_WATT_HOUR * MOL_PER_MJ;
    const skyPower = sunny * (samples.diffuse[k] - glow) + (1 - sunny) * samples.global[k] * OVERCAST_PART;
    skyLightOfDay[dayOf[k]] += skyPower * hours * MJ_PER_WATT_HOUR * MOL_PER_MJ;
  }
  return { channels, sky: skyParts(scene, samples, skyLightOfDay), skyLightOfDay };
}

/**
 * Chance that the air is at or above a temperature.
 * @param spread standard deviation about the mean [K]; 0: it is or it is not
 */
export function chanceOfHeat(air: number, spread: number, hotAir: number): number {
  if (spread <= 0) return air >= hotAir ? 1 : 0;
  return normalShare((air - hotAir) / spread);
}

function skyParts(scene: Scene, samples: SampleTable, skyLightOfDay: Float64Array): SkyPart[] {
  const parts = new Map<number, { state: number; days: number; light: number }>();
  for (const [index, day] of samples.days.entries()) {
    const state = stateOf(scene, day.monthDay);
    const part = parts.get(state) ?? { state, days: 0, light: 0 };
    part.days += 1 / samples.days.length;
    part.light += skyLightOfDay[index];
    parts.set(state, part);
  }
  return [...parts.values()];
}
