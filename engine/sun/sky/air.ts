import { DEGREE } from '../../plan/geometry/angles.ts';

/**
 * True solar time of the day's highest air temperature. [h] De Wit et al.; on hourly means of four hot sites 14 h fits
 * better than 13 or 15.
 */
const WARMEST_HOUR = 14;

/**
 * Sunrise by true solar time, centre of the disc, no refraction. [h] 0 where the sun never sets, 12 where it never
 * rises. The air's own simple sunrise: its declination is a formula of the day of the year and not the ephemeris's.
 * @param latitude [°]
 * @param dayOfYear 1 to 366
 */
export function airSunrise(latitude: number, dayOfYear: number): number {
  const sinDeclination =
    -0.39779 * Math.cos((0.98565 * (dayOfYear + 10) + 1.914 * Math.sin(0.98565 * (dayOfYear - 2) * DEGREE)) * DEGREE);
  const tanDeclination = sinDeclination / Math.sqrt(1 - sinDeclination * sinDeclination);
  const cosHourAngle = Math.min(1, Math.max(-1, -Math.tan(latitude * DEGREE) * tanDeclination));
  return 12 - Math.acos(cosHourAngle) / DEGREE / 15;
}

/**
 * Air temperature through a mean day: two cosines, lowest at sunrise, highest at 14 h. [°C]
 * @param solarHour true solar time, 0 to 24 [h]
 * @param high @param low of the day [°C]
 * @param sunrise of {@link airSunrise} [h]
 * Source: de Wit et al. (1978), after Reicosky et al. (1989), Agric. For. Meteorol. 46:193–209 (equations from memory).
 */
export function airTemperature(solarHour: number, high: number, low: number, sunrise: number): number {
  const mean = (high + low) / 2;
  const half = (high - low) / 2;
  if (solarHour >= sunrise && solarHour <= WARMEST_HOUR) {
    return mean - half * Math.cos((Math.PI * (solarHour - sunrise)) / (WARMEST_HOUR - sunrise));
  }
  const since = solarHour > WARMEST_HOUR ? solarHour - WARMEST_HOUR : solarHour + 24 - WARMEST_HOUR;
  return mean + half * Math.cos((Math.PI * since) / (24 - WARMEST_HOUR + sunrise));
}
