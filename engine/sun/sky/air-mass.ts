import { DEGREE } from '../../plan/geometry/angles.ts';

/**
 * Share of the sea-level air that is above an elevation. [1] Source: ICAO standard atmosphere, as in ASHRAE
 * Fundamentals.
 * @param elevation [m]
 */
export function pressureRatio(elevation: number): number {
  return (1 - 2.25577e-5 * elevation) ** 5.25588;
}

/**
 * Relative air mass at sea level. [1] 1 overhead, about 38 at the horizon.
 * @param altitude apparent altitude, 0 to 90 [°]; the formula does not hold below the horizon
 * Source: Kasten & Young (1989), Applied Optics 28(22):4735–4738.
 */
export function relativeAirMass(altitude: number): number {
  return 1 / (Math.sin(altitude * DEGREE) + 0.50572 * (6.07995 + altitude) ** -1.6364);
}
