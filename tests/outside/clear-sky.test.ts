import { describe, expect, it } from 'vitest';
import { samplesOf } from '../../engine/sun/samples.ts';
import { clearSky } from '../../engine/sun/sky/clear-sky.ts';
import { ineichenPerez } from '../../engine/sun/sky/ineichen-perez.ts';
import { planAt } from '../engine/sun/plan-at.ts';
import { mustBeOk } from '../parts/outcome.ts';
import { TOLERANCES } from './tolerances.ts';

const RAD = Math.PI / 180;

// Ineichen & Perez (2002), Solar Energy 73(3):151–157. Values: pvlib-python 6382338a tests/test_clearsky.py, solar
// constant 1364,
// absolute air mass given, without the factor exp(0.01·AM^1.8). Program outputs, not measurements.
describe("Ineichen & Perez's clear sky", () => {
  it.each([
    { zenith: 10, airMass: 1, elevation: 0, global: 1038.159219, beam: 942.208186, diffuse: 110.265293 },
    { zenith: 10, airMass: 1, elevation: 2000, global: 1134.243124, beam: 994.953778, diffuse: 154.404929 },
    {
      zenith: 10.56413562,
      airMass: 0.93527685,
      elevation: 0,
      global: 1044.123068,
      beam: 953.249259,
      diffuse: 107.031097,
    },
    {
      zenith: 34.86074109,
      airMass: 1.12008114,
      elevation: 0,
      global: 853.020657,
      beam: 922.061247,
      diffuse: 96.429095,
    },
    { zenith: 46.0467599, airMass: 1.32355476, elevation: 0, global: 704.696813, beam: 888.90147, diffuse: 87.736013 },
    {
      zenith: 72.41687122,
      airMass: 3.01614096,
      elevation: 0,
      global: 251.994277,
      beam: 655.449252,
      diffuse: 53.990135,
    },
    { zenith: 82.85457044, airMass: 6.97935524, elevation: 0, global: 65.494266, beam: 321.160922, diffuse: 25.54562 },
  ])('zenith $zenith°, air mass $airMass, $elevation m', ({ zenith, airMass, elevation, ...published }) => {
    const sky = ineichenPerez({
      sinAltitude: Math.cos(zenith * RAD),
      airMass,
      extraterrestrial: 1364,
      elevation,
      turbidity: 3,
    });
    for (const name of ['global', 'beam', 'diffuse'] as const) {
      expect(Math.abs(sky[name] - published[name]), name).toBeLessThan(TOLERANCES.clearSkyFormula.max);
    }
  });
});

// Made with suncalc every 5 minutes, 1361.1 W/m² × Spencer's distance, by an independent program. DLI by Faust & Logan
// (2018): 0.007265 mol/Wh.
describe('clear day totals at Phoenix on 10 June', () => {
  it.each([
    { turbidity: 2, beam: 12_348, global: 8911, light: 64.7, sunHours: 14 },
    { turbidity: 3, beam: 10_526, global: 8429, light: 61.2, sunHours: 13.5 },
    { turbidity: 4.24, beam: 8729, global: 7878, light: 57.2, sunHours: 13 },
    { turbidity: 5.66, beam: 7176, global: 7303, light: 53.1, sunHours: 12.42 },
    { turbidity: 7, beam: 6031, global: 6808, light: 49.5, sunHours: 11.83 },
  ])('turbidity $turbidity', ({ turbidity, beam, global, light, sunHours }) => {
    const plan = planAt({
      site: { latitude: 33.45, longitude: -111.98, elevation: 337, timeZone: 'America/Phoenix' },
      season: { stepMinutes: 5 },
      climate: { turbidity },
    });
    const result = samplesOf(plan, { kind: 'day', date: '06-10' });
    mustBeOk(result);
    const { samples } = result;
    let beamDay = 0;
    let globalDay = 0;
    let hours = 0;
    for (let index = 0; index < samples.count; index++) {
      beamDay += samples.beam[index] * samples.hours[index];
      globalDay += samples.global[index] * samples.hours[index];
      if (samples.beam[index] > 120) hours += samples.hours[index];
    }
    expect(Math.abs(beamDay / beam - 1)).toBeLessThan(TOLERANCES.clearDayTotal.max);
    expect(Math.abs(globalDay / global - 1)).toBeLessThan(TOLERANCES.clearDayTotal.max);
    expect(Math.abs((globalDay * 0.007265) / light - 1)).toBeLessThan(TOLERANCES.clearDayTotal.max);
    expect(Math.abs(hours - sunHours)).toBeLessThanOrEqual(TOLERANCES.clearDaySunHours.max);
  });
});

// ASHRAE Handbook Fundamentals 2009, ch. 14, clear-day model with the design conditions of Phoenix Sky Harbor (33.45 N,
// 337 m), noon of the 21st:
// NREL/EnergyPlus 1bd58b05 weather .stat. Global = beam·sin(altitude) + diffuse. Turbidity: the one with which our beam
// equals theirs.
describe("a handbook's clear day, another model", () => {
  const days = [
    { month: 5, altitude: 76.7, beam: 870, diffuse: 170, turbidity: 3.72 },
    { month: 6, altitude: 80, beam: 827, diffuse: 194, turbidity: 4.24 },
    { month: 7, altitude: 77, beam: 727, diffuse: 250, turbidity: 5.66 },
    { month: 8, altitude: 68.3, beam: 750, diffuse: 220, turbidity: 5.21 },
    { month: 9, altitude: 56.3, beam: 807, diffuse: 171, turbidity: 4.22 },
  ].map((day) => {
    const distanceAu = [1.0123, 1.0162, 1.0159, 1.0115, 1.0037][day.month - 5];
    const sky = clearSky({ altitude: day.altitude, elevation: 337, turbidity: day.turbidity, distanceAu });
    const global = day.beam * Math.sin(day.altitude * RAD) + day.diffuse;
    return {
      ...day,
      beamRatio: sky.beam / day.beam,
      globalRatio: sky.global / global,
      diffuseRatio: sky.diffuse / day.diffuse,
    };
  });

  it.each(days)(
    'month $month: the beam was fitted, the global is a little lower, the diffuse a quarter',
    ({ beamRatio, globalRatio, diffuseRatio }) => {
      expect(Math.abs(beamRatio - 1)).toBeLessThan(TOLERANCES.clearDayBeam.max);
      expect(globalRatio).toBeLessThan(1);
      expect(1 - globalRatio).toBeLessThan(TOLERANCES.clearDayGlobal.max);
      expect(diffuseRatio).toBeGreaterThan(0.72);
      expect(diffuseRatio).toBeLessThan(0.85);
    },
  );

  it('on the mean of the five months', () => {
    expect(days.reduce((sum, { globalRatio }) => sum + 1 - globalRatio, 0) / days.length).toBeLessThan(
      TOLERANCES.clearDayGlobal.mean,
    );
  });
});
