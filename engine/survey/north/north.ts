import { dateOfMoment, clockOfMoment } from '../../plan/dates/parts.ts';
import { elevationOf } from '../../plan/defaults.ts';
import { degreesOf, turnBetween, wrapBearing } from '../../plan/geometry/angles.ts';
import { distance } from '../../plan/geometry/shapes.ts';
import type { ClockTime, NorthObservation, PlanPoint } from '../../plan/types.ts';
import { type Estimate, type Finding, found, type Refusal, refused } from '../estimate.ts';
import { defaultPm, LINE_PM } from '../known-by.ts';
import { type Place, type SunAt, sunAt } from '../place/sun-at.ts';
import { planDirectionOf } from './bearing.ts';
import { declinationAt } from './declination.ts';
import { FASTEST_SWING, HIGH_SUN, HIGHEST_SUN, LOWEST_SUN, northTimes, windowWords } from './times.ts';

/** What one look at the yard says of north. */
export interface NorthSighting {
  readonly by: NorthObservation['by'];
  /** True bearing of the plan's +y. [°] */
  readonly upBearing: Estimate;
  /** A wall's line has two ends: the other answer, half a turn away. [°] */
  readonly otherEnd?: number;
  /** Where the sun stood, for sightings by the sun. */
  readonly sun?: { readonly azimuth: number; readonly altitude: number; readonly swing: number };
}

/** A clock read, a line scratched: [minutes] Our choice. */
export const CLOCK_MINUTES = 2;
/** The minute at which a wall's own shadow vanishes is harder to tell. [minutes] Our choice. */
const VANISH_MINUTES = 4;
/** A line shorter than this tells no direction. [m] */
const SHORTEST_LINE = 0.2;

export interface SightingOptions {
  /** How far the minute may be off. [minutes] */
  readonly minutes?: number;
  /** For the two ends of a line that both fit: the bearing that is already believed. [°] */
  readonly near?: number;
}

/**
 * North from the shadow of a plumb pole, or of a wall's upright end.
 * @param line The shadow on the plan: from the pole's foot to the shadow's tip, or any two points of it in that order.
 * @returns ± = √((line ±)² + (swing · minutes)²), line ± = atan(0.02 m / length).
 */
export function northFromShadow(
  place: Place,
  line: readonly [PlanPoint, PlanPoint],
  when: ClockTime,
  options: SightingOptions = {},
): Finding<NorthSighting> {
  const looked = look(place, line, when);
  if (!looked.ok) return looked;
  const sun = looked.value;
  const upBearing = wrapBearing(sun.azimuth + 180 - planDirectionOf(line[0], line[1]));
  return found(
    {
      by: 'shadow',
      upBearing: { value: upBearing, pm: sightingPm(line, sun, options.minutes ?? CLOCK_MINUTES) },
      sun: seen(sun),
    },
    looked.notes,
  );
}

/**
 * North from the minute at which a straight wall has no shadow on either side: the sun then stands over its line.
 * @param along Two points of the wall. Which end the sun is over cannot be told; the end that agrees with `near` is
 *   taken.
 */
export function northFromVanishing(
  place: Place,
  along: readonly [PlanPoint, PlanPoint],
  when: ClockTime,
  options: SightingOptions = {},
): Finding<NorthSighting> {
  const looked = look(place, along, when);
  if (!looked.ok) return looked;
  const sun = looked.value;
  const oneEnd = wrapBearing(sun.azimuth - planDirectionOf(along[0], along[1]));
  const otherEnd = wrapBearing(oneEnd + 180);
  const near = options.near ?? 0;
  const flipped = Math.abs(turnBetween(near, otherEnd)) < Math.abs(turnBetween(near, oneEnd));
  const upBearing = {
    value: flipped ? otherEnd : oneEnd,
    pm: sightingPm(along, sun, options.minutes ?? VANISH_MINUTES),
  };
  return found({ by: 'vanish', upBearing, otherEnd: flipped ? oneEnd : otherEnd, sun: seen(sun) }, [
    ...looked.notes,
    `The sun may have stood over either end of the wall: taken is ${upBearing.value.toFixed(0)}°, the other ` +
      `answer would be ${(flipped ? oneEnd : otherEnd).toFixed(0)}°.`,
  ]);
}

/**
 * North from a compass laid along a line of the plan.
 * @param reading What the needle says the line's bearing is, from `along[0]` to `along[1]`. [°]
 * @param declination East positive; by the World Magnetic Model of the year where it is left out. [°]
 */
