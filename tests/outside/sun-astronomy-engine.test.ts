import { Body, Equator, Horizon, Observer, SearchHourAngle, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sunEvents, sunPosition } from '../../engine/sun/position.ts';
import { azimuthDifference, separation } from './directions.ts';
import { TOLERANCES } from './tolerances.ts';

// Reference: astronomy-engine 2.1.19 (VSOP87, topocentric, within 0.001° of JPL Horizons).

const SEED = 20_260_621;
const RAD = Math.PI / 180;
const DAY_MS = 86_400_000;

const place = fc.record({
  latitude: fc.double({ min: -45, max: 45, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});
const instant = fc.integer({ min: Date.UTC(2000, 0, 1), max: Date.UTC(2049, 11, 31) });

describe('the sun beside astronomy-engine', () => {
  const cases = fc
    .sample(fc.record({ place, instant }), { numRuns: 4000, seed: SEED })
    .map(({ place: { latitude, longitude }, instant: ms }) => {
      const observer = new Observer(latitude, longitude, 0);
      const equator = Equator(Body.Sun, new Date(ms), observer, true, true);
      const airless = Horizon(new Date(ms), observer, equator.ra, equator.dec);
      const theirs = { azimuth: airless.azimuth, altitude: airless.altitude + refraction(airless.altitude) };
      return { ours: sunPosition(ms, latitude, longitude), theirs, distance: equator.dist };
    });
  const up = cases.filter(({ theirs }) => theirs.altitude > 1);

  it('stands in the same direction above 1° of altitude', () => {
    expect(up.length).toBeGreaterThan(1500);
    const errors = up.map(({ ours, theirs }) => separation(ours, theirs));
    expect(Math.max(...errors)).toBeLessThan(TOLERANCES.sunDirection.max);
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(TOLERANCES.sunDirection.mean);
  });

  it('has the same azimuth as seen on the sky', () => {
    for (const { ours, theirs } of up) {
      const onSky = Math.abs(azimuthDifference(ours.azimuth, theirs.azimuth)) * Math.cos(theirs.altitude * RAD);
      expect(onSky).toBeLessThan(TOLERANCES.sunAzimuthOnSky.max);
    }
  });

  it('has the same altitude just above the horizon, within what refraction there is known to', () => {
    const low = cases.filter(({ theirs }) => theirs.altitude >= 0 && theirs.altitude <= 1);
    expect(low.length).toBeGreaterThan(10);
    for (const { ours, theirs } of low)
      expect(Math.abs(ours.altitude - theirs.altitude)).toBeLessThan(TOLERANCES.sunAltitudeNearHorizon.max);
  });

  it('is as far away', () => {
    for (const { ours, distance } of cases)
      expect(Math.abs(ours.distanceAu - distance)).toBeLessThan(TOLERANCES.sunDistance.max);
  });
});

describe('true solar time beside astronomy-engine', () => {
  it('is noon at the transit and 18 h a quarter turn later, day or night', () => {
    const cases = fc.sample(fc.record({ place, instant }), { numRuns: 150, seed: SEED + 1 });
    for (const {
      place: { latitude, longitude },
      instant: ms,
    } of cases) {
      for (const hours of [0, 6, 15]) {
        const event = SearchHourAngle(Body.Sun, new Observer(latitude, longitude, 0), hours, new Date(ms));
        const ours = sunPosition(event.time.date.getTime(), latitude, longitude).solarHour;
        const off = ((((ours - 12 - hours + 36) % 24) + 24) % 24) - 12;
        expect(Math.abs(off) * 15).toBeLessThan(TOLERANCES.hourAngle.max);
      }
    }
  });
});

describe('sunrise, noon and sunset beside astronomy-engine', () => {
  it('agree within seconds', () => {
    const cases = fc.sample(fc.record({ place, instant }), { numRuns: 150, seed: SEED + 2 });
    for (const {
      place: { latitude, longitude },
      instant: ms,
    } of cases) {
      const observer = new Observer(latitude, longitude, 0);
      const noon = SearchHourAngle(Body.Sun, observer, 0, new Date(ms)).time.date;
      const rise = SearchRiseSet(Body.Sun, observer, +1, new Date(noon.getTime() - DAY_MS / 2), 1)?.date;
      const set = SearchRiseSet(Body.Sun, observer, -1, noon, 1)?.date;
      const ours = sunEvents(noon.getTime() + 3_600_000, latitude, longitude);
      for (const [mine, theirs] of [
        [ours.noonMs, noon],
        [ours.riseMs, rise],
        [ours.setMs, set],
      ] as const) {
        expect(Math.abs((mine ?? NaN) - (theirs?.getTime() ?? NaN)) / 1000).toBeLessThan(
          TOLERANCES.sunEventInSeconds.max,
        );
      }
    }
  });
});

/** Lift of a star by the air at 1010 mbar and 10 °C. [°] Source: Meeus (1998), eq. 16.4; −1° and above. */
function refraction(airless: number): number {
  return airless < -1 ? 0 : 1.02 / Math.tan((airless + 10.3 / (airless + 5.11)) * RAD) / 60;
}
