import { turnBetween } from '../../plan/geometry/angles.ts';
import type { ClockTime, Site } from '../../plan/types.ts';
import { instantOf, isTimeZone } from '../../sun/days/zone.ts';
import { sunPosition } from '../../sun/position.ts';
import { type Finding, found, refused } from '../estimate.ts';

/** Where observations are made: of a plan's `site`, what the sun needs. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  readonly elevation?: Site['elevation'];
}

export interface SunAt {
  readonly whenMs: number;
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  /** How fast the azimuth runs, clockwise positive. [°/min] */
  readonly swing: number;
  /** How fast the altitude runs. [°/min] */
  readonly climb: number;
}

/** The sun at an instant, with how fast it moves over the minute around it. */
export function sunAtMs(whenMs: number, place: Place): SunAt {
  const at = (ms: number) => sunPosition(ms, place.latitude, place.longitude);
  const { azimuth, altitude } = at(whenMs);
  const before = at(whenMs - 30_000);
  const after = at(whenMs + 30_000);
  return {
    whenMs,
    azimuth,
    altitude,
    swing: turnBetween(before.azimuth, after.azimuth),
    climb: after.altitude - before.altitude,
  };
}

/** The sun at a clock time of the place's zone; refused when the time or the zone cannot be read. */
export function sunAt(when: ClockTime, place: Place): Finding<SunAt> {
  if (!isTimeZone(place.timeZone))
    return refused(`The time zone "${place.timeZone}" is not known: it looks like "Europe/Madrid".`);
  const whenMs = instantOf(when, place.timeZone);
  if (whenMs === null) return refused(`"${when}" is no date and time: write it as 2026-05-02T10:00.`);
  return found(sunAtMs(whenMs, place));
}
