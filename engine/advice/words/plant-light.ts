import type { Nine, Outcome } from '../../load/types.ts';
import { lightOn } from '../../load/verdict/plant-nines.ts';
import type { PlantFeature } from '../../load/verdict/planted.ts';
import { type Yard, yardOf } from '../../load/yard.ts';
import { Kept } from '../../plan/kept.ts';
import type { Plan } from '../../plan/types.ts';
import type { Period, SampleDay } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';

/** What a plant gets on one day where its light is judged: at its top, a bed in its mean. */
export interface DayLight {
  of(feature: PlantFeature): Nine;
  /** Daily light with nothing in the way. [mol/m² a day] */
  readonly open: number;
  /** Energy on open level ground. [MJ/m² a day] */
  readonly solar: number;
  readonly day: SampleDay;
}

/**
 * @param period of a single day, or a season for its means
 * @returns the day laid out, a season's first, or why it cannot be: a month is missing from the climate
 */
export function dayLight(plan: Plan, period: Period, weather?: Weather): Outcome<DayLight> {
  const of = weather === undefined ? [plan] : [plan, weather];
  return known.of(of, JSON.stringify(period), () => laidOut(plan, period, weather));
}

/** A year's advice asks several times for one yard's light. */
const known = new Kept<Outcome<DayLight>>();

function laidOut(plan: Plan, period: Period, weather?: Weather): Outcome<DayLight> {
  const yard = yardOf(plan, period, weather);
  if (!yard.ok) return yard;
  const lights = new Map<PlantFeature, Nine>();
  return {
    ok: true,
    value: {
      of(feature) {
        let light = lights.get(feature);
        if (!light) lights.set(feature, (light = lightOn(yard.value, feature)));
        return light;
      },
      ...openOf(yard.value),
      day: yard.value.samples.days[0],
    },
  };
}

const MJ_PER_WATT_HOUR = 0.0036;
const OVERCAST_PART = 1 / 3;

function openOf({ samples, weights }: Yard): { open: number; solar: number } {
  let open = weights.sky.reduce((sum, part) => sum + part.light, 0);
  let solar = 0;
  for (let k = 0; k < samples.count; k++) {
    open += weights.channels.beamLight[k];
    const sunny = samples.sunshine[k];
    solar += (sunny + (1 - sunny) * OVERCAST_PART) * samples.global[k] * samples.hours[k] * MJ_PER_WATT_HOUR;
  }
  return { open, solar };
}
