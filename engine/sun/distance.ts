import { DEGREE } from '../plan/geometry/angles.ts';
import { MS_PER_DAY } from '../plan/units/per-unit.ts';

/**
 * J2000.0, 2000-01-01 12:00, as milliseconds since 1970. The minute between UT and TD moves the distance by less than
 * 1e-7 au.
 */
const J2000_MS = 946_728_000_000;
const DAYS_PER_CENTURY = 36_525;

/**
 * Distance of the sun. [au] Within 1e-4 au of an ephemeris from 1900 to 2100.
 * @param whenMs instant, milliseconds since 1970-01-01 UTC
 * Source: Meeus (1998), Astronomical Algorithms, 2nd ed., ch. 25, eqs. 25.3 to 25.5.
 */
export function sunDistance(whenMs: number): number {
  const t = (whenMs - J2000_MS) / MS_PER_DAY / DAYS_PER_CENTURY;
  const meanAnomaly = (357.52911 + t * (35_999.05029 - 0.0001537 * t)) * DEGREE;
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const centre =
    (1.914602 - t * (0.004817 + 0.000014 * t)) * Math.sin(meanAnomaly) +
    (0.019993 - 0.000101 * t) * Math.sin(2 * meanAnomaly) +
    0.000289 * Math.sin(3 * meanAnomaly);
  const trueAnomaly = meanAnomaly + centre * DEGREE;
  return (1.000001018 * (1 - eccentricity * eccentricity)) / (1 + eccentricity * Math.cos(trueAnomaly));
}
