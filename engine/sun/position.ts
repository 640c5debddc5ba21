import { getPosition, getTimes } from 'suncalc';
import { DEGREE } from '../plan/geometry/angles.ts';
import { sunDistance } from './distance.ts';

/** How far the refraction is solved. [°] */
const SOLVED = 1e-11;

export interface SunPosition {
  /** True bearing, 0 ≤ azimuth < 360. [°] Morning below 180, afternoon from 180 on, in both hemispheres. */
  readonly azimuth: number;
  /** Apparent (refracted) altitude of the disc's centre. [°] */
  readonly altitude: number;
  readonly distanceAu: number;
  /** True solar time, 0 ≤ solarHour < 24, 12 at the sun's transit: 12 + hour angle/15°. [h] */
  readonly solarHour: number;
}

/**
 * Where the sun stands. Within 0.02° of JPL Horizons in direction above 1° of altitude
 * (tests/outside/sun-position.test.ts).
 * @param whenMs instant, milliseconds since 1970-01-01 UTC
 * @param latitude north positive, −90 to 90 [°]
 * @param longitude east positive, −180 to 180 [°]
 */
export function sunPosition(whenMs: number, latitude: number, longitude: number): SunPosition {
  const { azimuth, altitude } = getPosition(new Date(whenMs), latitude, longitude);
  return { azimuth, altitude, distanceAu: sunDistance(whenMs), solarHour: solarHourOf(azimuth, altitude, latitude) };
}

export interface SunEvents {
  /**
   * First and last moment at which the disc's upper edge shows over a level horizon (centre at −0.833°); null where
   * that does not happen. [ms UTC]
   */
  readonly riseMs: number | null;
  readonly setMs: number | null;
  /** The sun's transit: true solar noon. [ms UTC] */
  readonly noonMs: number;
}

/**
 * Sunrise, true solar noon and sunset of the solar day whose noon is nearest to an instant.
 * Within a minute of the U.S. Naval Observatory's tables (tests/outside/sun-times.test.ts).
 * @param nearMs instant, milliseconds since 1970-01-01 UTC
 */
export function sunEvents(nearMs: number, latitude: number, longitude: number): SunEvents {
  const times = getTimes(new Date(nearMs), latitude, longitude);
  return {
    riseMs: times.sunrise?.getTime() ?? null,
    setMs: times.sunset?.getTime() ?? null,
    noonMs: times.solarNoon.getTime(),
  };
}

/**
 * True solar time from the sun's direction. The hour angle is solved from the same azimuth and altitude that the
 * shadows use, so that noon by this clock is where the azimuth passes the meridian, to the last digit.
 */
function solarHourOf(azimuth: number, altitude: number, latitude: number): number {
  const airless = airlessAltitude(altitude) * DEGREE;
  const fromSouth = (azimuth - 180) * DEGREE;
  const phi = latitude * DEGREE;
  const hourAngle = Math.atan2(
    Math.sin(fromSouth),
    Math.cos(fromSouth) * Math.sin(phi) + Math.tan(airless) * Math.cos(phi),
  );
  const hour = 12 + hourAngle / DEGREE / 15;
  return hour >= 24 ? hour - 24 : hour;
}

/**
 * Altitude without refraction: suncalc's own lift (Meeus 16.4, held at its value at 0° for altitudes below) taken off
 * again. [°]
 */
function airlessAltitude(apparent: number): number {
  let airless = apparent - refraction(apparent);
  // The lift changes by less than 0.15 of the altitude's change, so each turn gains a digit or more.
  for (let before = apparent; Math.abs(airless - before) > SOLVED;) {
    before = airless;
    airless = apparent - refraction(airless);
  }
  return airless;
}

function refraction(airless: number): number {
  const h = Math.max(0, airless) * DEGREE;
  return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179)) / DEGREE;
}
