import { elevationOf } from '../../plan/defaults.ts';
import { kilometresBetween } from '../../plan/geometry/lon-lat.ts';
import type { Plan, Problem } from '../../plan/types.ts';
import { METRES_PER_FOOT } from '../../plan/units/per-unit.ts';
import type { Weather } from './weather.ts';

const KM_PER_MILE = 1.609344;

/** Farther away, or this much higher or lower, a station has weather of its own. Common practice, no source. */
const FAR_KM = 50;
const HIGH_METRES = 300;

/**
 * What a person should know before they trust a weather file for their yard, as warnings: it is from far away, from
 * another height, had gaps, or says nothing of wind or humidity.
 */
export function weatherWarnings(plan: Plan, weather: Weather): Problem[] {
  const { place, bridged } = weather;
  const imperial = plan.units === 'imperial';
  const warnings: string[] = [];
  const km = kilometresBetween(plan.site, place);
  if (km > FAR_KM)
    warnings.push(
      `The weather file was measured at ${place.name}, ` +
        `${imperial ? `${Math.round(km / KM_PER_MILE)} miles` : `${Math.round(km)} km`} from the yard.`,
    );
  const higher = place.elevation - elevationOf(plan.site);
  if (Math.abs(higher) > HIGH_METRES) {
    const by = imperial ? `${Math.round(Math.abs(higher) / METRES_PER_FOOT)} ft` : `${Math.round(Math.abs(higher))} m`;
    warnings.push(
      `The weather file was measured ${by} ${higher > 0 ? 'higher' : 'lower'} than the yard: its air is likely ` +
        `${higher > 0 ? 'cooler' : 'warmer'}.`,
    );
  }
  if (bridged > 0)
    warnings.push(
      `${bridged} missing ${bridged === 1 ? 'value' : 'values'} of the weather file ` +
        `${bridged === 1 ? 'was' : 'were'} filled in from the hours before and after.`,
    );
  warnings.push(...silences(weather));
  return warnings.map((message) => ({ pointer: '', message, severity: 'warning' }));
}

/** Quantities that the file does not know, and what is reckoned with in their place. */
function silences({ humidity, wind }: Weather): string[] {
  const instead = (words: string) =>
    `The weather file has no ${words} for some or all of the year: the plan’s months stand in there.`;
  const known = wind.filter((value) => !Number.isNaN(value));
  const constant = known.length > 0 && known.every((value) => value === known[0]);
  return [
    ...(known.length < wind.length ? [instead('wind')] : []),
    ...(constant
      ? [`The weather file has one wind all year, ${known[0]} m/s: a filled-in number, not a measured one.`]
      : []),
    ...(humidity.some(Number.isNaN) ? [instead('humidity')] : []),
  ];
}