export function northFromCompass(
  place: Place,
  reading: number,
  along: readonly [PlanPoint, PlanPoint],
  year: number,
  declination?: number,
): Finding<NorthSighting> {
  const length = distance(along[0], along[1]);
  if (length < SHORTEST_LINE) return refused(tooShort(length));
  const model =
    declination === undefined
      ? declinationAt(place.latitude, place.longitude, elevationOf(place), year)
      : { declination, notes: [] };
  const pm = Math.hypot(defaultPm('compass', reading, 'bearing'), linePm(length));
  const upBearing = wrapBearing(reading + model.declination - planDirectionOf(along[0], along[1]));
  const words =
    `True north taken ${Math.abs(model.declination).toFixed(1)}° ` +
    `${model.declination < 0 ? 'east' : 'west'} of the needle.`;
  return found({ by: 'compass', upBearing: { value: upBearing, pm } }, [
    `${words} Hold the compass 2 m from steel, cars and reinforced walls.`,
    ...model.notes,
  ]);
}

/** One line of a plan's `northFrom`; its own `pm` wins over ours. @param year Of the plan, for the declination. */
export function northFrom(
  place: Place,
  observation: NorthObservation,
  year: number,
  near?: number,
): Finding<NorthSighting> {
  const finding = sight(place, observation, year, near);
  if (!finding.ok || observation.pm === undefined) return finding;
  return {
    ...finding,
    value: { ...finding.value, upBearing: { value: finding.value.upBearing.value, pm: observation.pm } },
  };
}

function sight(place: Place, observation: NorthObservation, year: number, near?: number): Finding<NorthSighting> {
  switch (observation.by) {
    case 'shadow':
      return northFromShadow(place, observation.line, observation.when);
    case 'vanish':
      return northFromVanishing(place, observation.along, observation.when, { near });
    case 'compass':
      return northFromCompass(place, observation.reading, observation.along, year, observation.declination);
    case 'picture':
      return found({
        by: 'picture',
        upBearing: {
          value: wrapBearing(observation.bearing),
          pm: defaultPm('picture', observation.bearing, 'bearing'),
        },
      });
  }
}

/** Refuses a line too short and a sun too high, too low or too fast; warns of a high one. */
function look(place: Place, line: readonly [PlanPoint, PlanPoint], when: ClockTime): Finding<SunAt> {
  const length = distance(line[0], line[1]);
  if (length < SHORTEST_LINE) return refused(tooShort(length));
  const finding = sunAt(when, place);
  if (!finding.ok) return finding;
  const sun = finding.value;
  const refusal = refuseSun(sun, place, when);
  if (refusal !== null) return refusal;
  if (sun.altitude <= HIGH_SUN) return finding;
  return found(sun, [
    `The sun stood ${sun.altitude.toFixed(0)}° high: the shadow is short and swings ${swingWords(sun)}. Better: ` +
      `${better(place, when)}.`,
  ]);
}

function refuseSun(sun: SunAt, place: Place, when: ClockTime): Refusal | null {
  const clock = clockOfMoment(when);
  if (sun.altitude < LOWEST_SUN) {
    const stands = sun.altitude < 0 ? 'is below the horizon' : `stands only ${sun.altitude.toFixed(0)}° high`;
    return refused(
      `At ${clock} the sun ${stands}: its shadow cannot be drawn well enough. Try ${better(place, when)}. Is the ` +
        `clock right (${place.timeZone})?`,
    );
  }
  if (sun.altitude > HIGHEST_SUN || Math.abs(sun.swing) > FASTEST_SWING) {
    return refused(
      `At ${clock} the sun stands ${sun.altitude.toFixed(0)}° high and swings ${swingWords(sun)}: no guide to ` +
        `north. Try ${better(place, when)}.`,
    );
  }
  return null;
}

function better(place: Place, when: ClockTime): string {
  return `${windowWords(northTimes(place, dateOfMoment(when)))} that day`;
}

function swingWords(sun: SunAt): string {
  return `${Math.abs(sun.swing).toFixed(1)}° a minute`;
}

function tooShort(length: number): string {
  return (
    `A line of ${length.toFixed(2)} m is too short to tell a direction: draw at least ` +
    `${SHORTEST_LINE.toFixed(1)} m, better 2 m.`
  );
}

function sightingPm(line: readonly [PlanPoint, PlanPoint], sun: SunAt, minutes: number): number {
  return Math.hypot(linePm(distance(line[0], line[1])), sun.swing * minutes);
}

function linePm(length: number): number {
  return degreesOf(Math.atan(LINE_PM / length));
}

function seen(sun: SunAt): NorthSighting['sun'] {
  return { azimuth: sun.azimuth, altitude: sun.altitude, swing: sun.swing };
}
