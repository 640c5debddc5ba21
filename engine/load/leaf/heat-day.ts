import type { Passes } from '../../cast/passes.ts';
import type { PointCaster } from '../../cast/points/point-caster.ts';
import { elevationOf } from '../../plan/defaults.ts';
import { radiansOf } from '../../plan/geometry/angles.ts';
import { Kept } from '../../plan/kept.ts';
import type { Plan, Shelter } from '../../plan/types.ts';
import { faceColours } from '../../scene/faces/face.ts';
import { shelterOf } from '../../scene/shelter.ts';
import type { Scene } from '../../scene/solids.ts';
import { heatDays, type Period, type SampleDay, type SampleTable, samplesOf } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { sunCaster } from '../light/kept-caster.ts';
import { passesOf } from '../light/passes-of.ts';
import type { Outcome } from '../types.ts';
import { hoursBefore } from './hour-before.ts';
import { airPressure, saturationVapour } from './leaf-balance.ts';
import { type Leaves, leavesOf } from './leaf-day.ts';
import type { LeafMoment } from './receives.ts';

/**
 * Wind at a leaf over wind above the yard, by the yard's shelter: the orders of FAO-56 eq. 47 and of shelter behind
 * windbreaks (Heisler & DeWalle 1988); from memory. And the least it is taken to be. [m/s]
 */
export const LEAF_WIND_SHARE: Readonly<Record<Shelter, number>> = { open: 0.45, sheltered: 0.3, court: 0.15 };
export const LEAST_LEAF_WIND = 0.15;

/** The glow round a low sun does not grow on a surface that faces it below this sine of the altitude. */
const LEAST_GLOW_SINE = 0.1;

/** A clear, hot day on which leaves are judged: the heatwave day, or the heat day of another month. */
export interface HeatDay {
  readonly day: SampleDay;
  readonly samples: SampleTable;
  readonly passes: Passes;
  /** Yearly state of the yard on it: index into `scene.states`. */
  readonly state: number;
  readonly caster: PointCaster;
  /** Of the yard, from the wind. */
  readonly shelter: Shelter;
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
  const { shelter } = shelterOf(plan);
  const passes = passesOf(scene, samples);
  const colours = faceColours(scene.states[0] ?? []);
  const air = knownAir.of([plan.site, samples], `${shelter} ${colours}`, () => {
    const moments = momentsOf(plan, scene, samples, shelter);
    return { moments, leaves: leavesOf(moments, samples.hours, colours) };
  });
  const state = passes.state[0] ?? 0;
  return { ok: true, value: { day, samples, passes, state, caster: sunCaster(scene, samples), shelter, ...air } };
}

/** Yards in the same air share their leaves, and one yard in another air what reaches its points. */
const knownAir = new Kept<Pick<HeatDay, 'moments' | 'leaves'>>();

function momentsOf(plan: Plan, scene: Scene, samples: SampleTable, shelter: Shelter): LeafMoment[] {
  const [day] = samples.days;
  const pressure = airPressure(elevationOf(plan.site));
  const windShare = LEAF_WIND_SHARE[shelter];
  const light = Array.from({ length: samples.count }, (_, k) => {
    const sinAltitude = Math.sin(radiansOf(samples.altitude[k]));
    const glow = samples.glow[k] * samples.diffuse[k];
    return {
      beam: samples.beam[k] + glow / Math.max(sinAltitude, LEAST_GLOW_SINE),
      diffuse: samples.diffuse[k] - glow,
      sinAltitude,
    };
  });
  const hours = hoursBefore(scene, samples, light);
  return light.map((each, k): LeafMoment => ({
    air: samples.air[k],
    airMax: day.high,
    vapour: (samples.humidity[k] / 100) * saturationVapour(samples.humidityAir[k]),
    pressure,
    wind: Math.max(LEAST_LEAF_WIND, windShare * samples.wind[k]),
    ...each,
    hour: hours[k],
  }));
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
