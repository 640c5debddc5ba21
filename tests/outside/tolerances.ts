/** How far the engine may be from a published value: `mean` over all cases of a check, `max` in any one of them. */
export interface Tolerance {
  readonly unit: string;
  readonly mean?: number;
  readonly max: number;
  readonly reason: string;
}

/** One row a quantity, for every check against something outside the project. */
export const TOLERANCES = {
  sunDirection: {
    unit: '°',
    mean: 0.007,
    max: 0.02,
    reason:
      'above 1° of altitude; low-order series, refraction for sea level: 0.0145° measured between libraries, ' +
      '0.0095° to JPL Horizons',
  },
  sunAltitudeNearHorizon: {
    unit: '°',
    max: 0.1,
    reason: 'between 0° and 1°; libraries differ in refraction below the horizon',
  },
  sunAzimuthOnSky: {
    unit: '°',
    max: 0.015,
    reason: 'azimuth difference × cos(altitude): near the zenith azimuth alone means little',
  },
  airlessAltitude: { unit: '°', max: 0.006, reason: 'no parallax (0.0024°) and low-order series' },
  hourAngle: { unit: '°', max: 0.02, reason: 'no parallax, low-order series: 0.02° is 5 s' },
  sunEventInMinutes: { unit: 's', mean: 20, max: 60, reason: 'source in whole minutes' },
  sunEventInSeconds: { unit: 's', max: 20, reason: 'source in seconds; refraction at the horizon' },
  equationOfTimeOldTable: { unit: 'min', max: 0.7, reason: 'table for 1964, rounded; 0.64 on 21 August' },
  equationOfTime: { unit: 'min', max: 0.05, reason: 'source to 0.01 min' },
  declinationOldTable: {
    unit: '°',
    max: 0.7,
    reason: 'the table sets the equinox on 21 September, a day and a half early: 0.6° there, 0.3° in other months',
  },
  sunDistance: { unit: 'au', max: 2e-4, reason: 'low-order series' },
  distanceFactor: {
    unit: '1',
    max: 9e-4,
    reason: "(r0/r)²; Spencer's series itself overstates the sun's swing by 8.5e-4 at its ends",
  },
  airMass: { unit: 'relative', max: 1e-4, reason: 'same formula, quoted to four decimals' },
  pressure: { unit: 'relative', max: 2e-5, reason: 'two forms of one atmosphere; at 8,000 m 2e-4' },
  pressureWarmAtmosphere: {
    unit: 'kPa',
    max: 0.4,
    reason: 'FAO assumes 20 °C at sea level, the standard atmosphere 15 °C',
  },
  clearSkyFormula: { unit: 'W/m²', max: 0.01, reason: 'same formula, same input' },
  clearDayTotal: { unit: 'relative', max: 0.005, reason: 'same formulas, distance and steps differ' },
  clearDaySunHours: { unit: 'h', max: 0.1, reason: 'steps of 5 minutes at both ends of the day' },
  clearDayBeam: { unit: 'relative', max: 0.01, reason: 'ASHRAE 2009 clear day, turbidity fitted to its beam' },
  clearDayGlobal: {
    unit: 'relative',
    mean: 0.05,
    max: 0.07,
    reason: 'two models of one clear day, ours always the lower',
  },
  topOfAirDayTotal: {
    unit: 'relative',
    max: 0.007,
    reason: 'FAO 56 in June, July, December: 0.41 % of it is the solar constant',
  },
  topOfAirDayTotalOtherMonths: {
    unit: 'relative',
    max: 0.032,
    reason: "FAO 56 in the other months: its declination lags the sun's",
  },
  daylightHours: { unit: 'h', max: 0.2, reason: 'FAO 56 counts the centre at 0° without refraction' },
  dailyLight: { unit: 'mol/m²', max: 0.06, reason: 'the factor is exact, the source rounds to 0.1; in truth ± 7 %' },
  weatherHour: { unit: 'Wh/m²', max: 3, reason: 'rms over a year; half an hour off gives 93' },
  airCurve: { unit: 'K', max: 1, reason: 'rms of a mean day' },
  airCurveMean: { unit: 'K', max: 0.5, reason: 'mean over the day' },
  airCurveFormula: { unit: 'K', max: 0.0006, reason: 'same formula, quoted to three decimals' },
} as const satisfies Record<string, Tolerance>;
