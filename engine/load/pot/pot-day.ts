/** A plan's pot on the heatwave day: the light on its eight sides, the air and the wind it stands in. */

import { potOf } from '../../plan/defaults.ts';
import type { Plan, Plant } from '../../plan/types.ts';
import { dayOfYear } from '../../sun/days/calendar.ts';
import { airSunrise, airTemperature } from '../../sun/sky/air.ts';
import type { HeatDay } from '../leaf/heat-day.ts';
import { GROUND_ALBEDO } from '../leaf/receives.ts';
import { surroundingsAt } from '../leaf/surroundings-at.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import { plantPoints, potPoints } from '../verdict/plant-points.ts';
import type { Pot, PotDay } from './pot-heat.ts';
import { POT_ABSORPTANCE, type PotColour, wallLight } from './root-zone.ts';

/** Narrower pots are reckoned as the first, wider ones as the second: at the wall they are alike. [m] */
const WIDTHS = [0.08, 1.5] as const;
/** Where nobody said: between black and white. */
const USUAL_COLOUR: PotColour = 'terracotta';

/** A pot as it stands. */
export interface StandingPot {
  readonly day: PotDay;
  readonly pot: Pot;
}

/** What a pot's wall looks like; of a colour that is none of these nothing is known. */
function potColourOf(plant: Plant): PotColour {
  const said = plant.pot?.colour ?? '';
  return isPotColour(said) ? said : USUAL_COLOUR;
}

function isPotColour(word: string): word is PotColour {
  return Object.hasOwn(POT_ABSORPTANCE, word);
}

/** The plant's own crown is in the way, as of its pot's hours of sun; other pots are not. */
export function standingPot(plan: Plan, sky: SkyViewer, heat: HeatDay, plant: Plant): StandingPot {
  const { width, height } = potOf(plant);
  const [narrowest, widest] = WIDTHS;
  return {
    day: { hour: heat.samples.solarHour, light: lightOn(plan, sky, heat, plant), airAt: airOf(plan, heat) },
    pot: {
      width: Math.min(widest, Math.max(narrowest, width)),
      height,
      absorptance: POT_ABSORPTANCE[potColourOf(plant)],
      wind: heat.moments.reduce((sum, { wind }) => sum + wind, 0) / Math.max(1, heat.moments.length),
      insulation: 0,
    },
  };
}

/** Sunlight on the wall, eight a sample. [W/m²] */
function lightOn(plan: Plan, sky: SkyViewer, heat: HeatDay, plant: Plant): Float64Array {
  const { azimuth, altitude, count } = heat.samples;
  const { own } = plantPoints(plan, plant);
  const points = potPoints(plan, plant);
  const light = new Float64Array(count * points.length);
  points.forEach(({ side, point }, n) => {
    const shares = heat.caster.sharesAt(point, own);
    const { sky: view, walls } = surroundingsAt(sky, heat, point, own);
    for (let k = 0; k < count; k++) {
      const { beam, diffuse, sinAltitude } = heat.moments[k];
      const direct = shares[k] * beam;
      const ground = (direct * sinAltitude + view * diffuse) * (1 - (walls?.ground ?? 0));
      const above = view * diffuse + (walls?.light[k] ?? 0);
      light[k * points.length + n] = wallLight(
        Number(side),
        direct,
        azimuth[k],
        altitude[k],
        above,
        ground,
        GROUND_ALBEDO,
      );
    }
  });
  return light;
}

function airOf(plan: Plan, { day }: HeatDay): (hour: number) => number {
  const sunrise = airSunrise(plan.site.latitude, dayOfYear(day.date));
  return (hour) => airTemperature(hour, day.high, day.low, sunrise);
}
