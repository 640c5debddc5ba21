import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { sunPosition } from '../../engine/sun/position.ts';
import { samplesOf } from '../../engine/sun/samples.ts';
import { parseEpw } from '../../engine/sun/weather/epw.ts';
import { epwBytes, epwLines } from '../engine/sun/epw-file.ts';
import { planAt } from '../engine/sun/plan-at.ts';
import { mustBeOk } from '../parts/outcome.ts';
import { TOLERANCES } from './tolerances.ts';

// EPW Data Dictionary (EnergyPlus Auxiliary Programs, Weather Converter): radiation is the sum over the hour that ends
// at the stamp, local standard time.
// The file is made with that rule and astronomy-engine's sun: its diffuse column holds the sky's horizontal irradiance
// above the air.
const LATITUDE = 32.17;
const LONGITUDE = -110.88;
const UTC_OFFSET = -7;
const SAMPLES_PER_HOUR = 6;

describe('the time base of a weather file', () => {
  it("an hour's radiation falls on the hour before its stamp, all summer", () => {
    const observer = new Observer(LATITUDE, LONGITUDE, 0);
    const row = (month: number, day: number, hour: number) => {
      if (month < 6 || month > 8) return {};
      let sum = 0;
      for (let part = 0; part < SAMPLES_PER_HOUR; part++) {
        const when = new Date(
          Date.UTC(2026, month - 1, day, hour - 1 - UTC_OFFSET, (part + 0.5) * (60 / SAMPLES_PER_HOUR)),
        );
        const equator = Equator(Body.Sun, when, observer, true, true);
        const { altitude } = Horizon(when, observer, equator.ra, equator.dec);
        sum += Math.max(0, (1361.1 / equator.dist ** 2) * Math.sin((altitude * Math.PI) / 180)) / SAMPLES_PER_HOUR;
      }
      return { diffuse: sum.toFixed(1) };
    };
    const location = `LOCATION,Somewhere,-,USA,made for a test,999999,${LATITUDE},${LONGITUDE},${UTC_OFFSET},809`;
    const file = parseEpw(epwBytes(epwLines({ location, row })));
    mustBeOk(file);
    const plan = planAt({
      site: { latitude: LATITUDE, longitude: LONGITUDE, timeZone: 'America/Phoenix' },
      season: { from: '06-01', to: '08-31' },
    });
    const result = samplesOf(plan, { kind: 'season' }, file.weather);
    mustBeOk(result);
    const { samples } = result;

    // Whole hours of daylight: the file's value beside the mean over the hour of our own sun above the air.
    const ours = new Map<number, { sum: number; count: number; file: number }>();
    for (let index = 0; index < samples.count; index++) {
      const hour = Math.floor(samples.when[index] / 3_600_000);
      const entry = ours.get(hour) ?? { sum: 0, count: 0, file: samples.diffuse[index] };
      const { distanceAu } = sunPosition(samples.when[index], LATITUDE, LONGITUDE);
      entry.sum += (1361.1 / distanceAu ** 2) * Math.sin((samples.altitude[index] * Math.PI) / 180);
      entry.count += 1;
      ours.set(hour, entry);
    }
    const whole = [...ours.values()].filter(({ count }) => count === SAMPLES_PER_HOUR);
    expect(whole.length).toBeGreaterThan(92 * 12);
    const rms = Math.sqrt(
      whole.reduce((sum, hour) => sum + (hour.sum / hour.count - hour.file) ** 2, 0) / whole.length,
    );
    expect(rms).toBeLessThan(TOLERANCES.weatherHour.max);
  });
});
