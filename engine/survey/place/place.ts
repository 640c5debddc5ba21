import { dayWords } from '../../plan/dates/dates.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { instantOf, clockNear } from '../../sun/days/zone.ts';
import { sunEvents } from '../../sun/position.ts';
import { sheetWord } from '../north/bearing.ts';
import { type Place, sunAtMs } from './sun-at.ts';

/** Beyond the polar circles the sun does not set in summer and no shade cloth is needed. [°] */
const POLAR_CIRCLE = 66.6;
/** Nearer to straight overhead than this, the noon sun is in no direction worth naming. [°] */
const OVERHEAD = 88;

/** When and where the sun of a day is highest. */
function highestSun(place: Place, date: string): { whenMs: number; altitude: number; azimuth: number } {
  const midday = instantOf(`${date}T12:00`, place.timeZone);
  if (midday === null) throw new RangeError(`"${date}" is no date.`);
  // Solar noon is not the moment of the greatest altitude to the second, but far closer than a person can tell.
  const { noonMs } = sunEvents(midday, place.latitude, place.longitude);
  const { altitude, azimuth } = sunAtMs(noonMs, place);
  return { whenMs: noonMs, altitude, azimuth };
}

/**
 * A line by which people notice a lost sign or swapped numbers: where their own midsummer sun would stand at its
 * highest.
 * @param year Of the plan.
 */
export function placeCheckLine(place: Place, year: number): string {
  const date = `${year}-${place.latitude < 0 ? '12' : '06'}-21`;
  const { whenMs, altitude, azimuth } = highestSun(place, date);
  const where = altitude >= OVERHEAD ? 'almost straight overhead' : `in the ${compassWord(azimuth)}`;
  return (
    `The sun stands ${altitude.toFixed(0)}° high at ${clockNear(whenMs, place.timeZone)} (${place.timeZone}) ` +
    `on ${dayWords(date)} and is ${where}: does that fit?`
  );
}

/**
 * The same for the drawing's north: over which edge of the sheet the sun of a day is highest.
 * @param upBearing True bearing of the plan's +y. [°]
 */
export function northCheckLine(place: Place, upBearing: number, date: string): string {
  const { whenMs, altitude, azimuth } = highestSun(place, date);
  const clock = clockNear(whenMs, place.timeZone);
  if (altitude >= OVERHEAD)
    return (
      `On ${dayWords(date)} at ${clock} the sun is almost straight overhead: check north by the evening ` +
      `sun instead.`
    );
  return (
    `On ${dayWords(date)} at ${clock} the sun stands over ${sheetWord(azimuth - upBearing)} of the drawing, ` +
    `in the ${compassWord(azimuth)}: does that fit?`
  );
}

/** What to say about a place before going on; none for most. */
export function placeNotes(latitude: number): string[] {
  if (Math.abs(latitude) <= POLAR_CIRCLE) return [];
  return [`At latitude ${latitude}° the summer sun hardly sets: this tool is for hot, bright places. It carries on.`];
}

/** Said where elevation is asked for: why a rough number will do. [0.3 km of elevation, sun at 60°, turbidity 3] */
export const ELEVATION_NOTE = 'Elevation may be rough: 300 m more changes the beam by about 1.5 %.';
