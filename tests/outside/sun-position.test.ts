import { describe, expect, it } from 'vitest';
import { sunPosition } from '../../engine/sun/position.ts';
import { separation } from './directions.ts';
import { TOLERANCES } from './tolerances.ts';

const at = (iso: string) => Date.parse(iso);

// Reda & Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302 (2004, rev. 2008), Table
// A5.1;
// numbers as in pvlib-python 6382338a tests/test_solarposition.py. Golden, Colorado, 1830.14 m, 820 mbar, 11 °C.
describe('NREL worked example of the Solar Position Algorithm', () => {
  const latitude = 39.742476;
  const longitude = -105.1786;

  it.each([
    { case: 'the example', when: '2003-10-17T12:30:30-07:00', azimuth: 194.340241, zenith: 50.111622 },
    { case: 'a day later', when: '2003-10-18T12:30:30-07:00', azimuth: 194.311132, zenith: 50.47826 },
    { case: 'with 900 mbar', when: '2003-10-17T12:30:30-07:00', azimuth: 194.340241, zenith: 50.11003 },
  ])('$case: the direction of the sun', ({ when, azimuth, zenith }) => {
    const sun = sunPosition(at(when), latitude, longitude);
    expect(separation(sun, { azimuth, altitude: 90 - zenith })).toBeLessThan(TOLERANCES.sunDirection.max);
  });

  it('the hour angle, the equation of time and the distance', () => {
    const when = at('2003-10-17T12:30:30-07:00');
    const sun = sunPosition(when, latitude, longitude);
    expect(Math.abs((sun.solarHour - 12) * 15 - 11.105902)).toBeLessThan(TOLERANCES.hourAngle.max);
    expect(Math.abs(equationOfTime(when, longitude, latitude) - 14.64)).toBeLessThan(TOLERANCES.equationOfTime.max);
    expect(Math.abs(sun.distanceAu - 0.996542)).toBeLessThan(TOLERANCES.sunDistance.max);
  });
});

// JPL Horizons, topocentric apparent, refracted; mourner/suncalc 886bda41 test/fixtures.json, generated 2026-06-17 from
// ssd.jpl.nasa.gov/api/horizons.api.
const HORIZONS = [
  {
    place: 'Istanbul',
    latitude: 41.01384,
    longitude: 28.94966,
    rows: [
      ['2026-06-21T06:00Z', 89.094224, 36.281327],
      ['2026-06-21T12:00Z', 242.380255, 60.403174],
      ['2026-07-06T06:00Z', 89.37544, 35.285687],
      ['2026-07-06T12:00Z', 240.280751, 60.351338],
      ['2026-09-23T12:00Z', 222.187523, 40.223471],
      ['2026-12-21T06:00Z', 126.738675, 4.732029],
    ],
  },
  {
    place: 'Lima',
    latitude: -12.04318,
    longitude: -77.02824,
    rows: [
      ['2026-01-10T12:00Z', 109.796904, 14.684562],
      ['2026-01-25T18:00Z', 233.310614, 78.314342],
      ['2026-03-20T18:00Z', 316.806955, 73.621271],
      ['2026-06-21T18:00Z', 340.969078, 52.481136],
      ['2026-12-21T18:00Z', 226.408864, 72.900501],
    ],
  },
  {
    place: 'Buenos Aires',
    latitude: -34.61315,
    longitude: -58.37723,
    rows: [
      ['2026-01-03T12:00Z', 93.818929, 37.259304],
      ['2026-01-18T18:00Z', 291.422014, 60.792286],
      ['2026-06-21T12:00Z', 52.74451, 9.581909],
      ['2026-12-21T18:00Z', 283.198014, 59.978949],
    ],
  },
] as const;

describe('JPL Horizons', () => {
  const errors = HORIZONS.flatMap(({ place, latitude, longitude, rows }) =>
    rows.map(([when, azimuth, altitude]) => ({
      place,
      when,
      error: separation(sunPosition(at(when), latitude, longitude), { azimuth, altitude }),
    })),
  );

  it.each(errors)('$place, $when', ({ error }) => {
    expect(error).toBeLessThan(TOLERANCES.sunDirection.max);
  });

  it('on the mean of all rows', () => {
    expect(errors).toHaveLength(15);
    expect(errors.reduce((sum, { error }) => sum + error, 0) / errors.length).toBeLessThan(
      TOLERANCES.sunDirection.mean,
    );
  });
});

// ASHRAE's older clear-day table, 21st of the month, base year 1964; EnergyPlus 051dd5fc doc climate-calculations.tex.
describe('the old ASHRAE table', () => {
  it.each([
    { day: '06-21', minutes: -1.4, declination: 23.45 },
    { day: '07-21', minutes: -6.2, declination: 20.6 },
    { day: '08-21', minutes: -2.4, declination: 12.3 },
    { day: '09-21', minutes: 7.5, declination: 0 },
    { day: '12-21', minutes: 1.6, declination: -23.45 },
    { day: '01-21', minutes: -11.2, declination: -20 },
  ])('equation of time and declination of $day', ({ day, minutes, declination }) => {
    const noon = at(`1964-${day}T12:00Z`);
    expect(Math.abs(equationOfTime(noon, 0, 40) - minutes)).toBeLessThan(TOLERANCES.equationOfTimeOldTable.max);
    // At 45° N the transit stands at 45° + declination, lifted by 0.05° at most.
    const transit = sunPosition(noon - minutes * 60_000, 45, 0).altitude;
    expect(Math.abs(transit - 45 - declination)).toBeLessThan(TOLERANCES.declinationOldTable.max);
  });
});

/** True minus mean solar time. [min] */
function equationOfTime(whenMs: number, longitude: number, latitude: number): number {
  const meanHour = (whenMs / 3_600_000 + longitude / 15) % 24;
  const difference = sunPosition(whenMs, latitude, longitude).solarHour - meanHour;
  return (((difference + 36) % 24) - 12) * 60;
}
