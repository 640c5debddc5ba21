import type { Passes } from '../../cast/passes.ts';
import { createPointCaster, type PointCaster } from '../../cast/share.ts';
import { elevationOf } from '../../plan/defaults.ts';
import type { Plan } from '../../plan/types.ts';
import type { Scene } from '../../scene/solids.ts';
import { heatDays, type Period, type SampleDay, type SampleTable, samplesOf } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather.ts';
import { airPressure, saturationVapour } from './leaf-balance.ts';
import { type Leaves, leavesOf } from './leaf-day.ts';
import type { LeafMoment } from './receives.ts';
import { passesOf } from '../light/passes-of.ts';
import type { Outcome } from '../types.ts';

/** Wind at a leaf over wind above the yard, and the least it is taken to be. [m/s] */
const LEAF_WIND_SHARE = 0.3;
const LEAST_LEAF_WIND = 0.3;

/** A clear, hot day on which leaves are judged: the heatwave day, or the heat day of another month. */
export interface HeatDay {
  readonly day: SampleDay;
  readonly samples: SampleTable;
  readonly passes: Passes;
  /** Yearly state of the yard on it: index into `scene.states`. */
  readonly state: number;
  readonly caster: PointCaster;
  /** One a sample. */
  readonly moments: readonly LeafMoment[];
  readonly leaves: Leaves;
}

/**
 * @param period the heatwave day or a heat day
 * @returns the day, or why it cannot be made: the month is missing from the climate
 */
export function heatDayOf(plan: Plan, scene: Scene, period: Period, weather?: Weather): Outcome<HeatDay> {
  const sampled = samplesOf(plan, period, weather);
  if (!sampled.ok) return sampled;
  const { samples } = sampled;
  const [day] = samples.days;
  const passes = passesOf(scene, samples);
  const pressure = airPressure(elevationOf(plan.site));
  const moments = Array.from({ length: samples.count }, (_, k): LeafMoment => ({
    air: samples.air[k],
    airMax: day.high,
    vapour: (samples.humidity[k] / 100) * saturationVapour(samples.humidityAir[k]),
    pressure,
    wind: Math.max(LEAST_LEAF_WIND, LEAF_WIND_SHARE * samples.wind[k]),
    beam: samples.beam[k],
    diffuse: samples.diffuse[k],
    sinAltitude: Math.sin((samples.altitude[k] * Math.PI) / 180),
  }));
  return {
    ok: true,
    value: {
      day,
      samples,
      passes,
      state: passes.state[0] ?? 0,
      caster: createPointCaster(scene, passes),
      moments,
      leaves: leavesOf(moments, samples.hours),
    },
  };
}

/** The heat days of a season. @returns or why one cannot be made */
export function heatDaysOf(plan: Plan, scene: Scene, weather?: Weather): Outcome<HeatDay[]> {
  const periods = heatDays(plan);
  if (!periods.ok) return periods;
  const value: HeatDay[] = [];
  for (const period of periods.value) {
    const heat = heatDayOf(plan, scene, period, weather);
    if (!heat.ok) return heat;
    value.push(heat.value);
  }
  return { ok: true, value };
}

/**
 * Lets the days of several yards share their leaves where they are in the same air and light: yards that differ in
 * their features alone, or on one day.
 */
export type SharedLeaves = (heat: HeatDay) => HeatDay;

export function createSharedLeaves(): SharedLeaves {
  const known = new Map<string, Leaves>();
  return (heat) => {
    const key = heat.moments.map((moment) => Object.values(moment).join()).join(' ');
    const leaves = known.get(key) ?? heat.leaves;
    known.set(key, leaves);
    return { ...heat, leaves };
  };
}
