import { radiansOf, wrapBearing } from '../../plan/geometry/angles.ts';
import type { CivilDate } from '../../plan/types.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { civilDay, clockNear } from '../../sun/days/zone.ts';
import { LOWEST_SUN } from '../north/times.ts';
import { type Place, sunAtMs } from '../place/sun-at.ts';

/** Where and how long the shadow of an upright stick falls at one minute. */
export interface StickShadow {
  /** Clock time of the place's zone, "HH:MM". */
  readonly clock: string;
  readonly whenMs: number;
  /** True bearing of the sun. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  /** True bearing towards which the shadow lies. [°] */
  readonly bearing: number;
  /** The same on the plan, clockwise from +y. [°] */
  readonly direction: number;
  /** On level ground. [m] */
  readonly length: number;
}

/** Length of the shadow of something `height` high, on level ground. [m] @param altitude Above 0. [°] */
export function shadowLength(height: number, altitude: number): number {
  return height / Math.tan(radiansOf(altitude));
}

/**
 * The shadow clock of a day: an upright stick's shadow every half hour by the clock, while the sun stands 5° high or
 * more.
 * @param upBearing True bearing of the plan's +y. [°]
 * @param stick Height of the stick. [m]
 */
export function shadowTable(
  place: Place,
  date: CivilDate,
  upBearing: number,
  stick = 1,
  everyMinutes = 30,
): StickShadow[] {
  const { startMs, endMs } = civilDay(date, place.timeZone);
  const rows: StickShadow[] = [];
  for (let whenMs = startMs; whenMs < endMs; whenMs += everyMinutes * MS_PER_MINUTE) {
    const { azimuth, altitude } = sunAtMs(whenMs, place);
    if (altitude < LOWEST_SUN) continue;
    const bearing = wrapBearing(azimuth + 180);
    rows.push({
      clock: clockNear(whenMs, place.timeZone),
      whenMs,
      azimuth,
      altitude,
      bearing,
      direction: wrapBearing(bearing - upBearing),
      length: shadowLength(stick, altitude),
    });
  }
  return rows;
}
