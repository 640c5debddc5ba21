/**
 * The package ships no types. Declination, east positive [°], rounded by the package to 0.01°; altitude in km; the year
 * decimal.
 */
declare module 'magvar' {
  export function magvar(latitude: number, longitude: number, altitudeKm: number, decimalYear: number): number;
}
